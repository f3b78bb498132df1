/** The drawings of the jigs, beside the step that makes them. */

import { JIGS } from "../../solve/build/steps/precedence.ts";
import type { Step } from "../../solve/build.ts";
import { listed } from "../drawing/words.ts";
import { TYPE } from "../style.ts";
import { paragraph } from "../typeset/atom.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { rows } from "./cells.ts";
import type { Drawn } from "./drawn-part.ts";
import { capital, type Plan } from "./plan.ts";
import { jigInStep, templatesTitle } from "./templates.ts";

/** Null where the step makes none. */
export function jigsInStep(plan: Plan, { unit }: Step, width: number): Drawn | null {
  const { jigs = [] } = plan.build;
  if (unit !== JIGS || jigs.length === 0) return null;
  const cells = jigs.map((jig) => jigInStep(plan, jig, width));
  const wide = jigs.flatMap(({ id }, i) => (cells[i] === null ? [id] : []));
  const elsewhere = `${capital(listed(wide))} ${wide.length === 1 ? "is" : "are"} drawn under ${templatesTitle(plan.build)}.`;
  const drawn = stack([
    ...rows(
      cells.flatMap((cell) => cell ?? []),
      width,
    ),
    ...(wide.length > 0 ? paragraph(elsewhere, TYPE.caption, width, { above: 8 }) : []),
  ]);
  return {
    height: drawn.height,
    paint: (x, y) => [
      ...paintStack(drawn, x, y),
      ...(wide.length > 0 ? [{ kind: "link", x, y, width, height: drawn.height, to: "templates" } as const] : []),
    ],
  };
}
