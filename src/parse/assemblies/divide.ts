import { from, type Settings } from "../expand/make.ts";
import type { TextNode } from "../yaml/nodes.ts";
import type { Site } from "./assembly.ts";
import { inCase } from "./dividers.ts";
import { insetDeep } from "./doors-in.ts";
import { hold } from "./holds.ts";
import { type Bounds, type Making, whole, within } from "./making.ts";
import type { Division, Opening, Size } from "./openings.ts";
import { shelve } from "./shelve.ts";

const SIDES = {
  across: { low: "left", high: "right", extent: "across" },
  down: { low: "top", high: "bottom", extent: "up" },
} as const;

/** Divides a space into openings with dividers between them, and fills the openings. */
export function divide(region: string, division: Division, bounds: Bounds, making: Making, root = true): void {
  const { entries, site } = making;
  const { way, openings, dividers } = division;
  const dividing = making.dividing ?? inCase;
  const { low, high, extent } = SIDES[way];
  const prefix = root ? "" : `${region}-`;
  const names = openings.map((opening, i) => opening.name ?? (root ? `opening-${i + 1}` : `${region}-${i + 1}`));
  const walls = dividers.map((_, i) => `${prefix}${dividing.word(way)}-${i + 1}`);
  const unit = shareOf(region, division, walls, making);
  const lastShare = openings.findLastIndex(({ size }) => "shares" in size);
  const shares = openings.map(({ size }) => ("shares" in size ? size.shares : 0));
  const before = (i: number): number => shares.slice(0, i).reduce((a, b) => a + b, 0);
  for (const [i, opening] of openings.entries()) {
    const name = names[i] as string;
    const [start, end] = [walls[i - 1], walls[i]];
    const fromHigh = lastShare >= 0 && i > lastShare;
    const closes = dividing.placed || i === lastShare || (lastShare < 0 && i === openings.length - 1);
    const startAt = start ? site.write`${start}.${high}` : site.write`${region}.${low}`;
    const endAt = end ? site.write`${end}.${low}` : site.write`${region}.${high}`;
    entries[name] = from(opening.at, {
      kind: "space",
      ...((dividing.placed || !fromHigh) && { [low]: startAt }),
      ...((fromHigh || closes) && { [high]: endAt }),
      ...(!(dividing.placed || (closes && "shares" in opening.size)) && {
        [extent]: sizeOf(opening.size, unit, before(i), site),
      }),
      ...others(region, way, site),
    });
    // A divider lies against the opening that is placed without it.
    const wall = walls[i];
    if (wall) {
      const after = fromHigh || closes ? names[i + 1] : undefined;
      const touching =
        after && lastShare >= 0 ? { [high]: site.write`${after}.${low}` } : { [low]: site.write`${name}.${high}` };
      const said = dividers[i];
      const drawers = [opening, openings[i + 1]].some(holdsDrawer);
      const between = { name: wall, said: said?.said ?? null, region, way, touching, bounds, drawers };
      within(said?.at ?? opening.at, making, (inner) => dividing.put(between, inner));
    }
  }
  for (const [i, opening] of openings.entries()) {
    const alike = alikeTo(opening, division, names, making);
    const around = inner(bounds, way, walls[i - 1], walls[i]);
    within(opening.at, making, (own) => fill(names[i] as string, opening, around, own, alike));
  }
}

const holdsDrawer = (opening: Opening | undefined): boolean =>
  opening !== undefined &&
  (opening.holds?.drawer !== undefined ||
    opening.holds?.drawers !== undefined ||
    opening.division?.openings.some(holdsDrawer) === true);

/** Openings of equal shares differ by what rounding leaves over: fronts and doors in them are made for the least, so that equal ones are equal. */
function alikeTo({ size }: Opening, { way, openings }: Division, names: readonly string[], { site }: Making): Settings {
  const { extent } = SIDES[way];
  const own = "shares" in size ? size.shares : 0;
  const equals = openings.flatMap((each, i) =>
    own > 0 && "shares" in each.size && each.size.shares === own
      ? [`${whole(names[i] as string, site)}.${extent}`]
      : [],
  );
  if (equals.length < 2) return {};
  return { [way === "across" ? "least wide" : "least high"]: site.write`min(${equals.join(", ")})` };
}

/** Openings before the last share are placed from the start, those behind it from the end: the last share closes the row. */
function inner(bounds: Bounds, way: Division["way"], start: string | undefined, end: string | undefined): Bounds {
  if (way === "across") return { ...bounds, ...(start && { left: start }), ...(end && { right: end }) };
  const { topBehind: _, ...closed } = bounds;
  return { ...(start ? { ...closed, top: start } : bounds), ...(end && { bottom: end }) };
}

const others = (region: string, way: Division["way"], { write }: Site): Settings => {
  const faces = way === "across" ? ["bottom", "top"] : ["left", "right"];
  return Object.fromEntries([...faces, "front", "back"].map((face) => [face, write`${region}.${face}`]));
};

/** One share of what dividers and given sizes leave, as a formula; null where nothing is shared. */
function shareOf(
  region: string,
  { way, openings }: Division,
  walls: readonly string[],
  { site }: Making,
): TextNode | null {
  const total = openings.reduce((sum, { size }) => sum + ("shares" in size ? size.shares : 0), 0);
  if (total === 0) return null;
  const { extent } = SIDES[way];
  const taken = [
    ...walls.map((wall) => site.write` - ${wall}.${extent}`),
    ...openings.flatMap(({ size }) => ("measure" in size ? [site.write` - ${size.measure}`] : [])),
  ];
  const left = taken.reduce((text, next) => site.write`${bare(text)}${bare(next)}`, site.write`${region}.${extent}`);
  return total === 1 ? site.write`(${bare(left)})` : site.write`(${bare(left)}) / ${total}`;
}

/** Texts that are formulas in the making: put together without brackets. */
const bare = (node: TextNode): string => node.text;

/** Shares are rounded to what can be marked, each from where the row begins, so that small differences do not add up. */
function sizeOf(size: Size, unit: TextNode | null, before: number, { write, step }: Site): TextNode {
  if ("measure" in size) return size.measure;
  const times = (count: number): string => (count === 1 ? (unit?.text ?? "0") : `${unit?.text ?? "0"} * ${count}`);
  const upTo = write`round(${times(before + size.shares)}, ${step.text})`;
  return before === 0 ? upTo : write`${upTo.text} - round(${times(before)}, ${step.text})`;
}

/** What an opening holds. */
function fill(name: string, opening: Opening, bounds: Bounds, making: Making, alike: Settings): void {
  if (opening.division) divide(name, opening.division, bounds, making, false);
  if (opening.holds) hold(name, opening.holds, bounds, making, alike);
  const { shelves, holds } = opening;
  if (!shelves) return;
  const inset = holds?.door ? insetDeep(holds.door.value, making) : null;
  const clear = making.site.usual("1/4", "6");
  const back = inset && making.site.write`${inset.text} + ${clear}`;
  const behind = back && { "set back": { value: back, at: back.at, key: back.at } };
  within(shelves.key, making, (own) => shelve(name, { ...behind, ...shelves.value }, bounds, own));
}
