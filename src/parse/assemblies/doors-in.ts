import { settingsOf } from "../kinds/kept.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import type { MapNode } from "../yaml/nodes.ts";
import { coversOf, whole } from "./drawers-in.ts";
import { type Bounds, carrier, type Making } from "./making.ts";

const WORDS = "settings of a door";

/** Read when the door is opened. */
export const heldDoor: Kind<MapNode> = {
  words: WORDS,
  json: { type: "object", title: "settings of [a door](#door)" },
  read: (node, where) => (node.kind === "map" ? node : tellWrong(where, node, WORDS)),
};

/** A door, or a pair, in an opening of a case or in front of it. */
export function doorIn(space: string, said: MapNode, bounds: Bounds, making: Making): void {
  const { site, entries } = making;
  const wall = (part: string | undefined) => part && whole(carrier(part, "hinges", making), site);
  entries[`${space}-door`] = {
    ...{ kind: "door", in: whole(space, site) },
    walls: { left: wall(bounds.left), right: wall(bounds.right) },
    covers: coversOf(said, bounds, making),
    ...settingsOf(said),
  };
}
