import { hasErrors, type Outcome } from "../../findings/outcome.ts";
import type { Draft } from "../../parse/draft.ts";
import { build } from "../build/index.ts";
import type { Build } from "../build.ts";
import type { DesignOptions } from "../design/index.ts";
import { onePerPlace } from "../design/one-per-place.ts";
import { changingSizes } from "./changing.ts";
import { foundAtEnds, inVainEverywhere } from "./ends.ts";
import { withHoldsFrom } from "./holds-from.ts";
import { largestSizes } from "./largest.ts";
import { rangesOf } from "./range.ts";
import { slopesOf, unrounded } from "./slope.ts";
import { solvedAt } from "./solved-at.ts";
import { withSticksTold } from "./sticks.ts";

/**
 * A plan that was solved for the thickness for which it is drawn, solved again over the range that each stock may have: what goes
 * wrong there, how each line of the cut list changes, and the sizes to print. As it was where no stock has a range.
 */
export function overThickness(draft: Draft, options: DesignOptions, drawn: Outcome<Build>): Outcome<Build> {
  const { value } = drawn;
  const ranges = value ? rangesOf(value.design) : [];
  if (!value || ranges.length === 0) return drawn;
  const solved = solvedAt(draft, options);
  const found = foundAtEnds(ranges, drawn.findings, solved, value.design.units);
  const findings = [...inVainEverywhere(ranges, drawn.findings, solved), ...onePerPlace(found)];
  if (hasErrors(findings)) return { findings };
  const largest = largestSizes(ranges, value.design, solved);
  const reserving = largest.size > 0 ? build(value.design, largest) : drawn;
  if (!reserving.value) return reserving;
  const slopes = slopesOf(ranges, solvedAt(unrounded(draft), options));
  const cutList = reserving.value.cutList.map((line) => ({ ...line, slope: slopes(line.parts[0] as string) }));
  const changing = ranges.map((range) => changingSizes(range, value.design, reserving.value as Build, solved));
  const checks = withHoldsFrom(value.checks, ranges, solved, value.design.units);
  const steps = withSticksTold(reserving.value.steps, changing, value.design);
  return { value: { ...reserving.value, cutList, steps, changing, checks, findings }, findings };
}
