import { noTipRestraint } from "../../../findings/rules/no-tip-restraint.ts";
import { tipsOver } from "../../../findings/rules/tips-over.ts";
import { millimetres } from "../../../units/length.ts";
import type { Load } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { SCOPE, stores } from "./standing/clothing.ts";
import { strapLine } from "./standing/strap.ts";
import { stabilityTests } from "./standing/tests.ts";
import { around, footing, massText, total, weights } from "./standing/weight-and-feet.ts";
import { GRAVITY } from "./wood/beam.ts";

const BASIS = "ASTM F2057-23, scope and tests 9.2.1 to 9.2.3, as moments about the front feet";

const loadsOf = ({ carries, parts }: Checked["design"]): readonly Load[] =>
  [carries, ...parts.map((part) => part.carries)].flatMap((load) => load ?? []);
const saysClothes = (design: Checked["design"]): boolean =>
  loadsOf(design).some((load) => "name" in load && load.name === "clothes");

/** Whether anything of it carries clothes; where the plan says nothing, what has drawers or doors may. */
const forClothes = (design: Checked["design"], shutOff: boolean): boolean =>
  saysClothes(design) || (shutOff && loadsOf(design).length === 0);

/** Furniture as the standard for clothing storage has it, which is tested by that and not by `pulledOverRule`. */
export function isClothingStorage(checked: Checked): boolean {
  const { design, hardware } = checked;
  const [all, wood] = [stores(checked), weights(checked)];
  const outside = around(design.parts.map(({ solid }) => solid));
  const volume = all.reduce((so, each) => so + each.volume, 0);
  const inScope =
    // Half a foot is no scope: the sizes that a plan gives are exact.
    outside.high[2] - outside.low[2] >= SCOPE.high - 0.01 &&
    total(wood) >= SCOPE.kg &&
    (all.length === 0 || volume >= SCOPE.volume);
  return design.parts.length > 0 && inScope && !hangs(hardware) && forClothes(design, all.length > 0);
}

/** Screwed to the wall: it does not stand by itself. */
export const hangs = (hardware: Checked["hardware"]): boolean =>
  hardware.some(({ item }) => item.kind === "wall screw");

/** What may hold clothes stands when its drawers are open and a child pulls or climbs, and is tied to the wall besides. */
export const tipsOverRule: Rule = (checked) => {
  const { design, hardware, print } = checked;
  const first = design.parts[0];
  const [all, wood] = [stores(checked), weights(checked)];
  const outside = around(design.parts.map(({ solid }) => solid));
  const high = outside.high[2] - outside.low[2];
  if (!first || !isClothingStorage(checked)) return [];
  const strap = hardware.some(({ item }) => item.kind === "wall strap");
  const tests = stabilityTests(wood, all, { feet: footing(checked), outside });
  const judged = tests.map(({ name, moment }): Verdict => {
    const check = { rule: "tips-over", subject: name, value: moment, limit: 0, unit: "N·m", basis: BASIS };
    if (moment > 0) return { check: { ...check, verdict: "holds" } };
    // Every millimetre that the feet reach further forward helps by the whole weight.
    const further = (-moment * 1000) / (GRAVITY * total(wood));
    const finding = tipsOver(
      first.at,
      {
        ...{ test: name, strap, line: strapLine(checked), assumed: !saysClothes(design) },
        // The moment in N·m, as the weight in kg that makes it at the height of its top in mm.
        hold: massText((-moment * 1000) / GRAVITY / high, design.units),
        further: print(millimetres(Math.round(Math.ceil(further / STEP) * STEP * 1000), 1000)),
      },
      { severity: strap ? "warning" : "error" },
    );
    return { check: { ...check, verdict: strap ? "warns" : "fails" }, finding };
  });
  const tied = { rule: "no-tip-restraint", subject: "piece", value: strap ? 1 : 0, limit: 1, unit: "wall straps" };
  const none = noTipRestraint(first.at, {
    line: strapLine(checked),
    high: print(millimetres(Math.round(high * 1000), 1000)),
  });
  const restraint: Verdict = strap
    ? { check: { ...tied, basis: BASIS, verdict: "holds" } }
    : { check: { ...tied, basis: BASIS, verdict: "warns" }, finding: none };
  return [...judged, restraint];
};

/** A remedy is told to half an inch. */
const STEP = 12.7;
