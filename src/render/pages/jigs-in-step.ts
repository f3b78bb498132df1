/** The drawings of all jigs, beside the step that makes them. */

import { JIGS } from "../../solve/build/steps/precedence.ts";
import type { Jig, Step } from "../../solve/build.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { rows } from "./cells.ts";
import type { Drawn } from "./drawn-part.ts";
import type { Plan } from "./plan.ts";
import { jigCell } from "./templates.ts";

/** Null where the step makes none. */
export function jigsInStep(plan: Plan, { unit }: Step, width: number): Drawn | null {
  const { jigs = [] } = plan.build;
  if (unit !== JIGS || jigs.length === 0) return null;
  const drawn = stack(
    rows(
      jigs.map((jig: Jig) => jigCell(plan, jig, width, "short")),
      width,
    ),
  );
  return { height: drawn.height, paint: (x, y) => paintStack(drawn, x, y) };
}
