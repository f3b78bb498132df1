/** Nothing is left out of the steps: each part, fastener, piece of hardware, note and caution is told where it is used. */
import { describe, expect, it } from "vitest";
import { finishSchedule } from "../../src/solve/build/finishing/schedule.ts";
import type { Step } from "../../src/solve/build.ts";
import { EXAMPLES, solveText, textOf } from "./compiled.ts";

const wordsOf = ({ title, text }: Step): string => [title, ...text].join("\n");

/** The marks in a text: "(A)". */
const marksIn = (text: string): ReadonlySet<string> =>
  new Set([...text.matchAll(/\(([A-Z]{1,2})\)/gu)].map(([, mark = ""]) => mark));

const DRIVEN = /(?:^|[.,] )(?:Drive|Push in|Turn in|Use|Staple|Glue in) (\d+) /gmu;

/** How many fasteners a step says are driven, and how many come in their parts; what is done one by one has the sum behind it. */
const toldIn = ({ text }: Step): number =>
  text.reduce((so, sentence) => {
    const [, sum] = /: (\d+) in all\.$/u.exec(sentence) ?? [];
    const counts = [...sentence.matchAll(DRIVEN)].reduce((all, [, count]) => all + Number(count), 0);
    return so + (sum === undefined ? counts : Number(sum));
  }, 0);

/** A tool as a sentence names it, and as the list does. */
const NAMED: readonly (readonly [RegExp, RegExp])[] = [
  [/\bplane\b/iu, /plane/iu],
  [/\bflatten a face\b/iu, /jointer/iu],
  [/\bscrape\b/iu, /scraper/iu],
  [/\bcauls?\b/iu, /cauls/iu],
  [/\bbrush glue\b/iu, /glue brush/iu],
  [/\btap the dowels\b/iu, /mallet/iu],
  [/(?<!neither a chuck nor a )\bhammer\b/iu, /hammer/iu],
  [/\bchisel\b/iu, /chisel/iu],
  [/\bawl\b/iu, /awl/iu],
  [/\bscrews? by hand\b|\bunscrew\b|\bdrive them by hand\b/iu, /screwdriver/iu],
  [/\bstud\b/iu, /stud finder/iu],
  [/\bblanket\b/iu, /blanket/iu],
  [/\bdouble-sided tape\b/iu, /double-sided tape/iu],
  [/\bgloves\b/iu, /gloves/iu],
  [/\bshims\b/iu, /shims/iu],
  [/\bdowel centres\b/iu, /dowel centres/iu],
  [/\beye protection\b/iu, /safety glasses/iu],
];

