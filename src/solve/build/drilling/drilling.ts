/** The drilling table: every stage of every hole, bit by bit, so that each is put in once. */
import { compare } from "../../../units/rational.ts";
import type { Step } from "../../build.ts";
import { type Bit, bitFor } from "../../design/boring/bits.ts";
import { holeOnBench } from "../../design/turning.ts";
import type { Design, Hole } from "../../design.ts";
import type { DrillRow } from "../model/drilling.ts";
import type { Jig } from "../model/jig.ts";
import type { Plan } from "../order/index.ts";
import { boredIntoStuds } from "../steps/words/fitted.ts";
import { mouthSide } from "../steps/words/holes.ts";
import { purposeOf, type Served } from "./purpose.ts";
import { type StepOf, stepOf } from "./step-of.ts";
import { jigFor, stopOf } from "./stop.ts";

export interface Drilled {
  readonly design: Pick<Design, "parts" | "stock" | "joints" | "units" | "wall">;
  readonly plan: Pick<Plan, "holes" | "fasteners" | "hardware">;
  readonly steps: readonly Step[];
  readonly jigs: readonly Jig[];
  /** Of the cut-list line of a part. */
  readonly mark: (part: string) => string;
}

/** In this order; each from thin to thick. */
const BITS: readonly Bit[] = ["drill", "Forstner bit", "pocket bit", "countersink"];

export function drilling(drilled: Drilled): readonly DrillRow[] {
  const { design, plan, steps } = drilled;
  const served = servedBy(drilled);
  const at = stepOf(steps, { joints: design.joints, fasteners: plan.fasteners });
  const ahead = aheadOf(steps);
  const groups = new Map<string, { row: Alike; holes: number[] }>();
  for (const [index, hole] of plan.holes.entries())
    for (const i of hole.stages.keys()) {
      const row = alike(hole, i, served, {
        ...{ design, plan, jig: jigFor(index, drilled.jigs) },
        when: ahead.has(index) ? "on the bench" : hole.atBench ? "before assembly" : "in place",
      });
      if (row === null) continue;
      const key = JSON.stringify(row, (_, value) => (typeof value === "bigint" ? String(value) : value));
      const group = groups.get(key);
      if (group) group.holes.push(index);
      else groups.set(key, { row, holes: [index] });
    }
  return [...groups.values()]
    .map(({ row, holes }): DrillRow => ({ ...row, ...where(holes, drilled, served, at, ahead), holes }))
    .toSorted(
      (a, b) =>
        BITS.indexOf(a.bit) - BITS.indexOf(b.bit) ||
        compare(a.diameter, b.diameter) ||
        (a.steps[0] ?? 0) - (b.steps[0] ?? 0) ||
        (a.holes[0] ?? 0) - (b.holes[0] ?? 0),
    );
}

/** What is asked of parts, fasteners and hardware by their ids. */
export function servedBy({ design, plan }: Pick<Drilled, "design" | "plan">): Served {
  const fasteners = new Map(plan.fasteners.map((each) => [each.id, each]));
  const hardware = new Map(plan.hardware.map((each) => [each.id, each]));
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  return {
    fastener: (id) => fasteners.get(id),
    hardware: (id) => hardware.get(id),
    part: (id) => parts.get(id) as ReturnType<Served["part"]>,
    stock: (name) => stocks.get(name),
  };
}

type Alike = Omit<DrillRow, "holes" | "into" | "steps">;

/** What holes have to share to be one row; null for the stages after the first that the same bit bores. */
function alike(
  hole: Hole,
  i: number,
  served: Served,
  {
    design,
    plan,
    jig,
    when,
  }: Pick<Drilled, "design" | "plan"> & { readonly jig: Jig | null; readonly when: DrillRow["when"] },
): Alike | null {
  const stage = hole.stages[i] as Hole["stages"][number];
  const bit = bitFor(hole, i);
  const last = i === hole.stages.length - 1;
  if (bit === "pocket bit" && i > 0) return null;
  const through = hole.through && last;
  return {
    bit,
    diameter: stage.diameter,
    what: purposeOf(hole, i, served),
    depth:
      bit === "countersink"
        ? "flush"
        : bit === "pocket bit"
          ? "by the jig"
          : through
            ? "through"
            : last
              ? stopOf(hole, plan, jig)
              : stage.depth,
    jig: jig && last && !through && bit !== "countersink" ? { id: jig.id, scrap: jig.thickness === null } : null,
    slot: (last && hole.slot?.length) || null,
    backing:
      through && bit !== "pocket bit" ? behind({ atBench: when !== "in place", for: hole.for }, served, design) : null,
    when,
  };
}

/** What ties a piece to studs is bored where it stands. */
function behind(
  { atBench, for: id }: Pick<Hole, "atBench" | "for">,
  { hardware }: Served,
  design: Drilled["design"],
): "scrap" | "the wall" {
  const item = id === null || atBench ? undefined : hardware(id)?.item;
  return item && boredIntoStuds(item.kind, design) ? "the wall" : "scrap";
}

/** Holes of what stands together that are bored before it goes to its place: true where from the side on which they come out. */
const aheadOf = (steps: Drilled["steps"]): ReadonlyMap<number, boolean> =>
  new Map(
    steps
      .flatMap(({ actions }) => actions)
      .flatMap((action) =>
        action.do === "machine" && action.ahead
          ? action.holes.map((i) => [i, action.ahead === "from the other side"] as const)
          : [],
      ),
  );

const turned = ({ direction: [x, y, z], ...hole }: Hole): Hole => ({ ...hole, direction: [-x, -y, -z] });

function where(
  indices: readonly number[],
  { plan, mark }: Drilled,
  served: Served,
  at: StepOf,
  ahead: ReadonlyMap<number, boolean>,
) {
  const sides = new Map<string, { mark: string; parts: Set<string>; side: string }>();
  const steps = new Set<number>();
  for (const index of indices) {
    const hole = plan.holes[index] as Hole;
    const part = served.part(hole.part);
    const lies = holeOnBench(part, ahead.get(index) ? turned(hole) : hole);
    const own = { mark: mark(hole.part), side: mouthSide(part, lies) };
    const key = `${own.mark}|${own.side}`;
    const group = sides.get(key);
    if (group) group.parts.add(hole.part);
    else sides.set(key, { ...own, parts: new Set([hole.part]) });
    const step = at.hole(hole, index);
    if (step !== null) steps.add(step);
  }
  return {
    into: [...sides.values()].map(({ parts, ...own }) => ({ ...own, parts: parts.size })),
    steps: [...steps].sort((a, b) => a - b),
  };
}
