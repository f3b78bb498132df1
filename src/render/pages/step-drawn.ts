/** What is drawn beside each step: its picture, the part with its measures, or where to find the picture. */
import type { Step } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { paragraph } from "../typeset/atom.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { type Drawn, drawnPart, PART_DRAWINGS, partInStep } from "./drawn-part.ts";
import { type Picture, type StepPicture, stepPictures } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** No picture is higher, so that pictures keep their size; as low as `LOW` where a page then holds one step more. */
const HIGHEST = 180;
const LOW = 148;

/** What is drawn beside a step, and the same lower, where that can be. */
export interface Shown {
  readonly picture: Drawn;
  readonly lower: () => Drawn | null;
}

/** A part that is worked on with its measures, and what is put together as it stands in the room. */
export function shownInSteps(plan: Plan, width: number): readonly Shown[] {
  const { build, frame } = plan;
  const pictures = stepPictures(plan, { width, height: HIGHEST });
  const first = new Map<string, Step>();
  return build.steps.map((step, i): Shown => {
    const full = pictures[i] as StepPicture;
    const part = partInStep(plan, step);
    const line = build.cutList.find(({ mark }) => mark === part?.mark);
    const drawnIn = (low: boolean): Drawn | null =>
      part && line ? drawnPart(plan, line, part, { width, noted: false, low }) : null;
    const drawn = drawnIn(false);
    if (drawn) return { picture: drawn, lower: () => drawnIn(true) };
    const same = first.get(full.key);
    if (same && full.key !== "") return { picture: asIn(same, width), lower: () => null };
    first.set(full.key, step);
    const told = part && line ? drawnPart(plan, line, part, { width: frame.width, noted: false }) !== null : false;
    const shown = (picture: Picture): Drawn =>
      told && line ? elsewhere(plainly(picture), line.mark, width) : plainly(picture);
    return {
      picture: shown(full),
      lower: () => {
        const low = full.lower(LOW);
        return low && shown(low);
      },
    };
  });
}

const plainly = ({ height, paint }: Picture): Drawn => ({ height, paint: (x, y) => [paint(x, y)] });

/** Instead of a picture that stands at an earlier step. */
function asIn({ number }: Step, width: number): Drawn {
  const word = stack(paragraph(`The picture of step ${number} shows it.`, TYPE.caption, width));
  return {
    height: word.height + 4,
    paint: (x, y) => [
      ...paintStack(word, x, y),
      { kind: "link", x, y, width, height: word.height, to: `step-${number}` },
    ],
  };
}

/** With a word of where the part is drawn with its measures, which need the width of the page. */
function elsewhere({ height, paint }: Drawn, mark: string, width: number): Drawn {
  const word = stack(paragraph(`All measures of ${mark} are drawn under ${PART_DRAWINGS}.`, TYPE.caption, width));
  return {
    height: height + 4 + word.height,
    measured: true,
    paint: (x, y) => [
      ...paint(x, y),
      ...paintStack(word, x, y + height + 4),
      { kind: "link", x, y: y + height + 4, width, height: word.height, to: "drawings" },
    ],
  };
}
