import type { Design } from "../../design.ts";

/** Parts of glass. */
export function panesOf({ parts, stock }: Pick<Design, "parts" | "stock">): ReadonlySet<string> {
  const glass = new Set(stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  return new Set(parts.flatMap((part) => (glass.has(part.stock) ? [part.id] : [])));
}

/** Panes that lie in rabbets, and the beads over them: a pane is joined to its frame, and beads to the pane. */
export function glazingOf(design: Pick<Design, "parts" | "stock" | "joints">): readonly string[] {
  const panes = panesOf(design);
  const glazed = design.joints.filter(({ method }) => method === "glazed");
  return [
    ...new Set(glazed.flatMap(({ parts: [joined, mate] }) => (panes.has(joined) || panes.has(mate) ? [joined] : []))),
  ];
}
