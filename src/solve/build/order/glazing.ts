import type { Design } from "../../design.ts";
import type { Assembly } from "./plan.ts";

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

/** Whether all that a pane lies in is together before the pane goes in, and nothing comes between that and its beads. */
export function goesInLast(whole: Assembly, design: Pick<Design, "parts" | "stock" | "joints">): boolean {
  const glazing = new Set(glazingOf(design));
  const isGlazing = ({ parts }: Assembly): boolean => parts.every((id) => glazing.has(id));
  return [...panesOf(design)].every((pane) => {
    const joined = new Set(design.joints.flatMap(({ parts }) => (parts.includes(pane) ? parts : [])));
    const around = [...joined].filter((id) => !glazing.has(id));
    const all = [...joined].filter((id) => glazing.has(id));
    const isLast = (body: Assembly, held: readonly string[]): boolean => {
      if (body.kind === "part") return true;
      const { staying, moving } = body;
      const [comes, there] = [moving, staying].map(({ parts }) => held.filter((id) => parts.includes(id)));
      if (!comes || !there) return false;
      // The pane is in something larger, of which all is told there.
      if (!isGlazing(moving)) {
        const inOne = comes.length === 0 ? staying : moving;
        return held.length === all.length && (comes.length === 0 || there.length === 0) && isLast(inOne, held);
      }
      return comes.includes(pane) ? around.every((id) => staying.parts.includes(id)) : isLast(staying, there);
    };
    return isLast(whole, all);
  });
}