describe.each(EXAMPLES)("%s", (name) => {
  const { build } = solveText(textOf(name));
  const steps = build?.steps ?? [];
  const mark = (id: string): string => build?.cutList.find(({ parts }) => parts.includes(id))?.mark ?? "?";

  it("names every part when it is joined for the first time, by its mark", () => {
    const known = new Set<string>();
    for (const step of steps) {
      const marks = marksIn(wordsOf(step));
      for (const action of step.actions) {
        if (action.do !== "add") continue;
        const fresh = action.parts.filter((id) => !known.has(id));
        for (const id of fresh) known.add(id);
        expect([step.title, fresh.map(mark).filter((one) => !marks.has(one))]).toEqual([step.title, []]);
      }
    }
    expect([...known].toSorted()).toEqual(build?.parts.map(({ id }) => id).toSorted());
  });

  it("counts every fastener in the step that drives it", () => {
    for (const step of steps) {
      const driven = step.actions.flatMap((action) => (action.do === "drive" ? action.fasteners : []));
      if (driven.length === 0 || step.unit === "put on again") continue;
      expect([step.title, toldIn(step) >= driven.length / step.copies]).toEqual([step.title, true]);
    }
    const all = steps.reduce((so, step) => so + toldIn(step) * step.copies, 0);
    const plugs = build?.fasteners.filter(({ head }) => head.seat === "plugged").length ?? 0;
    expect(all).toBe(build?.fasteners.length);
    expect(steps.some(({ unit }) => unit === "plugs")).toBe(plugs > 0);
  });

  it("lists each tool that its steps name", () => {
    const words = steps.flatMap(({ text, cautions, reminders }) => [...text, ...cautions, ...reminders]).join("\n");
    // What is used up stands with what to buy.
    const bought = build?.purchases.map(({ item }) => item) ?? [];
    const tools = [...(build?.tools.map(({ tool }) => tool) ?? []), ...bought].join("\n");
    const named = NAMED.filter(([said]) => said.test(words));
    expect(named.filter(([, listed]) => !listed.test(tools)).map(([said]) => said.source)).toEqual([]);
  });

  it("asks for as many clamps as are on at once in some step", () => {
    const most = Math.max(0, ...steps.map(({ clamps = [] }) => clamps.reduce((so, { count }) => so + count, 0)));
    const tool = build?.tools.find((each) => each.tool.startsWith("Clamps: "))?.tool ?? "";
    expect([...tool.matchAll(/(\d+) that opens? /gu)].reduce((so, [, n]) => so + Number(n), 0)).toBe(most);
  });

  it("puts on every piece of hardware once for good", () => {
    const fitted = steps.flatMap(({ actions }) =>
      actions.flatMap((action) => (action.do === "fit" ? action.hardware : [])),
    );
    expect(fitted.toSorted()).toEqual(build?.hardware.map(({ id }) => id).toSorted());
  });

  it("has no step without a sentence, and no sentence without an end", () => {
    for (const { title, text, cautions, reminders } of steps) {
      expect(text.length, title).toBeGreaterThan(0);
      for (const sentence of [...text, ...cautions, ...reminders]) expect(sentence).toMatch(/[.:!?)]$/u);
    }
  });

  it("names each abrasive that is bought, and has each that it names bought", () => {
    const sentences = steps.flatMap(({ text, cautions, reminders }) => [...text, ...cautions, ...reminders]);
    const told = [...sentences.join("\n").matchAll(/\b\d+(?:, then \d+)* grit\b/gu)].flatMap(
      ([words]) => words.match(/\d+/gu) ?? [],
    );
    const rows = (build && finishSchedule(build)?.rows) ?? [];
    const shown = rows.flatMap(({ grits, between }) => [...grits, ...(between === null ? [] : [between])].map(String));
    const bought = build?.purchases.flatMap(({ item }) => /^sandpaper, (\d+) grit$/u.exec(item)?.[1] ?? []);
    expect(told.length).toBeGreaterThan(0);
    expect(bought?.toSorted()).toEqual([...new Set(told)].toSorted());
    expect(shown.filter((grit) => !bought?.includes(grit))).toEqual([]);
  });

  // Common practice, no source: the second hole of a dowel is not measured anew but marked from the first.
  it("marks each second hole for a dowel from the part that has the first, and when that is bored", () => {
    const boredIn = (part: string, joint: string): number =>
      steps.findIndex(({ actions }) =>
        actions.some(
          (action) =>
            action.do === "machine" &&
            action.part === part &&
            action.holes.some((i) =>
              build?.fasteners.some(({ id, joint: of }) => of === joint && id === build.holes[i]?.for),
            ),
        ),
      );
    const dowelled = build?.joints.filter(({ method }) => method === "dowels") ?? [];
    for (const { id, parts } of dowelled) {
      const [first, second] = [...parts].sort((a, b) => boredIn(a, id) - boredIn(b, id)) as [string, string];
      const step = steps[boredIn(second, id)];
      expect([id, boredIn(first, id) < boredIn(second, id)]).toEqual([id, true]);
      expect([
        id,
        step?.text.some((text) => /dowel centres|in the same way/u.test(text) && text.includes(`(${mark(first)})`)),
      ]).toEqual([id, true]);
    }
    // What is marked is not bored by measures before: a step tells the marking, and after it what is bored there.
    for (const { title, text } of steps) {
      // What is as in an earlier step is told there.
      if (text.some((each) => /^(?:Do as in|As) step \d/u.test(each))) continue;
      const marking = text.findIndex((each) => /dowel centres/u.test(each));
      const bored = text.findIndex((each) => /^At the pricks bore .* dowel /u.test(each));
      expect([title, marking < bored || (marking === -1 && bored === -1)]).toEqual([title, true]);
    }
    const tools = build?.tools.map(({ tool }) => tool).join("\n") ?? "";
    expect([tools.includes("Dowelling jig"), tools.includes("Dowel centres")]).toEqual([
      dowelled.length > 0,
      dowelled.length > 0,
    ]);
  });

  it("gives every coat of every finish to every part that has one", () => {
    for (const { parts, coats, inside = coats, insideFaces = [] } of build?.finishing ?? [])
      for (const id of parts) {
        // What lies inside with all its faces has the coats of the inside, where it is finished apart.
        const whole = insideFaces.some(({ part, sides }) => part === id && sides.length === 0);
        const own = steps.flatMap(({ actions }) =>
          actions.flatMap((action) => (action.do === "finish" && action.parts.includes(id) ? [action.coat] : [])),
        );
        const many = whole && own.length === inside ? inside : coats;
        expect(own).toEqual(Array.from({ length: many }, (_, i) => i + 1));
      }
  });
});
