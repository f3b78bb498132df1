/** Below the picture of a step: what it joins, cut through, and what the letters there stand for. */
import type { CutThrough } from "../../solve/build/model/cut-through.ts";
import type { Step } from "../../solve/build.ts";
import { cutDrawing } from "../drawing/cut-through/cut-drawing.ts";
import { lies, viewOf } from "../drawing/cut-through/faces.ts";
import { LETTERS } from "../drawing/cut-through/letters.ts";
import { ceilingOf } from "../drawing/step/scene.ts";
import { TYPE } from "../style.ts";
import { paragraph } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import type { Drawn } from "./drawn-part.ts";
import { picture } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** No higher, in points. */
const HIGH = 150;
/** From what is above to the section, from that to its words, and below these. */
const [BETWEEN, GAP, BELOW] = [10, 4, 4];

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
      {
        text: `Cut through ${cut.what}, seen from ${viewOf(cut, ceiling).name}${lies(cut, ceiling)}. `,
        font: "regular",
      },
      ...cut.sizes.flatMap(({ says, size, isPlace }, i, all): Exclude<Rich, string>[number][] => [
        { text: letters[i] ?? "", font: "italic" },
        {
          text: `: ${isPlace ? printer.set(size) : pen.print(size)}\u00a0${printer.unit}, ${says}${i === all.length - 1 ? "." : "; "}`,
          font: "regular",
        },
      ]),
    ];
    // What the letters of a picture stand for is close below it, before the next picture.
    const key = stack(above.key ?? []);
    const told = stack(paragraph(text, TYPE.caption, width));
    const [top, words] = [above.height + key.height + BETWEEN, GAP + section.height];
    return {
      ...above,
      height: top + words + told.height + BELOW,
      key: [],
      paint: (x, y) => [
        ...above.paint(x, y),
        ...paintStack(key, x, y + above.height),
        section.paint(x, y + top),
        ...paintStack(told, x, y + top + words),
      ],
    };
  };
