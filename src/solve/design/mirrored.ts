/**
 * A piece for the other hand: everything of a finished design seen in a mirror between its left and its right side, with left and right
 * changed in its names.
 */
import { exactBounds, mirror, mirroredContact, mirroredPlacement, type Solid } from "../../geometry/index.ts";
import type { Draft } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { add, half, max, min, ZERO } from "../../units/rational.ts";
import type { Arrangement, Design, Face, Fastener, Feature, Finish, Hole, Joint, Part, Still } from "../design.ts";
import { swapHands } from "./hands.ts";
import { mirrorFitting, mirrorHardware, mirrorMotion } from "./hardware/placed.ts";
import type { Subject, Wish } from "./model/wish.ts";
import { mirrorShapes } from "./shapes/workpiece.ts";
import { mirrorBox, mirrorDirection, mirrorPoint, mirrorValue } from "./space.ts";
import { placedFeature } from "./turning.ts";

/** Whether the options chosen mirror the piece: two that do leave it as it is. */
export const isMirrored = ({ choices, chosen }: Draft): boolean =>
  choices.filter(({ name, mirror: option }) => option !== undefined && chosen.get(name) === option).length % 2 === 1;

export function mirrorDesign(design: Design): Design {
  const about = middleOf(design.parts);
  const ids = new Set(design.parts.map((part) => part.id));
  return {
    ...design,
    parts: design.parts.map((part) => mirrorPart(part, about)),
    joints: design.joints.map((joint) => mirrorJoint(joint, about)),
    fittings: design.fittings.map((each) =>
      mirrorFitting(
        each,
        about,
        each.holes.map((hole) => mirrorHole(hole, about)),
      ),
    ),
    groups: design.groups.map(swapHands),
    ...(design.apart && { apart: design.apart.map(swapHands) }),
    ...(design.seats && { seats: { ...design.seats, on: design.seats.on?.map(swapHands) ?? null } }),
    ...(design.finishes && { finishes: design.finishes.map(mirrorFinish) }),
    ...(design.wishes && { wishes: design.wishes.map(mirrorWish) }),
    ...(design.notes && {
      notes: design.notes.map(({ about: on, ...said }) => ({ ...said, about: mirrorSubject(on) })),
    }),
    ...(design.accepted && {
      accepted: design.accepted.map((each) => ({
        ...each,
        // The names of stock stay as they are.
        of: each.of?.map((name) => (ids.has(name) ? swapHands(name) : name)) ?? null,
      })),
    }),
  };
}

const mirrorFinish = ({ parts, alike, ...said }: Finish): Finish => ({
  ...said,
  parts: parts.map(swapHands),
  ...(alike && { alike: alike.map(swapHands) }),
});

const mirrorSubject = (subject: Subject): Subject => ({ ...subject, parts: subject.parts?.map(swapHands) ?? null });

function mirrorWish(wish: Wish): Wish {
  switch (wish.kind) {
    case "before":
      return { ...wish, first: wish.first.map(mirrorSubject), next: wish.next.map(mirrorSubject) };
    case "first":
    case "last":
    case "one step":
      return { ...wish, what: wish.what.map(mirrorSubject) };
    case "own step":
      return { ...wish, what: mirrorSubject(wish.what) };
    case "title":
      return { ...wish, step: mirrorSubject(wish.step) };
    default:
      return { ...wish, parts: wish.parts.map(swapHands) };
  }
}

function middleOf(parts: readonly Part[]): Length {
  const bounds = parts.map((part) => exactBounds(part.solid));
  const low = bounds.map((each) => each.low[0]).reduce((a, b) => min(a, b), bounds[0]?.low[0] ?? ZERO);
  const high = bounds.map((each) => each.high[0]).reduce((a, b) => max(a, b), bounds[0]?.high[0] ?? ZERO);
  return half(add(low, high));
}

const image = (solid: Solid, about: Length): Solid => mirror(solid, 0, about);
const swapFace = (face: Face): Face => swapHands(face) as Face;

