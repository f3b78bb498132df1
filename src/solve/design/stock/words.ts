import { findSpecies, plainName, type Species, speciesNames } from "./species.ts";

/** Words of the shop that change nothing about the size: how a board was sawn, dried, graded and planed. */
const QUALIFIERS: ReadonlySet<string> = new Set(
  (
    "x by board boards lumber timber wood solid hardwood softwood plank stock piece pieces in thick nominal and or of the " +
    "kiln air dried dry kd quarter quartered quartersawn quartersawed sawed flat plain plainsawn rift sawn straight grain grained " +
    "select selected common clear no number better premium prime standard grade graded fas cabinet furniture " +
    "surfaced planed dressed s2s s3s s4s construction framing stud studs whiteboard untreated " +
    "sheet sheets panel panels sanded veneer veneered faced face core exterior interior marine finish prefinished " +
    "underlayment sheathing tempered baltic a b c d a1 a2 a4 b2 c2 ab ac bb bc cc cd cdx acx bcx"
  ).split(" "),
);

const SPECIES_WORDS = Math.max(...speciesNames.map((name) => name.split(" ").length));
const GRADE = /^#?\d$/;

/** A wood named in running text, and the words that mean nothing here. */
export interface Words {
  readonly species: Species | null;
  /** The name of the wood as it was written. */
  readonly wood: string | null;
  readonly unknown: readonly string[];
}

/** Reads `quarter-sawn white oak`: the longest name of a wood in it, and what is left over. The first wood named counts. */
export function readWords(text: string): Words {
  const words = plainName(text.replace(/[,;.()"'″”]/g, " "))
    .split(" ")
    .filter((word) => word !== "");
  const unknown: string[] = [];
  let found: { species: Species; wood: string } | null = null;
  for (let at = 0; at < words.length; ) {
    const name = longestName(words, at);
    if (name !== undefined) {
      found ??= name;
      at += name.wood.split(" ").length;
      continue;
    }
    const word = words[at] ?? "";
    if (!QUALIFIERS.has(word) && !GRADE.test(word)) unknown.push(word);
    at += 1;
  }
  return { species: found?.species ?? null, wood: found?.wood ?? null, unknown };
}

function longestName(words: readonly string[], at: number): { species: Species; wood: string } | undefined {
  for (let count = Math.min(SPECIES_WORDS, words.length - at); count > 0; count -= 1) {
    const wood = words.slice(at, at + count).join(" ");
    const species = findSpecies(wood);
    if (species !== undefined) return { species, wood };
  }
  return undefined;
}
