import type { Settings } from "../expand/make.ts";
import { settingsOf } from "../kinds/kept.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { squash } from "../names.ts";
import type { MapNode, Node, TextNode } from "../yaml/nodes.ts";
import { beadDeep } from "./door/pane.ts";
import { coversOf } from "./drawers-in.ts";
import { type Bounds, type Making, whole, wholeCarrier } from "./making.ts";

const WORDS = "settings of a door";

/** Read when the door is opened. */
export const heldDoor: Kind<MapNode> = {
  words: WORDS,
  json: { type: "object", title: "settings of [a door](#door)" },
  read: (node, where) => (node.kind === "map" ? node : tellWrong(where, node, WORDS)),
};

/** A door, or a pair, in an opening of a case or in front of it. */
export function doorIn(space: string, said: MapNode, bounds: Bounds, making: Making, alike: Settings): void {
  const { site, entries } = making;
  const wall = (part: string | undefined) => part && wholeCarrier(part, "hinges", making);
  entries[`${space}-door`] = {
    ...{ kind: "door", in: whole(space, site) },
    walls: { left: wall(bounds.left), right: wall(bounds.right) },
    covers: coversOf(said, bounds, making),
    ...alike,
    ...settingsOf(said),
  };
}

const settingIn = (said: MapNode, name: string): Node | undefined =>
  said.entries.find(({ key }) => squash(key.text) === squash(name))?.value;
const textIn = (said: MapNode, name: string): TextNode | undefined => {
  const found = settingIn(said, name);
  return found?.kind === "text" ? found : undefined;
};

/** How far back an inset door reaches into its opening, its own set back included; null where none does. */
export function insetDeep(said: MapNode, { site }: Making): TextNode | null {
  const { write } = site;
  if (squash(textIn(said, "lies")?.text ?? "inset") !== "inset") return null;
  const thick = (of: MapNode): TextNode | null => {
    const stock = textIn(of, "made of");
    return stock ? write`${stock.text.trim().replaceAll(/\s+/gu, "-")}.thickness` : null;
  };
  const [frame, strips] = [settingIn(said, "frame"), settingIn(said, "strips")];
  const own = (frame?.kind === "map" && thick(frame)) || thick(said);
  const more = strips?.kind === "map" ? thick(strips) : null;
  const panel = settingIn(said, "panel");
  const filling = panel?.kind === "map" ? textIn(panel, "made of") : textIn(said, "panel");
  const beads = filling && site.isGlass(filling) ? ` + ${beadDeep(site)}` : "";
  const back = textIn(said, "set back");
  return own && write`${own.text}${more ? ` + ${more.text}` : ""}${beads}${back ? write` + ${back}`.text : ""}`;
}
