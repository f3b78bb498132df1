/** Wooden buttons where they are screwed on, taken off and put on again. Common practice, no source. */
import type { Length } from "../../../../units/length.ts";
import { compare } from "../../../../units/rational.ts";
import type { Fastener } from "../../../design.ts";
import { type ButtonKind, buttonKinds } from "../../buttons.ts";
import { listed, series, stepToken, type Work } from "../draft.ts";

/** The unit of the step that makes them. */
export const BUTTONS = "buttons";

export const kindsOf = ({ plan, design }: Work): readonly ButtonKind[] =>
  buttonKinds(plan.fasteners, design.joints, design.units);

/** The bits that the buttons of a piece are bored with, thinnest first. */
export const buttonBits = (work: Work): readonly Length[] =>
  kindsOf(work)
    .map(({ bit }) => bit)
    .toSorted(compare);

/** The kinds that some fasteners go through. */
const among = (work: Work, fasteners: readonly Fastener[]): readonly ButtonKind[] =>
  kindsOf(work).filter((kind) => fasteners.some(({ id }) => kind.fasteners.some((own) => own.id === id)));

/** What the tongues of some go into. */
export function roomOf({ design }: Work, fasteners: readonly Fastener[]): string {
  const own = new Set(fasteners.map(({ joint }) => joint));
  const methods = new Set(design.joints.flatMap(({ id, method }) => (own.has(id) ? [method] : [])));
  return [
    ...(methods.has("buttons in a groove") ? ["groove"] : []),
    ...(methods.has("buttons in mortises") ? ["mortise"] : []),
  ].join(" or ");
}

/** "Each takes a button 1, from step 25."; null for what goes through none. */
export function takesText(work: Work, fasteners: readonly Fastener[]): string | null {
  const kinds = among(work, fasteners);
  if (kinds.length === 0) return null;
  const name = series(kinds.map(({ id }) => `a ${id}`));
  return `${fasteners.length === 1 ? "It takes" : "Each takes"} ${name}, from ${stepToken(BUTTONS)}.`;
}

/** They come off with the screws, and several kinds would be mixed up. */
export function buttonsOffTexts(work: Work, fasteners: readonly Fastener[]): readonly string[] {
  const kinds = among(work, fasteners).length;
  if (kinds === 0) return [];
  const apart = kinds > 1 ? ", each kind by itself" : "";
  return [`The buttons come off with their screws: put buttons and screws back into their bag${apart}.`];
}

export const buttonsOnTexts = (work: Work, fasteners: readonly Fastener[]): readonly string[] =>
  among(work, fasteners).map(
    ({ id, rails, fasteners: own }) =>
      `Set a ${id} under each hole along ${listed(work, rails)}, its top up and its tongue in the ${roomOf(work, own)}, before you drive its screw.`,
  );
