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
import { jigInStep, jigsTitle } from "./templates.ts";

/** Each above the sentence that begins with its name. Null where the step makes none. */
export function jigsInStep(plan: Plan, { unit }: Step, width: number): Drawn | null {
  const { jigs = [] } = plan.build;
  if (unit !== JIGS || jigs.length === 0) return null;
  const cells = jigs.map((jig) => jigInStep(plan, jig, width));
  const among = jigs.flatMap(({ id }, i) => {
    const one = cells[i];
    return one ? rows([one], width).map((atom) => ({ above: `${capital(id)},`, atom })) : [];
  });
  const wide = jigs.flatMap(({ id }, i) => (cells[i] === null ? [id] : []));
  if (wide.length === 0) return { height: 0, among, paint: () => [] };
  const elsewhere = `${capital(listed(wide))} ${wide.length === 1 ? "is" : "are"} drawn under ${jigsTitle(plan.build)}.`;
  const told = stack(paragraph(elsewhere, TYPE.caption, width));
  return {
    ...{ height: told.height, among },
    paint: (x, y) => [
      ...paintStack(told, x, y),
      { kind: "link", x, y, width, height: told.height, to: "templates" } as const,
    ],
  };
}
