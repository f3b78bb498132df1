/** What is asked of a step's picture, and what it is. Types only. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Frame } from "../../style.ts";
import type { Drawing, Pen } from "../drawing.ts";

/** From where and how large a picture was taken, so that the next may be taken alike. */
export interface Take {
  readonly unit: string;
  readonly view: View;
  /** Points for each unit of 1/16 µm. */
  readonly scale: number;
}

export interface StepPictureOptions {
  readonly frame: Frame;
  readonly pen: Pen;
  /** How the step before was taken: view and size stay while they serve. */
  readonly before?: Take | null;
  /** Methods of joining that steps before have shown close. */
  readonly told?: ReadonlySet<string>;
  /** So high is the frame at least where two pictures stand in it, or many kinds of parts. */
  readonly tall?: number;
}

export interface StepPicture extends Drawing {
  readonly take: Take | null;
  /** What it was given; higher where it is `tall`. */
  readonly frame: Frame;
  /** The method of joining that is shown close here. */
  readonly close: string | null;
  /** The same for all pictures that show the same. */
  readonly key: string;
  /** It gets no larger in a frame higher than this. */
  readonly highest: number;
  /** The same in another frame; null where it would not show the same. */
  readonly within: (size: Partial<Pick<Frame, "width" | "height">>) => (Drawing & { readonly size?: number }) | null;
  /** Of two pictures, the points for each unit in the first; as `size` of those in another frame. */
  readonly two: number | null;
}
