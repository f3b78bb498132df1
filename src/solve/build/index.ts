import type { Finding } from "../../findings/finding.ts";
import { hasErrors, type Outcome } from "../../findings/outcome.ts";
import { once } from "../../geometry/index.ts";
import type { Length } from "../../units/length.ts";
import { markable } from "../../units/markable.ts";
import { printLength } from "../../units/print-length.ts";
import { roundTo } from "../../units/round.ts";
import { tellLength } from "../../units/tell-length.ts";
import type { Build, BuiltPart, CutLine } from "../build.ts";
import { sayDrill } from "../design/boring/drills.ts";
import { placeStep } from "../design/boring/marks.ts";
import type { Design, Part, Stock } from "../design.ts";
import { adviceOn } from "./advice/index.ts";
import { check } from "./checks/index.ts";
import { bareSize, blanksOf } from "./cut-list/blanks.ts";
import { cutList } from "./cut-list/cut-list.ts";
import { withMakingNotes } from "./cut-list/making-notes.ts";
import { sameBoards } from "./cut-list/same-boards.ts";
import { massOf } from "./cut-list/weight.ts";
import type { LayoutEffort } from "./cutting/ask.ts";
import { layOut } from "./cutting/lay-out.ts";
import { drilling } from "./drilling/drilling.ts";
import { fastenerTable } from "./drilling/fasteners.ts";
import { finishSchedule } from "./finishing/schedule.ts";
import { jigsOf } from "./jigs/jigs.ts";
import type { LargestSizes } from "./model/thickness.ts";
import { motionsOf } from "./motions/motions.ts";
import { liesIn } from "./moved-as-one.ts";
import { orderOfWork } from "./order/index.ts";
import type { Plan } from "./order/plan.ts";
import { patternsOf } from "./patterns/patterns.ts";
import { finishingOf } from "./purchases/finish.ts";
import { purchases } from "./purchases/index.ts";
import { pinsIn } from "./steps/finishing/kept-in.ts";
import { stepsOf } from "./steps/index.ts";
import { withFitted } from "./steps/shut-between.ts";
import { supplyOf } from "./supply.ts";

/**
 * A design is laid out more than once: with room for what other thicknesses need, or with more effort. The rest stays as it is: the order
 * of work, and the design as it comes out of that, with what is shut in between faces that stand cut when they do.
 */
const workOf = once((given: Design) => {
  const order = orderOfWork(given);
  if (!order.value) return { design: given, order, motions: [] };
  const motions = motionsOf(given, order.value);
  const known = { design: given, plan: order.value, motions, ...named(given, listOf(given, order.value)) };
  return { design: withFitted(known), order, motions };
});

const listOf = (design: Design, { holes }: Pick<Plan, "holes">): readonly CutLine[] =>
  cutList(design, holes, (length) => typographic(design, length));

const linesOf = once((given: Design) => {
  const { design, order } = workOf(given);
  return listOf(design, order.value ?? { holes: [] });
});

/** Parts, and their lines of the cut list, by id. */
function named({ parts }: Design, lines: readonly CutLine[]) {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const lineOf = new Map(lines.flatMap((line) => line.parts.map((id) => [id, line] as const)));
  return { part: (id: string) => byId.get(id) as Part, line: (id: string) => lineOf.get(id) as CutLine };
}

const weighing = (design: Design) => {
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  return (part: Part): number => massOf(part, stocks.get(part.stock));
};

/** All checks; null where there is no order of work. */
export const checkedOf = once((given: Design) => {
  const { design, order, motions } = workOf(given);
  if (!order.value) return null;
  const { hardware, fasteners, holes } = order.value;
  return check({
    ...{ design, hardware, motions, fasteners, holes },
    ...{ mass: weighing(design), cutList: linesOf(given) },
    print: (length) => tellLength(length, design.units),
  });
});

/** What is found in a design, of its steps only whether there is an order for them. */
export function judge(given: Design): readonly Finding[] {
  const { design, order } = workOf(given);
  if (!order.value) return order.findings;
  const spans = new Map(design.parts.map((part) => [part.id, part.at]));
  const blanks = blanksOf(design, linesOf(given), new Map());
  const boards = sameBoards(design);
  const asked = { units: design.units, spans, effort: "plain", boards, ...supplyOf(design) } as const;
  const cut = layOut(design.stock, blanks, design.kerf, asked);
  return [...order.findings, ...cut.findings, ...(checkedOf(given)?.findings ?? [])];
}

