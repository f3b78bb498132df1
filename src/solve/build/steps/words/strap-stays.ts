import type { Work } from "../draft.ts";

/** How the bracket of a wall strap stays where it is moved along to a stud: at its height on a side, at its distance from the back edge on a top. */
export function strapStays({ design }: Work): string {
  const straps = design.fittings.filter(({ hardware }) => hardware.some(({ item }) => item.kind === "wall strap"));
  const lying = straps.filter(({ face }) => face === "top" || face === "bottom");
  if (lying.length === 0) return "at the same height";
  const behind = "at the same distance from the back edge";
  return lying.length === straps.length ? behind : `at the same height, or on a top ${behind}`;
}
