/**
 * What a kind of hardware is known by: the few measures that decide whether a piece sold somewhere would do. Types and helpers only; a kind is a
 * file beside this one and a line in `index.ts`.
 */

/** One measure of a kind. `inch` and `mm` are what is taken when the plan says nothing, as they would be written in it. */
export interface HardwareField {
  readonly is: "measure" | "range" | "number" | "mass" | "word" | "measures";
  readonly inch?: string;
  readonly mm?: string;
  /** One sentence. */
  readonly meaning: string;
  /** Other words for it. */
  readonly also?: readonly string[];
  /** What a word may be. */
  readonly words?: readonly string[];
  /** Set behind its number. */
  readonly unit?: "°";
  /** Printed with each piece, so that a reader can tell whether another would do; "said": where the plan itself gives it. */
  readonly decides?: true | "said";
  /** How its value is told: "# across" where it stands before its name; absent: "screw #". */
  readonly told?: string;
}

export interface HardwareKind {
  readonly kind: string;
  readonly also: readonly string[];
  /** One sentence. */
  readonly meaning: string;
  readonly fields: Readonly<Record<string, HardwareField>>;
  /** Bought by the pair; absent: one by one. */
  readonly soldIn?: "pair";
  /** Where the usual measures come from. */
  readonly basis: string;
}

/** A length. A default that both systems share is written in millimetres: hardware is made in them. */
export const measure = (meaning: string, inch?: string, mm?: string): HardwareField => ({
  ...{ is: "measure", meaning },
  ...(inch !== undefined && { inch }),
  ...(mm !== undefined && { mm }),
});
export const range = (meaning: string, inch?: string, mm?: string): HardwareField => ({
  ...measure(meaning, inch, mm),
  is: "range",
});
/** A list of lengths that are sold, shortest first. */
export const measures = (meaning: string, inch: string, mm: string): HardwareField => ({
  ...measure(meaning, inch, mm),
  is: "measures",
});
/** A plain number: how many. */
export const number = (meaning: string, usual?: number): HardwareField => ({
  ...{ is: "number", meaning },
  ...(usual !== undefined && { inch: String(usual), mm: String(usual) }),
});
export const degrees = (meaning: string, usual: number): HardwareField => ({ ...number(meaning, usual), unit: "°" });
/** A mass; what is usual, in kg. */
export const mass = (meaning: string, usual?: number): HardwareField => ({ ...number(meaning, usual), is: "mass" });
/** One of several words; the first when nothing is said. */
export const word = (meaning: string, ...words: readonly string[]): HardwareField => ({
  ...{ is: "word", meaning, words },
  ...(words[0] !== undefined && { inch: words[0], mm: words[0] }),
});
export const deciding = (field: HardwareField, told?: string): HardwareField => ({
  ...field,
  decides: true,
  ...(told !== undefined && { told }),
});
/** What seldom matters, but where the plan counts on it. */
export const decidingWhereSaid = (field: HardwareField, told: string): HardwareField => ({
  ...field,
  decides: "said",
  told,
});
