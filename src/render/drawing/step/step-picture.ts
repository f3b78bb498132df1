/**
 * The picture of a step: the unit in hand only. What is there in thin lines and unfilled, what is new in thick lines with a
 * tint, arrows of travel, screws where they go, marks of the new parts.
 */
import { Stage, type View } from "../../../geometry/picture/index.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build, Step } from "../../../solve/build.ts";
import type { Length } from "../../../units/index.ts";
import type { Frame } from "../../style.ts";
import { NOT_TO_SCALE } from "../drawing.ts";
import { fitInto, heightOf, widthOf } from "../fit.ts";
import { SPECK, takePicture } from "../picture.ts";
import { shareSeen } from "../visibility.ts";
import type { StepPicture, StepPictureOptions } from "./asked.ts";
import { BUTTON_CUT, seatsOf } from "./button-cut.ts";
import { closeSide } from "./close-side.ts";
import { MOST as LARGEST_CLOSE } from "./close-up.ts";
import { drawnOnce, type Painted } from "./drawn.ts";
import { pictureFromAbove } from "./from-above.ts";
import { mouthsOf } from "./mouths.ts";
import { BOTH_HALVES, drawnInHalves, otherHalf } from "./other-half.ts";
import { otherSide } from "./other-side.ts";
import { ceilingOf, type Scene, sceneOf } from "./scene.ts";
import { highestFor, sceneExtent, sizeFor, type Taken } from "./shot.ts";
import { sideSeen } from "./side-seen.ts";
import { inTurns, TURNS } from "./turns.ts";
import { drawnTwice, highestOfTwo, LOWEST_OF_TWO, wordsOfTwo } from "./two.ts";
import { chooseView } from "./views.ts";
import { wallFixing } from "./wall/fixing.ts";
import { wallPicture } from "./wall/wall-picture.ts";

const NOTHING: ReadonlySet<string> = new Set();

export function stepPicture(build: Build, whatIsDone: Step, options: StepPictureOptions): StepPicture {
  const turns = inTurns(whatIsDone);
  const step = turns?.[0] ?? whatIsDone;
  const { frame, pen, told = NOTHING } = options;
  const before = options.before?.unit === step.unit ? options.before : null;
  const scene = sceneOf(build, step);
  if (scene.items.length === 0) return EMPTY;
  const ceiling = ceilingOf(step);
  const flat = pictureFromAbove(build, step, scene, options);
  if (flat) return flat;
  const tied = wallFixing(build, step);
  if (tied) return wallPicture(build, step, scene, tied, options);
  const { items, fresh, screws } = scene;
  // Where screws are driven they count; the holes that they go into lie inside the joint.
  const driveways = screws.flatMap(({ mouth, direction, isDowel }) => (isDowel ? [] : [{ at: mouth, direction }]));
  const mouths = driveways.length > 0 || step.shows.as ? driveways : mouthsOf(build, step);
  // Where parts are new they are looked at; else what is put on them.
  const parts = new Set([...fresh].filter((id) => !scene.hardware.has(id)));
  // One looks through glass.
  const clear = panesOf(build.design);
  const opaque = items.filter(({ id }) => fresh.has(id) || !clear.has(id));
  const subject = { items: opaque, mouths, fresh: step.shows.as ? fresh : parts, hardware: halvesOf(scene) };
  const view = chooseView(subject, ceiling, before?.view ?? null);
  const other = turns
    ? { view, scene: sceneOf(build, turns[1]), only: null }
    : step.shows.as
      ? null
      : otherSide(build, scene, view, ceiling);
  const half = { ...frame, width: frame.width / 2 };
  const near =
    other && !turns
      ? closeSide(scene, other, {
          ...{ scale: sizeFor(sceneExtent(scene, view), half, null), text: step.text },
          ...{ caption: sideSeen(other.view, ceiling), pen, width: frame.width },
        })
      : null;
  // What is shown cut through stands below the picture rather than beside it, where that is larger so.
  const isCut = !told.has(BUTTON_CUT) && seatsOf(build, scene).length > 0;
  const size = (other && !near) || isCut ? { ...frame, height: Math.max(frame.height, options.tall ?? 0) } : frame;
  const take = (of: Scene, from: View, isAlone = false, at = step): Taken => {
    const extent = sceneExtent(of, from);
    const fit = fitInto(extent, size, sizeFor(extent, size, before?.scale ?? null));
    const behind = isAlone ? hiddenIn(of, from) : NOTHING;
    const picture = takePicture(of.items, from, fit, {
      // What is a speck in the whole is an edge in a picture of its surroundings.
      ...{ clear, speck: SPECK.step / LARGEST_CLOSE, hidden: behind.size > 0 },
    });
    return { build, step: at, scene: of, view: from, extent, picture, behind, faces: picture.sight.faces() };
  };
  const whole = near
    ? { ...take(near.scene, near.view), close: { ...near, whole: take(scene, near.view) } }
    : take(scene, view);
  const say = (length: Length): string => `${pen.print(length)}\u00a0${build.design.units === "mm" ? "mm" : "in"}`;
  const [own = [], its = []] = turns
    ? TURNS.map((each) => [each])
    : other
      ? wordsOfTwo(view, other, { ceiling, say })
      : [];
  const two =
    other &&
    !near &&
    ([
      { taken: whole, words: own },
      {
        taken: take(other.scene, other.view, other.only !== null, turns?.[1]),
        words: its,
        ...(turns && { shows: "the end of it" }),
      },
    ] as const);
  const both = { ...frame, height: Math.max(frame.height, BOTH_HALVES) };
  const second = other ? null : otherHalf(build, whole, both, sizeFor(whole.extent, both, before?.scale ?? null));
  const given = second ? both : size;
  const paint = (where: Frame, scale: number | null): Painted => {
    const page = { frame: where, before: scale, pen, told };
    return second ? drawnInHalves([whole, second], page) : two ? drawnTwice(two, page) : drawnOnce(whole, page);
  };
  const { detail, isCloseUp, size: scale, ...drawing } = paint(given, before?.scale ?? null);
  return {
    ...drawing,
    frame: given,
    close: detail?.method ?? null,
    key: keyOf(scene, view, build, step),
    take: near ? before : { unit: step.unit, view, scale },
    two: two ? scale : null,
    highest: isCloseUp ? 0 : two ? highestOfTwo(two, frame.width) : highestFor(whole.extent, frame.width),
    within: (wanted) => {
      const where = { ...given, ...wanted };
      if (second && where.height < BOTH_HALVES) return null;
      if (two && where.height < Math.min(size.height, LOWEST_OF_TWO)) return null;
      const larger = where.width > given.width || where.height > given.height;
      const found = paint(where, larger ? null : scale);
      if (where.height < given.height && !isCloseUp && isTooSmall(whole, found.size)) return null;
      return found.detail?.method === detail?.method ? found : null;
    },
  };
}

