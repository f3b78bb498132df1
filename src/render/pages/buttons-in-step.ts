/** The drawings of wooden buttons, in the step that makes them. */
import { buttonKinds } from "../../solve/build/buttons.ts";
import { BUTTONS } from "../../solve/build/steps/words/buttons.ts";
import type { Step } from "../../solve/build.ts";
import { buttonDrawing } from "../drawing/template/button.ts";
import { cell, rows } from "./cells.ts";
import type { Drawn } from "./drawn-part.ts";
import { capital, type Plan } from "./plan.ts";
import { finePen } from "./templates.ts";

/** Each above the sentence that begins with its name. Null where the step makes none. */
export function buttonsInStep(plan: Plan, { unit }: Step, width: number): Drawn | null {
  if (unit !== BUTTONS) return null;
  const { fasteners, joints, design } = plan.build;
  const kinds = buttonKinds(fasteners, joints, design.units);
  if (kinds.length === 0) return null;
  const among = kinds.flatMap(({ id, button, bit }) => {
    const drawing = buttonDrawing(button, bit, design.units, finePen(plan), width);
    const one = cell(capital(id), `From the side, its top above. Scale ${drawing.scale}.`, drawing, width, "two");
    return rows([one], width).map((atom) => ({ above: `${capital(id)},`, atom }));
  });
  return { height: 0, among, paint: () => [] };
}