const mirrorFeatures = (features: readonly Feature[], about: Length): readonly Feature[] =>
  mirrorShapes({ cuts: [], tongues: [], holes: [], features }, 0, about, "").features;

function mirrorPart(part: Part, about: Length): Part {
  const turned = part.turned && {
    placement: mirroredPlacement(part.turned.placement, 0, about),
    solid: image(part.turned.solid, about),
    features: mirrorFeatures(part.turned.features, about),
  };
  const { making } = part;
  return {
    ...part,
    id: swapHands(part.id),
    called: part.called === null ? null : swapHands(part.called),
    body: mirrorBox(part.body, 0, about),
    ...(part.whole && { whole: mirrorBox(part.whole, 0, about) }),
    blank: mirrorBox(part.blank, 0, about),
    solid: image(part.solid, about),
    features: turned
      ? turned.features.map((feature) => placedFeature(feature, turned.placement))
      : mirrorFeatures(part.features, about),
    holes: part.holes.map((hole) => mirrorHole(hole, about)),
    goodFace: part.goodFace === null ? null : swapHands(part.goodFace),
    ...(turned && { turned }),
    ...(making && {
      making: {
        ...making,
        banding: making.banding.map((band) => ({ ...band, edge: swapFace(band.edge) })),
        strip: making.strip === null ? null : swapHands(making.strip),
        alike: making.alike === null ? null : swapHands(making.alike),
      },
    }),
  };
}

function mirrorJoint(joint: Joint, about: Length): Joint {
  return {
    ...joint,
    id: swapHands(joint.id),
    parts: [swapHands(joint.parts[0]), swapHands(joint.parts[1])],
    contact: joint.contact.map((each) => mirroredContact(each, 0, about)),
    insertion: joint.insertion && mirrorDirection(joint.insertion, 0),
    ...(joint.still && { still: mirrorStill(joint.still, about) }),
    arrangements: joint.arrangements.map(
      ({ fasteners, holes, hardware, motion }): Arrangement => ({
        fasteners: fasteners.map((fastener) => mirrorFastener(fastener, about)),
        holes: holes.map((hole) => mirrorHole(hole, about)),
        ...(hardware && { hardware: hardware.map((each) => mirrorHardware(each, about)) }),
        ...(motion && { motion: mirrorMotion(motion, about) }),
      }),
    ),
  };
}

const mirrorStill = (still: Still, about: Length): Still => ({
  ...still,
  part: swapHands(still.part),
  at: still.across === "across" ? mirrorValue(still.at, about) : still.at,
  side: still.side === "middle" ? "middle" : swapFace(still.side),
});

function mirrorFastener(fastener: Fastener, about: Length): Fastener {
  const { head, nut, body, travelsWith } = fastener;
  return {
    ...fastener,
    id: swapHands(fastener.id),
    joint: swapHands(fastener.joint),
    head: { ...head, at: mirrorPoint(head.at, 0, about) },
    direction: mirrorDirection(fastener.direction, 0),
    through: fastener.through.map(swapHands),
    into: swapHands(fastener.into),
    travelsWith: travelsWith === null ? null : swapHands(travelsWith),
    ...(nut && {
      nut: { ...nut, at: mirrorPoint(nut.at, 0, about), direction: mirrorDirection(nut.direction, 0) },
    }),
    ...(body && { body: image(body, about) }),
  };
}

function mirrorHole(hole: Hole, about: Length): Hole {
  const { slot } = hole;
  // A slot runs both ways: one that runs straight across keeps the direction that it has.
  const slants = slot && (slot.along[1] !== 0 || slot.along[2] !== 0);
  return {
    ...hole,
    part: swapHands(hole.part),
    at: mirrorPoint(hole.at, 0, about),
    direction: mirrorDirection(hole.direction, 0),
    for: hole.for === null ? null : swapHands(hole.for),
    ...(slot && { slot: slants ? { ...slot, along: mirrorDirection(slot.along, 0) } : slot }),
  };
}
