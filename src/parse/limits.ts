/** Every limit on what a source may hold, with the words for the thing that is counted. One table, printed by `explain`. */
export const LIMITS = {
  sourceBytes: { limit: 1_048_576, of: "bytes in the file" },
  tokens: { limit: 400_000, of: "words and signs in the file" },
  nesting: { limit: 64, of: "levels of nesting" },
  mapKeys: { limit: 5_000, of: "settings at one level" },
  nodes: { limit: 100_000, of: "values, counting each use of an anchor" },
  textLength: { limit: 10_000, of: "characters in one text" },
  formulaLength: { limit: 500, of: "characters in a formula" },
  formulaDepth: { limit: 32, of: "levels of brackets in a formula" },
  nameLength: { limit: 100, of: "characters in a name" },
  parts: { limit: 5_000, of: "parts" },
  metres: { limit: 100, of: "metres in one measure" },
  choices: { limit: 16, of: "choices" },
  options: { limit: 20, of: "options of one choice" },
  recoveries: { limit: 10, of: "settings that cannot be read before the rest is left" },
  recoverable: { limit: 100_000, of: "characters in a source of which the rest is read after a mistake of writing" },
  syntaxFindings: { limit: 50, of: "mistakes of writing shown" },
} as const satisfies Record<string, { readonly limit: number; readonly of: string }>;

export type LimitName = keyof typeof LIMITS;