/** Less of a part than this is not seen where the heads of its screws are. */
const UNSEEN = 0.2;

/** Ids of what is new, no hardware, and stands behind the rest. */
function hiddenIn({ items, fresh, hardware }: Scene, view: View): ReadonlySet<string> {
  const stage = new Stage(items, view);
  const unseen = items.filter(
    (item) => fresh.has(item.id) && !hardware.has(item.id) && shareSeen(item, stage) < UNSEEN,
  );
  return new Set(unseen.map(({ id }) => id));
}

/** Several parts that take less of the page than this, in square points, are not told from one another. */
const SMALL = 8000;
const SEVERAL = 4;

const isTooSmall = ({ scene, extent }: Taken, scale: number): boolean =>
  scene.items.length >= SEVERAL && widthOf(extent) * heightOf(extent) * scale * scale < SMALL;

const EMPTY: StepPicture = {
  frame: { x: 0, y: 0, width: 0, height: 0 },
  items: [],
  alt: "",
  scale: NOT_TO_SCALE,
  take: null,
  two: null,
  close: null,
  key: "",
  highest: 0,
  within: () => null,
};

/** Parts alike count as the same where they stand alone. */
function keyOf(
  { items, fresh, open, screws, groups }: Scene,
  { name }: View,
  { parts }: Build,
  { shows: { as } }: Step,
): string {
  const alone = items.length === 1 && !as;
  const shown = items.map(({ id, mark, shift }) => [alone ? mark : id, fresh.has(id), shift]);
  const sizes = alone ? parts.find(({ id }) => id === items[0]?.id)?.features.length : 0;
  return JSON.stringify([name, shown, sizes, open, screws.map(({ id }) => id), groups.map(({ along }) => along)]);
}

/** The ids of what is put on, those of one piece of hardware together, its own first. */
const halvesOf = ({ hardware }: Scene): readonly (readonly string[])[] =>
  [...new Set(hardware.values())].map((whole) => {
    const halves = [...hardware].flatMap(([id, of]) => (of === whole ? [id] : []));
    return halves.toSorted((a, b) => Number(b === whole) - Number(a === whole));
  });
