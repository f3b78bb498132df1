import type { Design } from "../../design.ts";

/** Parts of glass. */
export function panesOf({ parts, stock }: Pick<Design, "parts" | "stock">): ReadonlySet<string> {
  const glass = new Set(stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  return new Set(parts.flatMap((part) => (glass.has(part.stock) ? [part.id] : [])));
}

/** Panes, and the beads that lie over them: what is joined to a pane, where a pane is joined to its frame. */
export function glazingOf(design: Pick<Design, "parts" | "stock" | "joints">): readonly string[] {
  const panes = panesOf(design);
  const over = design.joints.flatMap(({ method, parts: [joined, pane] }) =>
    method === "glazed" && panes.has(pane) ? [joined] : [],
  );
  return [...new Set([...panes, ...over])];
}
