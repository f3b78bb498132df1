import { squash } from "../names.ts";
import { type MapNode, settingOf, type TextNode } from "../yaml/nodes.ts";

/** Whether the plan says of a stock that it is glass. What it does not know is told when the piece is solved. */
export function isGlass(plan: MapNode, { text }: TextNode): boolean {
  const all = settingOf(plan, "stock")?.value;
  const own = all?.kind === "map" ? settingOf(all, squash(text))?.value : undefined;
  const said = own?.kind === "map" ? settingOf(own, "material")?.value : undefined;
  return said?.kind === "text" && squash(said.text) === "glass";
}
