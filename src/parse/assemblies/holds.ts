import type { Settings } from "../expand/make.ts";
import { type Field, type Key, may } from "../kinds/settings.ts";
import type { MapNode } from "../yaml/nodes.ts";
import { doorIn, heldDoor } from "./doors-in.ts";
import { drawerIn, drawersIn, heldDrawer } from "./drawers-in.ts";
import { type Bounds, type Making, within } from "./making.ts";

/** What an opening can hold besides openings and fixed shelves: its setting, and how it is made there. */
interface Holding {
  readonly key: Key<MapNode, false>;
  readonly fill: (space: string, said: MapNode, bounds: Bounds, making: Making, alike: Settings) => void;
}

/** By setting. A new one is a file, and a line in this table. */
export const HOLDS: Readonly<Record<"door" | "drawer" | "drawers", Holding>> = {
  door: { key: may(heldDoor, "A door in front of it: the settings of a door, but for where it goes."), fill: doorIn },
  drawer: { key: may(heldDrawer, "A drawer in it: the settings of a drawer, but for where it goes."), fill: drawerIn },
  drawers: {
    key: may(
      heldDrawer,
      "Drawers in it, one below the other and all of one height: `count`, and the settings of a drawer.",
    ),
    fill: drawersIn,
  },
};

export type Held = { readonly [K in keyof typeof HOLDS]?: Field<MapNode> };

export const holdKeys = { door: HOLDS.door.key, drawer: HOLDS.drawer.key, drawers: HOLDS.drawers.key };

/** `alike`: how wide or high the openings are at least that are to be equal to this one. */
export function hold(space: string, held: Held, bounds: Bounds, making: Making, alike: Settings = {}): void {
  for (const [key, { fill }] of Object.entries(HOLDS)) {
    const said = held[key as keyof Held];
    if (said) within(said.key, making, (inner) => fill(space, said.value, bounds, inner, alike));
  }
}
