/** Every glue-up on one page: what comes in which order, what is glued, the clamps, and how long it stays in them. */
import { cutAs } from "../../solve/build/steps/words/cut-as.ts";
import type { Build, Step } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, type Printer, sectionHeading } from "./plan.ts";
import { duration } from "./step-title.ts";

const COLUMNS: readonly Column[] = [
  { head: "Step", align: "right", style: TYPE.strong },
  { head: "In this order" },
  { head: "Glued", stretch: true },
  { head: "Clamps, how far they open" },
  { head: "In clamps" },
  { head: "No strain for" },
];

/** One glue-up is told well enough by its step. */
const LEAST = 2;

export function gluing({ build, frame, printer }: Plan): Section | null {
  const { width } = frame;
  const steps = build.steps.filter(({ kind }) => kind === "glue-up");
  if (steps.length < LEAST) return null;
  const open = steps.flatMap(({ actions }) =>
    actions.flatMap((each) => (each.do === "glue" ? [each.openMinutes] : [])),
  );
  const hurry =
    open.length === 0 ? "" : ` From the first glue to the last clamp there are about ${Math.min(...open)} minutes.`;
  return {
    ...{ name: "gluing", title: "Gluing", kind: "gluing", start: "fits" },
    atoms: [
      ...sectionHeading("gluing", "Gluing", width),
      ...body(
        `Put each together dry first, with all its clamps on, and see that every joint closes and that it is square. Lay scrap between clamp and wood, waxed or taped where glue may squeeze out. What comes to lie behind what it is glued to, like a rail or slats between posts, is sanded before, also where no step says so: the corners are badly reached later.${hurry}`,
        width,
        { keep: true },
      ),
      ...table({ columns: COLUMNS, rows: steps.map((step) => row(build, step, printer)), width, above: 8 }),
    ],
  };
}

function row(build: Build, step: Step, printer: Printer): readonly string[] {
  const copies = step.copies > 1 ? ` (${step.copies} of them)` : "";
  const clamps = (step.clamps ?? [])
    .map(({ count, opening }) => `${count} that ${count === 1 ? "opens" : "open"} ${printer.exact(opening)}`)
    .join(", ");
  const wait = (strain: boolean): string =>
    duration(
      Math.max(0, ...step.waits.flatMap(({ binds, minutes }) => ((binds === "strain") === strain ? [minutes] : []))),
    ) || "–";
  return [
    String(step.number),
    `${orderOf(build, step) || step.title}${copies}`,
    glued(build, step),
    clamps === "" ? "–" : clamps,
    wait(false),
    wait(true),
  ];
}

/** Methods whose names are of many: of these the joints are counted, not what is in them. */
const jointsOf = (method: string, count: number): string => `${method}: ${count} joint${count === 1 ? "" : "s"}`;

/** Marks as the parts arrive: "B, D, A"; those that are one by then: "B, D, A as one". Of a slab its own mark. */
export function orderOf({ parts, steps }: Pick<Build, "parts" | "steps">, step: Step): string {
  const { actions, copies, shows, like } = step;
  const { brings = [] } = steps.find(({ number }) => number === like) ?? step;
  const marks = new Map(parts.map(({ id, mark }) => [id, mark]));
  const adds = actions.flatMap((action) => (action.do === "add" ? [action.parts] : []));
  const first = adds.slice(0, Math.max(1, Math.round(adds.length / copies)));
  const all = first.length === 0 ? [shows.fresh.slice(0, 1)] : first;
  const told = all.map((together) => [...new Set(together.map((id) => marks.get(id) ?? ""))]);
  const acts = brings.map(thereFirst).join(" ");
  const places = new Map(told.map((own) => [own, Math.min(...own.map((mark) => placeIn(acts, mark)))]));
  // What the step does not name one by one stays in the order in which it goes on.
  const isTold = [...places.values()].every(Number.isFinite);
  const sorted = isTold ? told.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0)) : told;
  return sorted.map(asOne).join(", ");
}

/** What something is set into or brought over is there before. */
const thereFirst = (act: string): string => {
  const at = act.search(/ (?:into|onto|on|over|against) /u);
  return at < 0 ? act : `${act.slice(at)} ${act.slice(0, at)}`;
};

const placeIn = (text: string, mark: string): number => {
  const at = text.indexOf(`(${mark})`);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
};

const asOne = (marks: readonly string[]): string =>
  marks.length === 1 ? (marks[0] ?? "") : `${marks.toSorted().join(", ")} as one`;

/** "Dowels: 4 joints, dado: 1 joint": joints by their method, or as what is cut for them; of a slab, its boards. */
export function glued({ joints, blanks, design }: Build, { actions, copies, shows }: Step): string {
  const ids = new Set(actions.flatMap((action) => (action.do === "glue" ? action.joints : [])));
  const counts = new Map<string, number>();
  for (const joint of joints) {
    const name = cutAs(design.parts, joint) ?? joint.method;
    if (ids.has(joint.id)) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  if (counts.size > 0)
    return capital([...counts].map(([method, count]) => jointsOf(method, count / copies)).join(", "));
  const part = design.parts.find(({ id }) => id === shows.fresh[0]);
  const count = blanks.filter((blank) => blank.part === part?.id).length;
  return (part?.making?.layers ?? 1) > 1 ? `${count} layers, cauls across` : `${count} boards, cauls across the ends`;
}
