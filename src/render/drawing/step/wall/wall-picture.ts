/** The picture of a step that ties the piece to a wall: how it stands before the wall, and the place cut through. */
import type { Build, Step } from "../../../../solve/build.ts";
import type { Item } from "../../../document.ts";
import type { Frame } from "../../../style.ts";
import { type Drawing, NOT_TO_SCALE, type Pen } from "../../drawing.ts";
import type { StepPicture, StepPictureOptions } from "../asked.ts";
import type { Scene } from "../scene.ts";
import { cutPicture } from "./cut-picture.ts";
import type { WallFixing } from "./fixing.ts";
import { roomPicture } from "./room.ts";

/** Of the width; and in points. */
const SHARE = 0.54;
const GAP = 8;
/** No higher is either. */
const HIGHEST = 150;

/** How a piece is tied to its wall is seen from one side, and that only. */
export function wallPicture(
  build: Build,
  step: Step,
  scene: Scene,
  fixing: WallFixing,
  { frame, pen }: StepPictureOptions,
): StepPicture {
  const inside = (where: Frame): Drawing => ({
    items: both(build, scene, fixing, where, pen),
    alt: inWords(step, fixing),
    scale: NOT_TO_SCALE,
  });
  const within: StepPicture["within"] = (size) =>
    (size.width ?? 0) > frame.width ? null : inside({ ...frame, ...size });
  return {
    ...inside(frame),
    frame,
    take: null,
    two: null,
    close: null,
    key: `wall ${step.number}`,
    highest: 0,
    within,
  };
}

function both(build: Build, scene: Scene, fixing: WallFixing, whole: Frame, pen: Pen): readonly Item[] {
  const frame = { ...whole, height: Math.min(HIGHEST, whole.height) };
  const left = { ...frame, width: frame.width * SHARE - GAP / 2 };
  const right = { ...left, x: frame.x + left.width + GAP, width: frame.width - left.width - GAP };
  return [...roomPicture(build, scene, fixing, left, pen), ...cutPicture(build, scene, fixing, right, pen)];
}

/** What it shows, for who cannot see it. */
function inWords({ number, title }: Step, { kind, studs, floor }: WallFixing): string {
  const behind = studs === null ? "solid" : "with its studs in broken lines";
  return kind === "strap"
    ? `Step ${number}, ${title}. The piece stands a little off the wall, which is ${behind}; beside it, cut through the strap: its bracket on the piece, the one that is screwed to the wall, and the strap between them, its loose end led out.`
    : `Step ${number}, ${title}. The wall is ${behind}${floor === null ? "" : ", above the floor"}; beside it, cut through a screw: it goes through the wood into the ${studs === null ? "masonry" : "stud"}.`;
}
