/** What is drawn beside each step: its picture, the part with its measures, or where to find the picture. */
import { cutsThrough } from "../../solve/build/cut-through/index.ts";
import type { Step } from "../../solve/build.ts";
import { once } from "../once.ts";
import { TYPE } from "../style.ts";
import { baseline } from "../typeset/atom.ts";
import type { Tightness } from "../typeset/columns.ts";
import { label } from "../typeset/lines.ts";
import { buttonsInStep } from "./buttons-in-step.ts";
import { gainOf, isCrowded, isFull, RICH } from "./crowded.ts";
import { withCut } from "./cut-in-step.ts";
import { type Drawn, drawingOf, drawnPart, PART_DRAWINGS, partInStep } from "./drawn-part.ts";
import { jigsInStep } from "./jigs-in-step.ts";
import { likeBefore } from "./like-step.ts";
import { type Picture, type StepPicture, stepPictures } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** No picture is higher, so that pictures keep their size; as low as these where a page then holds one step more. */
const HIGHEST = 180;
const LOW: Readonly<Record<Tightness, number>> = { less: 148, least: 124 };
/** Nor higher than this where its page has room. */
const TALL = 340;
/** So high are two pictures of one step together, or many kinds of parts. */
const MORE = 288;
/** A picture that stood so many steps back is drawn again, so low. */
const FAR = 6;
const AGAIN = 116;
/** More marks do not go round so low a picture. */
const FEW = 6;

/** As high where it takes the width of the page. */
const WIDE = [250, 200] as const;
/** Shares of the page's height that the drawing of a part then takes at most; the usual ones first. And so many smaller scales are tried. */
const SHARES = [null, 0.44, 0.38, 0.32, 0.27] as const;
const SMALLER = 2;
/** With fewer numbers around it a drawing is plain, and is drawn no more than so many times as large as in a column. */
const PLAIN = 1.7;
/** A picture that gets no larger than this by it stays in its column. */
const WORTH = 1.15;

/** Of fewer parts nothing more is seen by it. */
const SOME = 3;

/** What is drawn beside a step, and the same lower, or over the width of the page, where that can be. */
export interface Shown {
  readonly picture: Drawn;
  readonly lower: (how: Tightness) => Drawn | null;
  /** Over the width of the page, the largest first, and how many times as large. */
  readonly wide: () => readonly { readonly drawn: Drawn; readonly larger: number }[];
  /** What it gains over the width of the page where it is crowded in a column, as a share of what is shown; else 0. */
  readonly crowded: () => number;
  /** So many times as much its gain counts as that of what tells little. */
  readonly tells: number;
  /** So many points higher at most, where a page has room; nothing is seen better in more. */
  readonly most: number;
  readonly taller: (more: number) => Drawn | null;
  /** The first step that shows the same, or its mirror image, by its index; null where none before does. */
  readonly like: number | null;
}

const ONLY = { like: null, lower: () => null, wide: () => [], crowded: () => 0, tells: 1, most: 0, taller: () => null };

