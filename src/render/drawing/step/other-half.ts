/** Hardware in two halves, of which the close picture shows one: the other one, which goes onto another part, in a second picture below. */
import type { Build } from "../../../solve/build.ts";
import type { Frame } from "../../style.ts";
import { seenArea } from "../targets.ts";
import { listed } from "../words.ts";
import { captionUnder, inLines, UNDER } from "./captions.ts";
import { around, isInside } from "./close-up.ts";
import { drawnOnce, type OnPage, type Painted } from "./drawn.ts";
import { HIGHEST } from "./locator.ts";
import { ceilingOf, type Scene } from "./scene.ts";
import { shotOf, type Taken } from "./shot.ts";
import { sideSeen } from "./side-seen.ts";

/** Between the two, in points. */
const GAP = 10;
/** How high both are together, each with its words. */
export const BOTH_HALVES = 2 * (HIGHEST + UNDER) + GAP;

/** The picture of the half that is seen best; null where the first shows it, or nothing does. */
export function otherHalf(build: Build, taken: Taken, frame: Frame, scale: number): Taken | null {
  const { scene, view, faces } = taken;
  const { window } = shotOf(taken, { ...frame, height: heightOfOne(frame) }, scale);
  if (!window) return null;
  const halves = scene.items.filter(({ id }) => (scene.hardware.get(id) ?? id) !== id);
  const boxes = halves.map((item) => ({ item, box: around(item, scene, view), seen: seenArea(faces, item.id, scale) }));
  const isShown = ({ box: { low, high } }: (typeof boxes)[number]): boolean =>
    isInside(window, low) && isInside(window, high);
  if (boxes.some((each) => isShown(each) && each.seen > 0)) return null;
  const [best] = boxes.filter(({ seen }) => seen > 0).toSorted((a, b) => b.seen - a.seen);
  if (!best) return null;
  const other = new Set(halves.map(({ id }) => id));
  const words = `${other.size > 1 ? "Their other halves" : "Its other half"}, on ${carriers(build, other)}`;
  const made = { ...taken, scene: onlyThese(scene, other), close: { focus: best.box, words: [words] } };
  return shotOf(made, { ...frame, height: heightOfOne(frame) }, scale).window ? made : null;
}

/** What was put on before is no more than there. */
const onlyThese = (scene: Scene, wanted: ReadonlySet<string>): Scene => ({
  ...scene,
  items: scene.items.map((item) =>
    wanted.has(item.id) ? { ...item, mark: "other half" } : scene.hardware.has(item.id) ? { ...item, mark: "" } : item,
  ),
  hardware: new Map([...wanted].map((id) => [id, id])),
  fresh: new Set([...scene.fresh].filter((id) => wanted.has(id) || !scene.hardware.has(id))),
});

/** The marks of what they are on. */
function carriers({ hardware, parts }: Build, ids: ReadonlySet<string>): string {
  const on = new Set(hardware.flatMap(({ id, carriedBy }) => (ids.has(id) ? [carriedBy] : [])));
  return listed([...new Set(parts.flatMap(({ id, mark }) => (on.has(id) ? [mark] : [])))]);
}

const heightOfOne = ({ height }: Frame): number => (height - GAP) / 2;

export function drawnInHalves(two: readonly [Taken, Taken], page: OnPage): Painted {
  const height = heightOfOne(page.frame);
  const own = new Set([...two[0].scene.hardware.values()]);
  // From an unusual side its words tell that.
  const { build, step, view } = two[0];
  const on = sideSeen(view, ceilingOf(step)) === null ? [`On ${carriers(build, own)}`] : [];
  const says = on.flatMap((each) => inLines(each, page.frame.width, page.pen));
  const [above, below] = [page.frame, { ...page.frame, y: page.frame.y + height + GAP }];
  const first = drawnOnce(two[0], { ...page, frame: { ...above, height } });
  const second = drawnOnce(two[1], { ...page, frame: { ...below, height } });
  return {
    ...first,
    items: [
      ...first.items,
      ...captionUnder(says, { ...above, height: Math.min(height - UNDER, HIGHEST) }, page.pen),
      ...second.items,
    ],
    alt: `${first.alt} A second picture shows the other half.`,
  };
}
