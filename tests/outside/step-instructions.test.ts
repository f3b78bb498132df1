/**
 * The steps measured by published criteria for step-by-step assembly instructions. Agrawala, Phan, Heiser, Haymaker, Klingner,
 * Hanrahan and Tversky, "Designing Effective Step-By-Step Assembly Instructions", SIGGRAPH 2003: the parts that a step attaches are
 * visible in its picture, and symmetric parts go on together. Heiser, Phan, Agrawala, Tversky and Hanrahan, AVI 2004: one picture for
 * each major step. Each new part touches what is there: Homem de Mello and Sanderson (1989/1991), all contacts are established.
 * One to four parts a step: common practice in printed manuals, from memory.
 */
import { describe, expect, it } from "vitest";
import { Stage } from "../../src/geometry/picture/index.ts";
import { stepPicture, type Take } from "../../src/render/drawing/index.ts";
import { sceneOf } from "../../src/render/drawing/step/scene.ts";
import { shareSeen } from "../../src/render/drawing/visibility.ts";
import type { Build, Step } from "../../src/solve/build.ts";
import { EXAMPLES, solveText, textOf } from "../examples/compiled.ts";

const frame = { x: 0, y: 0, width: 255, height: 290 };
const pen = { measure: (text: string, _: unknown, size: number) => 0.5 * size * text.length, print: () => "" };

interface Figures {
  readonly name: string;
  /** Joining steps. */
  readonly steps: number;
  /** The least of a new part that is seen in any step, of what is seen of it alone; and the mean. */
  readonly leastSeen: number;
  readonly meanSeen: number;
  /** Bodies that arrive in a step: the most, and the mean. */
  readonly most: number;
  readonly mean: number;
  /** Steps that fit hardware of which nothing is seen; and what is drawn open in such steps. */
  readonly unseen: readonly number[];
  readonly open: readonly string[];
  /** New parts that are not joined to anything in their step. */
  readonly apart: readonly string[];
  /** Of parts of one line that join the same body from the same side, how many do so in one step with the others. */
  readonly alike: number;
}

const isJoining = ({ actions, unit }: Step): boolean =>
  unit !== "put on again" && actions.some((action) => action.do === "add" && action.to.length > 0);

function measured(name: string, build: Build): Figures {
  const seen: number[] = [];
  const [unseen, open]: [number[], string[]] = [[], []];
  let before: Take | null = null;
  for (const step of build.steps) {
    const { take } = stepPicture(build, step, { frame, pen: pen as never, before });
    before = take;
    if (!take) continue;
    const { items, fresh, hardware, open: opened } = sceneOf(build, step);
    const stage = new Stage(items, take.view);
    const fitted = new Set(step.actions.flatMap((action) => (action.do === "fit" ? action.hardware : [])));
    const shares = items.filter(({ id }) => fitted.has(id)).map((item) => shareSeen(item, stage));
    if (step.shows.travel.length === 0 && shares.length > 0 && Math.max(...shares) < 0.2) unseen.push(step.number);
    open.push(...opened);
    if (!isJoining(step)) continue;
    // A body that was built before is new as a whole: what of its parts lies inside it was seen when it was built.
    const added = step.actions.flatMap((action) => (action.do === "add" ? [action.parts] : []));
    const bodies = [...step.shows.travel.map(({ parts }) => parts), ...added];
    const single = items.filter(
      ({ id }) => fresh.has(id) && !hardware.has(id) && !bodies.some((body) => body.length > 1 && body.includes(id)),
    );
    seen.push(...single.map((item) => shareSeen(item, stage)));
  }
  const joining = build.steps.filter(isJoining);
  const arriving = joining.map(({ shows }) => shows.travel.length);
  const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);
  const together = alikeTogether(build, joining);
  return {
    ...{ name, steps: joining.length },
    ...{ leastSeen: Math.min(...seen), meanSeen: sum(seen) / Math.max(1, seen.length) },
    ...{ most: Math.max(...arriving), mean: sum(arriving) / Math.max(1, arriving.length) },
    ...{ unseen, open, apart: joining.flatMap((step) => unjoined(build, step)), alike: together },
  };
}

function unjoined({ joints }: Build, step: Step): readonly string[] {
  return step.actions.flatMap((action) => {
    if (action.do !== "add" || action.to.length === 0) return [];
    const joined = joints.some(
      ({ parts: [a, b] }) =>
        (action.parts.includes(a) && action.to.includes(b)) || (action.parts.includes(b) && action.to.includes(a)),
    );
    return joined ? [] : [`${step.number}: ${action.parts.join(" ")}`];
  });
}

/** Share of the pairs of single parts of one line, added to one body along one way, that are added in one step. */
function alikeTogether(build: Build, steps: readonly Step[]): number {
  const line = new Map(build.cutList.flatMap(({ mark, parts }) => parts.map((id) => [id, mark] as const)));
  const added = steps.flatMap((step) =>
    step.actions.flatMap((action) => {
      const [id] = action.do === "add" && action.parts.length === 1 && action.to.length > 0 ? action.parts : [];
      const [leg] = action.do === "add" ? action.legs.filter((each) => "along" in each) : [];
      if (!id || action.do !== "add") return [];
      const mates = new Set(build.joints.flatMap(({ parts }) => (parts.includes(id) ? parts : [])));
      mates.delete(id);
      return [{ step: step.number, key: `${line.get(id)} ${leg?.along.join()} ${[...mates].toSorted().join()}` }];
    }),
  );
  const pairs = added.flatMap((a, i) =>
    added.slice(i + 1).flatMap((b) => (a.key === b.key ? [a.step === b.step] : [])),
  );
  return pairs.length === 0 ? 1 : pairs.filter(Boolean).length / pairs.length;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

describe("published criteria for step-by-step instructions", () => {
  const all = EXAMPLES.flatMap((name) => {
    const { build } = solveText(textOf(name));
    return build ? [measured(name, build)] : [];
  });

  it("are measured on every example", () => {
    const rows = all.map(({ name, steps, leastSeen, meanSeen, most, mean, alike }) =>
      [
        ...[name.padEnd(32), `${steps} steps`.padEnd(9)],
        `new parts seen ${percent(meanSeen)} (least ${percent(leastSeen)})`.padEnd(36),
        `arriving ${mean.toFixed(1)} (most ${most})`.padEnd(24),
        `alike together ${percent(alike)}`,
      ].join("  "),
    );
    console.info(rows.join("\n"));
    expect(rows).toHaveLength(EXAMPLES.length);
  });
  it("each new part is seen in its picture", () => {
    expect(all.filter(({ leastSeen }) => !(leastSeen > 0)).map(({ name }) => name)).toEqual([]);
  });
  it("of what is fitted to a piece that is shut something is seen: the doors before it stand open", () => {
    // What is put inside a drawer is shown with that alone.
    expect(all.flatMap(({ name, unseen }) => unseen.map(() => name))).toEqual([]);
    expect(all.flatMap(({ open }) => open)).toContain("lid.frame");
  });
  it("each new part is joined to what is there", () => {
    expect(all.flatMap(({ name, apart }) => apart.map((one) => `${name} ${one}`))).toEqual([]);
  });
  it("few parts a step: more than four only where the same is done again", () => {
    expect(Math.max(...all.map(({ mean }) => mean))).toBeLessThanOrEqual(4);
  });
  it("what is alike goes on together", () => {
    expect(all.filter(({ alike }) => alike < 1).map(({ name, alike }) => `${name} ${percent(alike)}`)).toEqual([]);
  });
});
