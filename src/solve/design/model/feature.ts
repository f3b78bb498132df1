/** What is cut into a part, and what stands out of it. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Direction, Point } from "./points.ts";

/**
 * Cheeks are taken off beside the tongue of a bridle, whose slot is called bridle here; sockets are what is cut out between fingers
 * and tails, as the box around them; slots receive splines, keys and biscuits. Tenons, tongues and haunches stand out and cut nothing;
 * the tail of a sliding dovetail stands out too, and is told by the box around it, as its housing is.
 */
export type BoxKind =
  | "dado"
  | "groove"
  | "rabbet"
  | "notch"
  | "mortise"
  | "half lap"
  | "cheek"
  | "bridle"
  | "socket"
  | "dovetail housing"
  | "slot"
  | "tenon"
  | "tongue"
  | "haunch"
  | "tail";
export type PlaneKind = "taper" | "chamfer" | "bevel" | "mitre" | "angled end";

/** A cut (or a tenon, which cuts nothing), in the coordinates of the finished piece. */
export type Feature =
  | {
      readonly kind: BoxKind;
      /** Joint that needs it, or null for a shape of the part. */
      readonly for: string | null;
      /** A corner on the face that is cut into. */
      readonly origin: Point;
      readonly along: Direction;
      readonly across: Direction;
      /** [along, across, depth into the wood]. The depth runs along `into`. */
      readonly size: readonly [Length, Length, Length];
      readonly into: Direction;
      /** Cut when the joint is together: the slot of a key. Absent: at the bench. */
      readonly inPlace?: true;
      /**
       * So much narrower on each side at its other end than the size says: the socket of a dovetail; the tail of a sliding dovetail at its
       * shoulder, the housing at its mouth.
       */
      readonly lean?: Length;
    }
  | {
      /** As above, with a curve in that box: an arch's size is [width, thickness, rise]; a slot has half circles at its ends. */
      readonly kind: CurvedKind;
      readonly for: null;
      readonly origin: Point;
      readonly along: Direction;
      readonly across: Direction;
      readonly size: readonly [Length, Length, Length];
      readonly into: Direction;
      /** Of the true curve; the solid has flats within 0.05 mm of it, and never less wood. Zero: square corners. */
      readonly radius: Length;
    }
  | {
      readonly kind: PlaneKind;
      readonly for: string | null;
      /** A point of the cutting plane and its outward normal, in lowest whole numbers. */
      readonly origin: Point;
      readonly normal: Direction;
    };

export type CurvedKind = "arch" | "round-over" | "rounded corner" | "cut-out" | "slot";
