import type { Axis } from "../draft.ts";
import { AXES } from "../kinds/places.ts";
import { squash } from "../names.ts";
import { placing } from "../schema/placing.ts";
import type { Entry, MapNode, Node } from "../yaml/nodes.ts";

export type Role = "low" | "high" | "extent" | "centre";

/** A statement of place in an assembly's settings: which direction it is about, and what it fixes there. */
export interface Said {
  readonly entry: Entry;
  /** The setting in its own spelling. */
  readonly key: string;
  readonly axis: Axis | null;
  readonly roles: readonly Role[];
}

const FIXED: ReadonlyMap<string, readonly [Axis, Role]> = new Map([
  ["left", ["across", "low"]],
  ["right", ["across", "high"]],
  ["front", ["deep", "low"]],
  ["back", ["deep", "high"]],
  ["bottom", ["up", "low"]],
  ["top", ["up", "high"]],
  ["on", ["up", "low"]],
  ["under", ["up", "high"]],
  ["behind", ["deep", "low"]],
  ["in front of", ["deep", "high"]],
  ["right of", ["across", "low"]],
  ["left of", ["across", "high"]],
  ["up from floor", ["up", "low"]],
]);

const WORDS: ReadonlyMap<string, string> = new Map(
  Object.entries(placing).flatMap(([key, { also }]) => [key, ...also].map((word) => [squash(word), key] as const)),
);

/** Whether a setting is about place. `own` are words that mean something else there. */
export const isPlace = (word: string, own: ReadonlySet<string>): boolean =>
  WORDS.has(squash(word)) && !own.has(squash(word));

/** The statements of place among some settings. `own` are words that mean something else there. */
export const placesIn = (node: MapNode, own: ReadonlySet<string>): readonly Said[] =>
  node.entries.flatMap((entry): Said[] => {
    const word = squash(entry.key.text);
    const key = WORDS.get(word);
    return key === undefined || own.has(word) ? [] : spread(entry, key).map((each) => said(each, key));
  });

/** `at: middle`, `centred on: { across: … }` and a list of faces speak of several directions: one statement for each. */
function spread(entry: Entry, key: string): readonly Entry[] {
  if (key === "flush with" && entry.value.kind === "list")
    return entry.value.items.map((value) => ({ key: entry.key, value }));
  if (!CENTRES.includes(key)) return [entry];
  const { value } = entry;
  const one = (axis: Axis, of: Node): Entry => {
    const word = { ...entry.key, text: axis, place: () => entry.key.at };
    return { key: entry.key, value: { kind: "map", at: value.at, entries: [{ key: word, value: of }], flow: true } };
  };
  if (value.kind === "map")
    return value.entries.flatMap((each) => {
      const axis = AXES.find((name) => name === squash(each.key.text));
      return axis ? [one(axis, each.value)] : [];
    });
  return LEVEL.map((axis) => one(axis, value));
}

export const CENTRES = ["at", "centred on"];
/** What a text alone is about: what stands in the middle stands on its floor. */
const LEVEL: readonly Axis[] = ["across", "deep"];

function said(entry: Entry, key: string): Said {
  const fixed = FIXED.get(key);
  if (fixed !== undefined) return { entry, key, axis: fixed[0], roles: [fixed[1]] };
  if (CENTRES.includes(key)) {
    const first = entry.value.kind === "map" ? squash(entry.value.entries[0]?.key.text ?? "") : "";
    return { entry, key, axis: AXES.find((name) => name === first) ?? null, roles: ["centre"] };
  }
  const axis = (AXES as readonly string[]).includes(key) ? (key as Axis) : faceIn(entry.value);
  if (!(AXES as readonly string[]).includes(key)) {
    const face = faceWord(entry.value);
    const role = face && FIXED.get(face)?.[1];
    return { entry, key, axis, roles: role ? [role] : [] };
  }
  const text = entry.value.kind === "text" ? entry.value.text : "";
  const roles: readonly Role[] = /^\s*between\s/i.test(text)
    ? ["low", "high"]
    : /^\s*(?:middle|cent(?:re|er)ed\s)/i.test(text)
      ? ["centre"]
      : ["extent"];
  return { entry, key, axis, roles };
}

/** The face that a text ends in: `leg.front`, `1/8 from leg.front`. */
const faceWord = (node: Node): string | undefined =>
  node.kind === "text" ? /\.\s*(left|right|front|back|bottom|top)\s*$/i.exec(node.text)?.[1]?.toLowerCase() : undefined;
const faceIn = (node: Node): Axis | null => FIXED.get(faceWord(node) ?? "")?.[0] ?? null;

/** What is known in one direction. */
export const rolesIn = (all: readonly Said[], axis: Axis): ReadonlySet<Role> =>
  new Set(all.filter((each) => each.axis === axis).flatMap((each) => each.roles));
