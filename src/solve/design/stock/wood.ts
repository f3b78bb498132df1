import type { Finding } from "../../../findings/finding.ts";
import { unknownSpecies } from "../../../findings/rules/unknown-species.ts";
import { nearest } from "../../../findings/suggest.ts";
import type { StockDraft } from "../../../parse/draft.ts";
import type { SoldAs } from "./sold-as.ts";
import { plainName, type Species, speciesNames } from "./species.ts";
import { readWords } from "./words.ts";

/** The wood of a stock: its entry in the table, if it has one, and the name by which the maker calls it. */
export interface Wood {
  readonly species: Species | null;
  readonly called: string | null;
  /** Sawn so that the growth rings stand upright in the thickness of a board. */
  readonly quartered: boolean;
}

const QUARTERED = /\bquarter(?:ed|[ -]?saw(?:n|ed))\b/;

/**
 * The wood that `wood:` names, else the one in `sold as`. `reclaimed heart pine` is pine; but words that are nearly the name of
 * another wood (`whit oak`) are taken for a slip of the pen.
 */
export function resolveWood(draft: StockDraft, sold: SoldAs | null): { wood: Wood; findings: readonly Finding[] } {
  const said = draft.wood;
  const quartered = [said, draft.soldAs].some((each) => each && QUARTERED.test(plainName(each.value)));
  if (said === undefined)
    return { wood: { species: sold?.species ?? null, called: sold?.wood ?? null, quartered }, findings: [] };
  const name = plainName(said.value);
  const { species, unknown } = readWords(name);
  const near = unknown.length === 0 ? [] : nearest(name, speciesNames);
  if (species !== null && near.length === 0) return { wood: { species, called: name, quartered }, findings: [] };
  const [only] = near;
  const more = near.length === 1 && only !== undefined ? { fix: { at: said.at, insert: only } } : {};
  return {
    wood: { species: null, called: name, quartered },
    findings: [unknownSpecies(said.at, { wood: said.value, near }, more)],
  };
}
