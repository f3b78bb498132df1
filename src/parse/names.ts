/** `Side Panel`, `side panel` and `side-panel` are one name. */
export const normaliseName = (name: string): string => name.normalize("NFC").trim().toLowerCase().replace(/\s+/gu, "-");

/** `made of`, `made-of` and `Made of` are one setting: letters and digits only. */
export const squash = (key: string): string => key.toLowerCase().replace(/[\s_-]+/g, "");

/** Words that mean a face, a size or a place, and so cannot name a part. */
export const RESERVED_NAMES: ReadonlySet<string> = new Set([
  ...["left", "right", "front", "back", "bottom", "top"],
  ...["across", "deep", "up", "thickness", "width", "length"],
  ...["outside", "floor"],
]);

/** A name that a formula can hold. */
export const isUsableName = (name: string): boolean =>
  /^[\p{L}_][\p{L}\p{M}\p{N}_]*(?:-[\p{L}\p{M}\p{N}_]+)*$/u.test(name);
