import { noTipRestraint } from "../../../findings/rules/no-tip-restraint.ts";
import { tipsOver } from "../../../findings/rules/tips-over.ts";
import { millimetres } from "../../../units/length.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { SCOPE, stores } from "./standing/clothing.ts";
import { stabilityTests } from "./standing/tests.ts";
import { around, footing, total, weights } from "./standing/weight-and-feet.ts";
import { GRAVITY } from "./wood/beam.ts";

const BASIS = "ASTM F2057-23, scope and tests 9.2.1 to 9.2.3, as moments about the front feet";

/** Whether anything of it carries clothes; where the plan says nothing, what has drawers or doors may. */
function forClothes({ carries, parts }: Checked["design"], shutOff: boolean): boolean {
  const all = [carries, ...parts.map((part) => part.carries)].flatMap((load) => load ?? []);
  const clothes = all.some((load) => "name" in load && load.name === "clothes");
  return clothes || (shutOff && all.length === 0);
}

/** What may hold clothes stands when its drawers are open and a child pulls or climbs, and is tied to the wall besides. */
export const tipsOverRule: Rule = (checked) => {
  const { design, hardware, print } = checked;
  const first = design.parts[0];
  const [all, wood] = [stores(checked), weights(checked)];
  const outside = around(design.parts.map(({ solid }) => solid));
  const high = outside.high[2] - outside.low[2];
  const volume = all.reduce((so, each) => so + each.volume, 0);
  // Half a foot is no scope: the sizes that a plan gives are exact.
  const inScope = high >= SCOPE.high - 0.01 && total(wood) >= SCOPE.kg && (all.length === 0 || volume >= SCOPE.volume);
  const fixed = hardware.some(({ item }) => item.kind === "wall screw");
  if (!first || !inScope || fixed || !forClothes(design, all.length > 0)) return [];
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
        ...{ test: name, missing: String(Math.ceil(-moment)), strap },
        further: print(millimetres(Math.round(Math.ceil(further / STEP) * STEP * 1000), 1000)),
      },
      { severity: strap ? "warning" : "error" },
    );
    return { check: { ...check, verdict: strap ? "warns" : "fails" }, finding };
  });
  const tied = { rule: "no-tip-restraint", subject: "piece", value: strap ? 1 : 0, limit: 1, unit: "wall straps" };
  const none = noTipRestraint(first.at, { high: print(millimetres(Math.round(high * 1000), 1000)) });
  const restraint: Verdict = strap
    ? { check: { ...tied, basis: BASIS, verdict: "holds" } }
    : { check: { ...tied, basis: BASIS, verdict: "warns" }, finding: none };
  return [...judged, restraint];
};

/** A remedy is told to half an inch. */
const STEP = 12.7;
