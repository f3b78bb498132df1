/** Fronts and doors that lie in front of what holds them: how far that stands back for them. */
import type { Settings } from "../expand/make.ts";
import { squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import type { Site } from "./assembly.ts";
import type { Division } from "./openings.ts";

const textOf = (node: Node | undefined): TextNode | null => (node?.kind === "text" ? node : null);
const mapOf = (node: Node | undefined): MapNode | null => (node?.kind === "map" ? node : null);
const isOverlay = (said: MapNode): boolean => squash(textOf(settingOf(said, "lies")?.value)?.text ?? "") === "overlay";

/**
 * Statements of place from front to back in which the front that only follows the outside makes room for the thickest overlay front; those
 * of the maker stay as they are.
 */
export function behindFronts(deep: Settings, division: Division | null, stock: TextNode, site: Site): Settings {
  const { front } = deep;
  const follows =
    typeof front === "object" && "text" in front && front.text === "outside.front" && front.at === site.at;
  const thick = division ? fronts(division, stock, site) : [];
  if (!follows || thick.length === 0) return deep;
  return { ...deep, front: site.write`outside.front + max(${[...new Set(thick)].join(", ")})` };
}

/** How far each reaches out, as formulas. */
function fronts({ openings }: Division, stock: TextNode, site: Site): readonly string[] {
  return openings.flatMap(({ division, holds }): readonly string[] => {
    const drawers = [holds?.drawer?.value, holds?.drawers?.value].flatMap(
      (said) => mapOf(said && settingOf(said, "front")?.value) ?? [],
    );
    const doors = holds?.door ? [holds.door.value] : [];
    return [
      ...[...drawers, ...doors].filter(isOverlay).map((said) => reachOf(said, stock, site)),
      ...(division ? fronts(division, stock, site) : []),
    ];
  });
}

/** The thickness of its wood, of strips on it, and of what keeps it off. */
function reachOf(said: MapNode, stock: TextNode, { write }: Site): string {
  const thickness = (of: MapNode | null): string | null => {
    const made = textOf(of ? settingOf(of, "madeof")?.value : undefined);
    return made && `${made.text.trim().replaceAll(/\s+/gu, "-")}.thickness`;
  };
  const frame = mapOf(settingOf(said, "frame")?.value);
  const own = thickness(frame) ?? thickness(said) ?? `${stock.text.trim().replaceAll(/\s+/gu, "-")}.thickness`;
  const strips = thickness(mapOf(settingOf(said, "strips")?.value));
  const off = textOf(settingOf(said, "against")?.value);
  return [own, ...(strips ? [strips] : []), ...(off ? [write`(${off})`.text] : [])].join(" + ");
}