/** A part that is worked on with its measures, and what is put together as it stands in the room. */
export function shownInSteps(plan: Plan, width: number): readonly Shown[] {
  const { build, frame } = plan;
  const first = new Map<string, Step>();
  const worked = build.steps.map((step) => partInStep(plan, step));
  const like = likeBefore(build, worked);
  const cuts = cutsThrough(build);
  const pictures = stepPictures(plan, { width, height: HIGHEST }, MORE);
  const all = build.steps.map((step, i): Shown => {
    const made = jigsInStep(plan, step, width) ?? buttonsInStep(plan, step, width);
    if (made) return { picture: made, ...ONLY };
    const full = pictures[i] as StepPicture;
    const { part, holes } = worked[i] ?? {};
    const line = build.cutList.find(({ mark }) => mark === part?.mark);
    const drawnIn = (how: {
      readonly most?: number;
      readonly below?: number;
      readonly low?: true;
      readonly width: number;
      readonly column?: number;
    }): Drawn | null =>
      part && holes && line
        ? drawnPart({ ...plan, build: { ...build, holes } }, line, part, { ...how, noted: false })
        : null;
    const cut = cuts.get(step.number);
    const below = cut ? withCut(plan, step, cut, width) : (drawn: Drawn): Drawn => drawn;
    const drawn = drawnIn({ width });
    if (drawn) {
      const tells = (drawn.scale?.tells ?? RICH) / RICH;
      const wide = once(() => {
        // A section stands in a column; and who is sent to another step finds it drawn there.
        if (cut || step.like !== undefined) return [];
        const over = { width: frame.width, column: width };
        const all = SHARES.flatMap((most) => drawnIn({ ...over, ...(most && { most }) }) ?? []);
        for (let i = 0; i < SMALLER && isCrowded(drawn); i++) {
          const below = all.at(-1)?.scale?.points;
          const smaller = below === undefined ? null : drawnIn({ ...over, below });
          if (smaller) all.push(smaller);
        }
        return all
          .filter((each, i) => isClearer(each, drawn) && each.scale?.points !== all[i - 1]?.scale?.points)
          .filter((each) => tells >= 1 || timesAsLarge(each, drawn) <= PLAIN)
          .map((each) => ({ drawn: each, larger: timesAsLarge(each, drawn) }));
      });
      return {
        ...ONLY,
        picture: below(drawn),
        lower: once(() => {
          const low = drawnIn({ width, low: true });
          return low && below(low);
        }),
        wide,
        tells,
        crowded: () => (isCrowded(drawn) ? gainOf(wide()) : 0),
      };
    }
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
      below(told && line ? elsewhere(plainly(picture), line.mark, width) : plainly(picture));
    const few = step.shows.fresh.length + step.shows.present.length < SOME;
    const higher = new Map<number, Drawn | null>();
    const wide = once(() => {
      if (few || cut) return [];
      return WIDE.flatMap((height) => {
        const found = full.wide({ width: frame.width, height });
        // A high picture gets as large in its column.
        const higher = Math.max(full.height, Math.min(full.highest, TALL, height));
        const larger = found?.larger ?? (found?.height ?? 0) / higher;
        return found && larger > WORTH ? { drawn: shown(found), larger } : [];
      });
    });
    return {
      ...ONLY,
      picture: shown(full),
      wide,
      crowded: () => (isFull(build, step) ? gainOf(wide()) : 0),
      // One part alone shows no more by being larger.
      most: few ? 0 : Math.min(TALL, full.highest) - full.room,
      taller: (more) => {
        if (!higher.has(more)) {
          const found = full.higher(full.room + more);
          higher.set(more, found && shown(found));
        }
        return higher.get(more) ?? null;
      },
      lower: (how) => {
        // What is hardly seen as it is gets no smaller.
        if ((how === "least" && step.shows.fresh.length > FEW) || isFull(build, step)) return null;
        const low = full.lower(LOW[how]);
        return low && shown(low);
      },
    };
  });
  const firsts: (number | null)[] = [];
  for (const [i, { picture }] of all.entries()) {
    const place = like[i] ?? null;
    const same = place === null ? null : all[place];
    firsts.push(place !== null && same && isAsLarge(picture, same.picture) ? (firsts[place] ?? place) : null);
  }
  return all.map((shown, i) => ({ ...shown, like: firsts[i] ?? null }));
}

/** Whether they are drawn alike from the start; what is not stays as large as it can be. */
const isAsLarge = ({ scale: one }: Drawn, { scale: other }: Drawn): boolean =>
  one?.points === other?.points && one?.broken === other?.broken;

/** Whether a drawing is larger to look at than another, or whole where that has a gap. */
const isClearer = ({ scale }: Drawn, { scale: other }: Drawn): boolean =>
  scale !== undefined &&
  other !== undefined &&
  (scale.points > WORTH * other.points || (other.broken && !scale.broken && scale.points >= other.points));

/** A gap hides as much as a scale that is so much smaller. */
const GAP = 1.5;
const timesAsLarge = (one: Drawn, other: Drawn): number => {
  const seen = ({ scale }: Drawn): number => (scale?.points ?? 1) / (scale?.broken ? GAP : 1);
  return Math.max(1.05, seen(one) / seen(other));
};

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
