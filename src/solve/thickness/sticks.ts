/** Sticks that a step cuts as long as the room between two parts: with stock of another thickness that may be another room. */
import type { Length } from "../../units/length.ts";
import { equal } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";
import { sayThickness } from "../../units/say-thickness.ts";
import type { ChangingSizes } from "../build/model/thickness.ts";
import type { Step } from "../build.ts";
import { roomAlong } from "../design/space.ts";
import type { Design, Part } from "../design.ts";

/** `columns`: the parts by their ids at each thickness; `fits`: the step to which sizes are printed. What is told as another step is left out. */
export const changingSticks = (
  steps: readonly Step[],
  columns: readonly { readonly parts: ReadonlyMap<string, Part> }[],
  fits: Length,
): ChangingSizes["sticks"] =>
  steps
    .filter(({ like }) => like === undefined)
    .flatMap(({ number, sticks = [] }) =>
      sticks.flatMap(({ between, axis }) => {
        const sizes = columns.flatMap(({ parts }): readonly Length[] => {
          const [a, b] = between.map((id) => parts.get(id)?.body);
          return a && b ? [roundTo(roomAlong(a, b, axis), fits)] : [];
        });
        return hasOther(sizes, columns.length) ? [{ step: number, sizes }] : [];
      }),
    );

/** Whether a size is there at every thickness, and not the same at all. */
export const hasOther = (sizes: readonly Length[], columns: number): boolean =>
  sizes.length === columns && !sizes.every((each) => equal(each, sizes[0] as Length));

/** The steps, those with such sticks telling where their length stands. */
export function withSticksTold(
  steps: readonly Step[],
  changing: readonly ChangingSizes[],
  { stock, units }: Design,
): readonly Step[] {
  return steps.map((step) => {
    const texts = changing.flatMap(({ stock: name, sticks }) => {
      const of = stock.find((each) => each.name === name);
      if (!of || !sticks.some((each) => each.step === step.number)) return [];
      const drawn = sayThickness(of.thickness, { units, style: "typographic" });
      return [
        `The sticks are so long where ${of.label} is ${drawn} thick; where yours is not, take their length from the sizes that change with it, and the same between the two parts.`,
      ];
    });
    return texts.length === 0 ? step : { ...step, text: [...step.text, ...texts] };
  });
}
