/** Below the picture of a step: what it joins, cut through, and what the letters there stand for. */
import type { CutThrough } from "../../solve/build/model/cut-through.ts";
import type { Step } from "../../solve/build.ts";
import { cutDrawing } from "../drawing/cut-through/cut-drawing.ts";
import { viewOf } from "../drawing/cut-through/faces.ts";
import { LETTERS } from "../drawing/cut-through/letters.ts";
import { ceilingOf } from "../drawing/step/scene.ts";
import { TYPE } from "../style.ts";
import { paragraph } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import type { Drawn } from "./drawn-part.ts";
import { picture } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** No higher, in points. */
const HIGH = 150;
/** From the picture to the section. */
const BETWEEN = 10;

/** What is drawn of a step, with the section below it. */
export const withCut =
  (plan: Plan, step: Step, cut: CutThrough, width: number) =>
  (above: Drawn): Drawn => {
    const { build, pen, printer } = plan;
    const shown = new Set([...step.shows.fresh, ...step.shows.present]);
    const ceiling = ceilingOf(step);
    // A letter stands for one thing in a step.
    const letters = LETTERS.slice(above.lettered ?? 0);
    const section = picture(cutDrawing(build, cut, shown, { width, height: HIGH, pen, ceiling, letters }));
    const text: Rich = [
      { text: `Cut through ${cut.what}, seen from ${viewOf(cut, ceiling).name}. `, font: "regular" },
      ...cut.sizes.flatMap(({ says, size, isPlace }, i, all): Exclude<Rich, string>[number][] => [
        { text: letters[i] ?? "", font: "italic" },
        {
          text: `: ${isPlace ? printer.set(size) : pen.print(size)}\u00a0${printer.unit}, ${says}${i === all.length - 1 ? "." : "; "}`,
          font: "regular",
        },
      ]),
    ];
    return {
      ...above,
      height: above.height + BETWEEN + section.height + 4,
      key: [...(above.key ?? []), ...paragraph(text, TYPE.caption, width)],
      paint: (x, y) => [...above.paint(x, y), section.paint(x, y + above.height + BETWEEN)],
    };
  };
