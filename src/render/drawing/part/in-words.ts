/** How a part lies in its drawing, and what is cut and bored in it, in words. */
import { times } from "../../../geometry/vec.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import type { Bore } from "./bores.ts";
import { type Lying, sideWord } from "./lying.ts";

export function inWords({ face, edge, part }: Lying): string {
  const left = sideWord(times(face.right, -1));
  const below = sideWord(edge.towards);
  const turned = part.turned ? "Drawn square, before it leans. " : "";
  return `${turned}Seen from ${face.name}; its ${left} end lies at the left, its ${below} edge below.`;
}

export const altOf = ({ mark, name }: BuiltPart, lies: Lying, bores: readonly Bore[]): string => {
  const kinds = [...new Set(lies.part.features.map(({ kind }) => kind))];
  const cuts = kinds.length > 0 ? ` Cuts and joints: ${kinds.join(", ")}.` : "";
  const holes = bores.map(({ holes, side }) => `${holes.length} ${holes[0]?.kind} in the ${side}`);
  return `Part ${mark}, ${name}. ${inWords(lies)}${cuts}${holes.length > 0 ? ` Holes: ${holes.join(", ")}.` : ""}`;
};
