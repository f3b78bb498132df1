import { squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";

/** Whether the plan says of a stock that it is glass. What it does not know is told when the piece is solved. */
export function isGlass(plan: MapNode, stock: TextNode): boolean {
  const said = saidOf(plan, stock, "material");
  return said?.kind === "text" && squash(said.text) === "glass";
}

/** Whether it says that it is solid wood. */
export const isSolid = (plan: MapNode, stock: TextNode): boolean => saidOf(plan, stock, "wood") !== undefined;

function saidOf(plan: MapNode, { text }: TextNode, key: string): Node | undefined {
  const all = settingOf(plan, "stock")?.value;
  const own = all?.kind === "map" ? settingOf(all, squash(text))?.value : undefined;
  return own?.kind === "map" ? settingOf(own, key)?.value : undefined;
}
