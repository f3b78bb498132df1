import { squash } from "../names.ts";
import { part } from "./part.ts";

/** Every word that a part can say, squashed. */
export const PART_WORDS: ReadonlySet<string> = new Set(
  Object.entries(part.keys).flatMap(([name, key]) => [name, ...key.also].map(squash)),
);
