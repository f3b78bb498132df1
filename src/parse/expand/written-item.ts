import type { WrittenItem } from "../assemblies/assembly.ts";
import { hardwareKind } from "../hardware/index.ts";
import { squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import { written } from "./make.ts";

/** Hardware of a plan by its name, or by a kind. What is not known gives the usual of a kind: it is told when the piece is solved. */
export function writtenItem(
  plan: MapNode,
  units: "inch" | "mm",
  name: TextNode | undefined,
  usual: string,
): WrittenItem {
  const all = settingOf(plan, "hardware")?.value;
  const own = name && all?.kind === "map" ? settingOf(all, squash(name.text))?.value : undefined;
  const draft = own?.kind === "map" ? own : null;
  const said = draft && settingOf(draft, "kind")?.value;
  const kind = hardwareKind(said?.kind === "text" ? said.text : (name?.text ?? usual)) ?? hardwareKind(usual);
  const field = (word: string): Node | undefined => {
    const words = [word, ...(kind?.fields[word]?.also ?? [])];
    return words.flatMap((each) => (draft && settingOf(draft, squash(each))?.value) ?? [])[0];
  };
  const usualText = (word: string): string | undefined => kind?.fields[word]?.[units];
  const at = name?.at ?? plan.at;
  const measure = (word: string): TextNode | null => {
    const node = field(word);
    if (node?.kind === "text") return node;
    const text = usualText(word);
    return text === undefined ? null : written(text, at);
  };
  return {
    kind: kind?.kind ?? usual,
    measure,
    said(word) {
      const node = field(word);
      return node?.kind === "text" ? node : null;
    },
    least(word) {
      const both = measure(word);
      const low = both && /^(.+?)\s+(?:to|and)\s+./iu.exec(both.text)?.[1];
      return both && low ? { ...both, text: low } : null;
    },
    lengths(word) {
      const node = field(word);
      if (node?.kind === "list") return node.items.flatMap((each) => (each.kind === "text" ? [each] : []));
      return (usualText(word)?.split(", ") ?? []).map((each) => written(each, at));
    },
  };
}
