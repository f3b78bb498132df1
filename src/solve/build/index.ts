import { hasErrors, type Outcome } from "../../findings/outcome.ts";
import { volume } from "../../geometry/index.ts";
import { inches, type Length, millimetres, UNITS_PER_INCH, UNITS_PER_MM } from "../../units/length.ts";
import { printLength } from "../../units/print-length.ts";
import { divide, rational, toNumber } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";
import { tellLength } from "../../units/tell-length.ts";
import type { Build, BuiltPart, CutLine } from "../build.ts";
import type { Design, Part, Stock } from "../design.ts";
import { check } from "./checks/index.ts";
import { blanksOf, cutList } from "./cut-list/cut-list.ts";
import { layOut } from "./cutting/lay-out.ts";
import { orderOfWork } from "./order/index.ts";
import { purchases } from "./purchases/index.ts";
import { stepsOf } from "./steps/index.ts";

/** Design to Build: the order of work, then the cut list, what to buy and how to cut it, the steps, and the checks. */
export function build(design: Design): Outcome<Build> {
  const order = orderOfWork(design);
  if (!order.value) return { findings: order.findings };
  const plan = order.value;
  const print = (length: Length): string => typographic(design, length);
  const lines = cutList(design, plan.holes, print);
  const blanks = blanksOf(design, lines);
  const spans = new Map(design.parts.map((part) => [part.id, part.at]));
  const cut = layOut(design.stock, blanks, design.kerf, { units: design.units, spans });
  const byId = new Map(design.parts.map((part) => [part.id, part]));
  const lineOf = new Map(lines.flatMap((line) => line.parts.map((id) => [id, line] as const)));
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const { steps, tools } = stepsOf({
    design,
    plan,
    cutList: lines,
    blanks,
    part: (id) => byId.get(id) as Part,
    stock: (name) => stocks.get(name) as Stock,
    line: (id) => lineOf.get(id) as CutLine,
    print,
  });
  const verdicts = check({
    design,
    cutList: lines,
    fasteners: plan.fasteners,
    holes: plan.holes,
    print: (length) => tellLength(length, design.units),
  });
  const findings = [...order.findings, ...cut.findings, ...verdicts.flatMap((verdict) => verdict.finding ?? [])];
  if (hasErrors(findings)) return { findings };
  const value: Build = {
    design,
    parts: lines.flatMap((line) => line.parts.map((id) => builtPart(byId.get(id) as Part, line, stocks))),
    cutList: lines,
    blanks,
    joints: design.joints.map((joint) => ({
      ...joint,
      fasteners: (plan.chosen.get(joint.id)?.fasteners ?? []).map((fastener) => fastener.id),
    })),
    fasteners: plan.fasteners,
    holes: plan.holes,
    layouts: cut.layouts,
    layoutProof: cut.proof,
    purchases: purchases(design.stock, cut.layouts, plan.fasteners, design.joints, design.units),
    steps,
    tools,
    checks: verdicts.map((verdict) => verdict.check),
    findings,
  };
  return { value, findings };
}

/**
 * Lengths in sentences of the plan: true fractions, and their unit. What a slope gives is no fraction that anybody could mark: it is told
 * to the nearest 1/64 in or 0.1 mm.
 */
function typographic({ units }: Design, length: Length): string {
  const inch = units === "inch";
  const odd = divide(length, rational(inch ? UNITS_PER_INCH : UNITS_PER_MM)).d > 1000n;
  const told = odd ? roundTo(length, inch ? inches(1, 64) : millimetres(1, 10)) : length;
  return `${printLength(told, { units, style: "typographic" }).text}\u202f${inch ? "in" : "mm"}`;
}

function builtPart(part: Part, line: CutLine, stocks: ReadonlyMap<string, Stock>): BuiltPart {
  const cubicMillimetres = toNumber(volume(part.solid)) / (UNITS_PER_MM * UNITS_PER_MM * UNITS_PER_MM);
  const density = stocks.get(part.stock)?.density ?? 0;
  // The design keeps the exact sizes; what is built carries those that the reader marks.
  const { thickness, width, length } = line;
  return {
    ...part,
    thickness,
    width,
    length,
    mark: line.mark,
    name: line.name,
    mass: (cubicMillimetres / 1e9) * density,
  };
}
