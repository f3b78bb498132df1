/** `Side Panel`, `side panel` and `side-panel` are one name. */
export const normaliseName = (name: string): string => name.normalize("NFC").trim().toLowerCase().replace(/\s+/gu, "-");

/** `made of`, `made-of` and `Made of` are one setting: letters and digits only. */
export const squash = (key: string): string => key.toLowerCase().replace(/[\s_-]+/g, "");

const FACES: ReadonlySet<string> = new Set(["left", "right", "front", "back", "bottom", "top"]);
/** Words that mean a size or a place. */
const MEASURES: ReadonlySet<string> = new Set([
  ...["across", "deep", "up", "thickness", "width", "length"],
  ...["outside", "floor"],
]);

/**
 * Whether a word means a size, a place or a face, and so cannot name anything. Behind a dot it would be a face, so that a face can only
 * name what stands directly in the piece.
 */
export const isReserved = (name: string, inGroup: boolean): boolean =>
  MEASURES.has(name) || (inGroup && FACES.has(name));

/** A name that a formula can hold. */
export const isUsableName = (name: string): boolean =>
  /^[\p{L}_][\p{L}\p{M}\p{N}_]*(?:-[\p{L}\p{M}\p{N}_]+)*$/u.test(name);
