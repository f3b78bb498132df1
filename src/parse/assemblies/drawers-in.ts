import type { Settings } from "../expand/make.ts";
import { settingsOf } from "../kinds/kept.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import { type Bounds, type Making, whole, wholeCarrier } from "./making.ts";

const WORDS = "settings of a drawer";

/** Read when the drawer is opened. */
export const heldDrawer: Kind<MapNode> = {
  words: WORDS,
  json: { type: "object", title: "settings of [a drawer](#drawer)" },
  read: (node, where) => (node.kind === "map" ? node : tellWrong(where, node, WORDS)),
};

/** A drawer in an opening of a case. */
export function drawerIn(space: string, said: MapNode, bounds: Bounds, making: Making, alike: Settings): void {
  const own = { ...alike, ...settingsOf(said) };
  addDrawer(`${space}-drawer`, space, own, coversOf(said, bounds, making), bounds, making);
}

/** More than this are no drawers. */
const MOST = 20;

/** Drawers one below the other without dividers, numbered from the top; what lies between two fronts is one gap. */
export function drawersIn(space: string, said: MapNode, bounds: Bounds, making: Making, alike: Settings): void {
  const { site, entries } = making;
  const { write, step } = site;
  const count = settingOf(said, "count")?.value;
  const n = count?.kind === "text" ? Number(count.text) : Number.NaN;
  if (!Number.isInteger(n) || n < 1 || n > MOST) {
    tellWrong({ ...site.where, key: "count" }, count ?? said, `a whole number of drawers from 1 to ${MOST}`);
    return;
  }
  const wide = { "least wide": alike["least wide"] };
  const own = {
    ...wide,
    ...Object.fromEntries(Object.entries(settingsOf(said)).filter(([key]) => squash(key) !== "count")),
  };
  const inset = isInset(said);
  // Openings of inset fronts share the gap between two of them: each front leaves it open all round.
  const shared = inset ? gapOf(said, making) : write`0`;
  // All alike to the mark; what is left over lies half above and half below.
  const pitch = write`round-down((${space}.up - (${shared.text})) / ${n}, ${step.text})`.text;
  const rest = `(${space}.up - (${shared.text}) - ${n} * ${pitch}) / 2`;
  const covers = coversOf(said, bounds, making);
  const half = write`0 - (${gapOf(said, making).text}) / 2`;
  for (let i = 0; i < n; i += 1) {
    const room = `${space}-drawer-room-${i + 1}`;
    entries[room] = {
      kind: "space",
      ...Object.fromEntries(["left", "right", "front", "back"].map((face) => [face, write`${space}.${face}`])),
      top: write`${space}.top - ${rest} - ${i} * ${pitch}`,
      bottom: write`${space}.top - ${rest} - ${i + 1} * ${pitch} - (${shared.text})`,
    };
    const reach = { ...covers, ...(i > 0 && { top: half }), ...(i < n - 1 && { bottom: half }) };
    addDrawer(`${space}-drawer-${i + 1}`, room, own, reach, bounds, making);
  }
}

function addDrawer(
  name: string,
  room: string,
  own: Settings,
  covers: Settings,
  { left, right }: Bounds,
  making: Making,
): void {
  const { site, entries, stock } = making;
  const runs = Object.keys(own).some((key) => ["runners", "runson"].includes(squash(key))) ? "runners" : "slides";
  const wall = (part: string | undefined) => part && wholeCarrier(part, runs, making);
  entries[name] = {
    ...{ kind: "drawer", in: whole(room, site) },
    // However the maker writes it: `made-of`.
    ...(Object.keys(own).some((key) => squash(key) === "madeof") ? {} : { "made of": stock }),
    walls: { left: wall(left), right: wall(right) },
    covers,
    ...own,
  };
}

const frontOf = (said: MapNode): MapNode | null => {
  const front = settingOf(said, "front")?.value;
  return front?.kind === "map" ? front : null;
};
const textOf = (node: Node | undefined): TextNode | null => (node?.kind === "text" ? node : null);
const of = (said: MapNode, key: string): TextNode | null => {
  const front = frontOf(said);
  return front && textOf(settingOf(front, key)?.value);
};

const isInset = (said: MapNode): boolean => squash(of(said, "lies")?.text ?? "inset") === "inset";
const gapOf = (said: MapNode, { site }: Making): TextNode => of(said, "gap") ?? site.write`${site.usual("1/8", "3")}`;

/** How far overlay fronts reach over what stands round: half of a divider that they share, less half the gap; else nearly all of it. */
export function coversOf(said: MapNode, bounds: Bounds, making: Making): Settings {
  const { write, usual } = making.site;
  const gap = gapOf(said, making);
  return Object.fromEntries(
    (["left", "right", "bottom", "top"] as const).flatMap((side) => {
      const wall = bounds[side];
      if (!wall) return [];
      const thick = side === "left" || side === "right" ? "across" : "up";
      const name = whole(wall, making.site);
      const isShared = /(^|-)(divider|rail|stile)-\d+$/.test(wall);
      const covered = isShared
        ? write`(${name}.${thick} - (${gap.text})) / 2`
        : write`${name}.${thick} - ${usual("1/16", "1.5")}`;
      return [[side, covered]];
    }),
  );
}
