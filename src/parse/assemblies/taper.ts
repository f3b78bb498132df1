import type { Face } from "../draft.ts";
import type { Kind } from "../kinds/kind.ts";
import { faces } from "../kinds/places.ts";
import { squash } from "../names.ts";

const ALL = ["left", "right", "front", "back"] as const;
const opposite: ReadonlyMap<string, Face> = new Map([
  ...([["left", "right"] as const, ["right", "left"] as const] as const),
  ...([["front", "back"] as const, ["back", "front"] as const] as const),
]);

export type TaperFaces = "inside" | "outside" | "all" | readonly string[];

/** `inside`, `outside`, `all` or faces by name. */
export const taperFaces: Kind<TaperFaces> = {
  words: "inside, outside, all, or faces",
  json: { anyOf: [{ enum: ["inside", "outside", "all"] }, faces.json] },
  read(node, where) {
    const said = node.kind === "text" ? squash(node.text) : "";
    if (said === "inside" || said === "outside" || said === "all") return said;
    return faces.read(node, where);
  },
};

/** The faces that run in, of a leg or post that stands at this corner: inside are the two that look at its neighbours. */
export function tapering(said: TaperFaces, corner: readonly [deep: "front" | "back", across: "left" | "right"]) {
  if (said === "all") return [...ALL];
  if (said === "outside") return [...corner];
  return said === "inside" ? corner.map((face) => opposite.get(face) ?? face) : [...said];
}
