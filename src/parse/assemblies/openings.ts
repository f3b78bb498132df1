import type { Span } from "../../findings/span.ts";
import { byForm, firstWord, made } from "../kinds/combine.ts";
import { partName } from "../kinds/kept.ts";
import { type JsonSchema, type Kind, tellWrong } from "../kinds/kind.ts";
import { type Field, may, type Settings as Read, settings } from "../kinds/settings.ts";
import { sizeIn, text } from "../kinds/simple.ts";
import { squash } from "../names.ts";
import type { MapNode, Node, TextNode } from "../yaml/nodes.ts";
import { type Divider, dividerSettings } from "./divider-settings.ts";
import { type Held, holdKeys } from "./holds.ts";
import type { Way } from "./making.ts";
import { type Shelves, shelves } from "./shelves-in.ts";

/** How wide or high an opening is: a measure, or a share of what is left. */
export type Size = { readonly measure: TextNode } | { readonly shares: number };

const SHARES = /^(\d{1,3})\s+shares?$/i;

const size: Kind<Size> = {
  words: "a measure, `the rest`, `equal`, or a number of shares",
  json: { type: ["string", "number"] },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, this.words);
    if (["therest", "rest", "equal"].includes(squash(node.text))) return { shares: 1 };
    const shares = SHARES.exec(node.text.trim());
    if (shares !== null && Number(shares[1]) > 0) return { shares: Number(shares[1]) };
    return sizeIn(node, where, true) === undefined ? undefined : { measure: node };
  },
};

export interface Opening {
  /** The setting that begins it. */
  readonly at: Span;
  readonly name?: string;
  readonly size: Size;
  readonly division?: Division;
  readonly holds?: Held;
  readonly shelves?: Field<Shelves>;
}
export interface SaidDivider {
  readonly at: Span;
  readonly said: Divider | null;
}
/** Openings side by side or one above the other, with what stands between each two. */
export interface Division {
  readonly way: Way;
  readonly openings: readonly Opening[];
  /** One fewer than openings; what the maker said of each, and where. */
  readonly dividers: readonly (SaidDivider | null)[];
}

type OpeningWords = {
  name?: { value: string };
  wide?: { value: Size };
  high?: { value: Size };
  shelves?: Field<Shelves>;
  across?: { value: Division };
  down?: { value: Division };
} & Held;

/** The openings of a list; read on demand, since an opening may hold such a list. */
const division = (way: "across" | "down"): Kind<Division> => ({
  words: "a list of openings, in the order in which the eye reads them",
  json: { type: "array", items: { $ref: "#/$defs/opening" } },
  read(node, where) {
    if (node.kind !== "list") return tellWrong(where, node, this.words);
    const openings: Opening[] = [];
    const dividers: (SaidDivider | null)[] = [];
    let complete = true;
    for (const item of node.items) {
      const isDivider =
        (item.kind === "text" && ["divider", "shelf", "panel"].includes(squash(item.text))) ||
        (item.kind === "map" && hasKey(item, "divider"));
      if (isDivider) {
        const read = item.kind === "map" ? dividerSettings.read(item, where) : undefined;
        if (item.kind === "map" && read === undefined) complete = false;
        if (openings.length > 0) dividers[openings.length - 1] = { at: firstWord(item), said: read?.said ?? null };
        continue;
      }
      const read = opening.read(item, where);
      if (read === undefined) complete = false;
      else openings.push(read);
    }
    if (!complete || openings.length === 0) return undefined;
    return { way, openings, dividers: openings.slice(1).map((_, i) => dividers[i] ?? null) };
  },
});

const hasKey = (node: MapNode, name: string): boolean => node.entries.some(({ key }) => squash(key.text) === name);

const openingKeys = {
  name: may(text(60), "What formulas, notes and other assemblies call it.", "called"),
  wide: may(size, "How wide it is, in a row from left to right."),
  high: may(size, "How high it is, in a column from the top."),
  shelves: may(shelves, "Fixed shelves in it: how many, or what they are."),
  ...holdKeys,
  across: may(division("across"), "Openings in it, side by side."),
  down: may(division("down"), "Openings in it, one below the other."),
};
const openingSettings = settings("an opening", openingKeys);

const asOpening = (said: OpeningWords, at: Span): Opening => {
  const { name, wide, high, shelves: held, across, down, door, drawer, drawers } = said;
  const inner = across?.value ?? down?.value;
  return {
    at,
    ...(name && { name: name.value }),
    size: wide?.value ?? high?.value ?? { shares: 1 },
    ...(inner && { division: inner }),
    holds: {
      ...(door && { door }),
      ...(drawer && { drawer }),
      ...(drawers && { drawers }),
    },
    ...(held && { shelves: held }),
  };
};

const opening: Kind<Opening> = byForm({
  text: made(size, (found, { at }): Opening => ({ at, size: found })),
  map: made(openingSettings as Kind<Read<never>>, (read, node) =>
    asOpening(read.said as unknown as OpeningWords, firstWord(node)),
  ),
});

/** Divided, or one opening as a whole, with what it holds. */
const ways = {
  across: may(division("across"), "Side by side, from the left."),
  down: may(division("down"), "One below the other, from the top."),
  name: openingKeys.name,
  shelves: openingKeys.shelves,
  ...holdKeys,
};

function divisionOf(said: OpeningWords, node: Node): Division {
  const { across, down, ...own } = said;
  const divided = across?.value ?? down?.value;
  return divided && Object.keys(own).length === 0
    ? divided
    : { way: "across", openings: [asOpening(said, firstWord(node))], dividers: [] };
}

/** `openings: { across: […] }`, `{ down: […] }`, or `{ door: … }` where it is one. */
export const openings = made(settings("openings", ways) as Kind<Read<never>>, (read, node) =>
  divisionOf(read.said as unknown as OpeningWords, node),
);

/** The same, or `{ behind: face-frame }`. */
export const caseOpenings = made(
  settings("the openings of a case", {
    ...ways,
    behind: may(
      partName,
      "The face frame before it, whose openings it has: a panel behind each rail and stile between them, and the shelves.",
    ),
  }) as Kind<Read<never>>,
  (read, node): Division | { readonly behind: TextNode } => {
    const { behind, ...said } = read.said as unknown as OpeningWords & { behind?: Field<TextNode> };
    return behind ? { behind: behind.value } : divisionOf(said, node);
  },
);

/** The same openings without something that they hold. */
export const without = (what: "holds" | "shelves", division: Division): Division => ({
  ...division,
  openings: division.openings.map(({ [what]: _, division: inner, ...rest }) => ({
    ...rest,
    ...(inner && { division: without(what, inner) }),
  })),
});

/** A single opening with these shelves; null where it is divided or has its own. */
export function withShelves(division: Division, held: Field<Shelves>): Division | null {
  const [only, second] = division.openings;
  return only && !second && !only.division && !only.shelves
    ? { ...division, openings: [{ ...only, shelves: held }] }
    : null;
}

/** An opening or a divider between two. */
export const openingJson: JsonSchema = { anyOf: [size.json, openingSettings.json, dividerSettings.json] };