/**
 * Design to Build: the order of work, then the cut list, what to buy and how to cut it, the steps, and the checks. Layouts keep room for
 * the `largest` sizes that parts come to at other thicknesses.
 */
export function build(
  given: Design,
  largest: LargestSizes = new Map(),
  effort: LayoutEffort = "quick",
): Outcome<Build> {
  const { design, order, motions } = workOf(given);
  if (!order.value) return { findings: order.findings };
  const plan = order.value;
  const print = (length: Length): string => typographic(design, length);
  const plainLines = linesOf(given);
  const blanks = blanksOf(design, plainLines, largest);
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const mass = weighing(design);
  const lines = withMakingNotes(plainLines, { design, blanks, mass, print });
  const spans = new Map(design.parts.map((part) => [part.id, part.at]));
  const boards = sameBoards(design);
  const cut = layOut(design.stock, blanks, design.kerf, {
    ...{ units: design.units, spans, effort, boards },
    ...supplyOf(design),
  });
  const { part, line } = named(design, lines);
  const finishing = finishingOf(design);
  const mark = (id: string): string => line(id)?.mark ?? "";
  const bored = { holes: plan.holes, hardware: plan.hardware };
  const jigs = jigsOf({ design, ...bored, layouts: cut.layouts, mark });
  const patterns = patternsOf({ design, ...bored, mark, print });
  const {
    steps,
    timeline,
    tools,
    after,
    later,
    findings: ofSteps,
  } = stepsOf({
    design,
    plan,
    motions,
    cutList: lines,
    blanks,
    jigs,
    patterns,
    finishing,
    part,
    stock: (name) => stocks.get(name) as Stock,
    line,
    mass: (id) => mass(part(id)),
    bare: (id) => bareSize(part(id), line(id)),
    print,
    drill: (diameter) => sayDrill(diameter, design.units),
    place: (length) => print(roundTo(length, placeStep(design))),
  });
  const drilled = { design, plan, steps, jigs, mark: (id: string) => line(id).mark };
  const checked = checkedOf(given);
  const lying = liesIn(design, plan.removable);
  const findings = [...order.findings, ...cut.findings, ...ofSteps, ...(checked?.findings ?? [])];
  if (hasErrors(findings)) return { findings };
  const value: Build = {
    design,
    parts: lines.flatMap((own) => own.parts.map((id) => builtPart(part(id), own, mass, after))),
    cutList: lines,
    blanks,
    later,
    joints: design.joints.map((joint) => ({
      ...joint,
      fasteners: (plan.chosen.get(joint.id)?.fasteners ?? []).map((fastener) => fastener.id),
    })),
    fasteners: plan.fasteners,
    holes: plan.holes,
    drilling: drilling(drilled),
    fastenerTable: fastenerTable(drilled),
    hardware: plan.hardware,
    motions,
    ...(lying.length > 0 && { liesIn: lying }),
    ...(jigs.length > 0 && { jigs }),
    ...(patterns.length > 0 && { patterns }),
    layouts: cut.layouts,
    layoutProof: cut.proof,
    ...(design.finishes && { finishing }),
    purchases: purchases({
      ...{ design, boards, layouts: cut.layouts, blanks, cutList: lines, finishing, jigs, steps, print },
      ...{ fasteners: plan.fasteners, hardware: plan.hardware, holes: plan.holes },
    }),
    ...{ steps, timeline, tools },
    checks: checked?.checks ?? [],
    findings,
  };
  const schedule = finishSchedule(value, pinsIn({ design, plan }));
  const scheduled: Build = schedule === null ? value : { ...value, finishSchedule: schedule };
  return { value: { ...scheduled, advice: adviceOn(scheduled, print) }, findings };
}

/** Lengths in sentences of the plan: true fractions, and their unit. */
const typographic = ({ units }: Design, length: Length): string =>
  `${printLength(markable(length, units), { units, style: "typographic" }).text}\u202f${units === "inch" ? "in" : "mm"}`;

/** The design keeps the exact sizes; what is built carries those that the reader marks. */
function builtPart(
  part: Part,
  line: CutLine,
  mass: (part: Part) => number,
  after: ReadonlyMap<string, number | null>,
): BuiltPart {
  const { mark, name, thickness, width, length } = line;
  return { ...part, thickness, width, length, mark, name, mass: mass(part), cutAfterStep: after.get(part.id) ?? null };
}
