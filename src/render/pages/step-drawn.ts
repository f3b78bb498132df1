/** What is drawn beside each step: its picture, the part with its measures, or where to find the picture. */
import type { Step } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { baseline } from "../typeset/atom.ts";
import type { Tightness } from "../typeset/columns.ts";
import { label } from "../typeset/lines.ts";
import { type Drawn, drawingOf, drawnPart, PART_DRAWINGS, partInStep } from "./drawn-part.ts";
import { jigsInStep } from "./jigs-in-step.ts";
import { once } from "./once.ts";
import { type Picture, type StepPicture, stepPictures } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** No picture is higher, so that pictures keep their size; as low as these where a page then holds one step more. */
const HIGHEST = 180;
const LOW: Readonly<Record<Tightness, number>> = { less: 148, least: 124 };
/** A picture that stood so many steps back is drawn again, so low. */
const FAR = 6;
const AGAIN = 116;
/** More marks do not go round so low a picture. */
const FEW = 6;

/** As high where it takes the width of the page. */
const WIDE = 250;
/** A picture that gets no larger than this by it stays in its column. */
const WORTH = 1.15;

/** Of fewer parts nothing more is seen by it. */
const SOME = 3;

/** What is drawn beside a step, and the same lower, or over the width of the page, where that can be. */
export interface Shown {
  readonly picture: Drawn;
  readonly lower: (how: Tightness) => Drawn | null;
  readonly wide: () => Drawn | null;
}

const ONLY = { lower: () => null, wide: () => null };

/** A part that is worked on with its measures, and what is put together as it stands in the room. */
export function shownInSteps(plan: Plan, width: number): readonly Shown[] {
  const { build, frame } = plan;
  const pictures = stepPictures(plan, { width, height: HIGHEST });
  const first = new Map<string, Step>();
  return build.steps.map((step, i): Shown => {
    const made = jigsInStep(plan, step, width);
    if (made) return { picture: made, ...ONLY };
    const full = pictures[i] as StepPicture;
    const { part, holes } = partInStep(plan, step) ?? {};
    const line = build.cutList.find(({ mark }) => mark === part?.mark);
    const drawnIn = (how: { readonly low?: true; readonly width: number; readonly column?: number }): Drawn | null =>
      part && holes && line
        ? drawnPart({ ...plan, build: { ...build, holes } }, line, part, { ...how, noted: false })
        : null;
    const drawn = drawnIn({ width });
    if (drawn)
      return {
        picture: drawn,
        lower: once(() => drawnIn({ width, low: true })),
        wide: () => {
          const wide = drawnIn({ width: frame.width, column: width });
          return wide && isClearer(wide, drawn) ? wide : null;
        },
      };
    const same = first.get(full.key);
    if (same && full.key !== "") {
      const again =
        step.number - same.number < FAR || step.shows.fresh.length > FEW
          ? null
          : full.height <= AGAIN
            ? full
            : full.lower(AGAIN);
      if (again === null) return { picture: asIn(same, width), ...ONLY };
      first.set(full.key, step);
      return { picture: plainly(again), ...ONLY };
    }
    first.set(full.key, step);
    const whole = build.parts.find(({ id }) => id === part?.id);
    const told = whole && line ? drawnPart(plan, line, whole, { width: frame.width, noted: false }) !== null : false;
    const shown = (picture: Picture): Drawn =>
      told && line ? elsewhere(plainly(picture), line.mark, width) : plainly(picture);
    return {
      picture: shown(full),
      wide: () => {
        if (step.shows.fresh.length + step.shows.present.length < SOME) return null;
        const found = full.wide({ width: frame.width, height: WIDE });
        return found && found.height > WORTH * full.height ? shown(found) : null;
      },
      lower: (how) => {
        if (how === "least" && step.shows.fresh.length > FEW) return null;
        const low = full.lower(LOW[how]);
        return low && shown(low);
      },
    };
  });
}

/** Whether a drawing is larger to look at than another, or whole where that has a gap. */
const isClearer = ({ scale }: Drawn, { scale: other }: Drawn): boolean =>
  scale !== undefined &&
  other !== undefined &&
  (scale.points > WORTH * other.points || (other.broken && !scale.broken && scale.points >= other.points));

const plainly = ({ height, paint }: Picture): Drawn => ({ height, paint: (x, y) => [paint(x, y)] });

/** Instead of a picture that stands at an earlier step. */
function asIn({ number }: Step, width: number): Drawn {
  const to = `step-${number}`;
  const height = TYPE.caption.leading;
  const text = `The picture of step ${number} shows it.`;
  return {
    height: height + 4,
    paint: (x, y) => [
      {
        kind: "group",
        role: "paragraph",
        items: [{ ...label(text, TYPE.caption, x, y + baseline(TYPE.caption)), cites: to }],
      },
      { kind: "link", x, y, width, height, to },
    ],
  };
}

/** With a word of where the part is drawn with its measures, which need the width of the page. */
function elsewhere({ height, paint }: Drawn, mark: string, width: number): Drawn {
  const to = drawingOf(mark);
  const high = TYPE.caption.leading;
  return {
    height: height + 4 + high,
    measured: true,
    paint: (x, y) => {
      const top = y + height + 4;
      const text = label(`All measures of ${mark}: ${PART_DRAWINGS}.`, TYPE.caption, x, top + baseline(TYPE.caption));
      return [
        ...paint(x, y),
        { kind: "group", role: "paragraph", items: [{ ...text, cites: to }] },
        { kind: "link", x, y: top, width, height: high, to },
      ];
    },
  };
}
