import type { Settings, Value } from "../../expand/make.ts";
import type { Site } from "../assembly.ts";
import { crosses, endJoint } from "../corners.ts";
import { within } from "../making.ts";
import { addPane } from "./pane.ts";
import type { Said } from "./settings.ts";

/** One door: its parts go by this name, and lie in this space of the assembly's own. */
export interface Leaf {
  readonly prefix: string;
  readonly room: string;
  /** The side on which it hangs. */
  readonly hinged: "left" | "right";
}

/** Parts and joints of the assembly so far. */
export interface Making {
  readonly site: Site;
  readonly said: Said;
  readonly entries: Record<string, Settings>;
  readonly joints: Settings[];
}

/** The part of a door that its hinges are on, and the one that is pulled. */
export interface Made {
  readonly hung: string;
  readonly pulled: string;
  /** What the screws of a pull pass before they reach that. */
  readonly behind?: string;
}

const FACES = ["left", "right", "bottom", "top"] as const;
const OTHER = { left: "right", right: "left", bottom: "top", top: "bottom" } as const;

/** A slab, a slab with strips, or a frame with a panel: a panel alone asks for a frame. */
export function addLeaf(leaf: Leaf, making: Making): Made {
  const framed = making.said.frame ?? making.said.panel;
  return framed ? within(framed.key, making, (inner) => addFrame(leaf, inner)) : addSlab(leaf, making);
}

/** The front or back face of a door as thick as its wood, from its room. */
const deep = (room: string, { said, site }: Making): Settings =>
  said.lies?.value === "overlay" ? { back: site.write`${room}.back` } : { front: site.write`${room}.front` };

function addSlab({ prefix, room, hinged }: Leaf, making: Making): Made {
  const { said, site, entries, joints } = making;
  const { write } = site;
  const slab = `${prefix}slab`;
  const strips = said.strips?.value.said;
  const inset = said.lies?.value !== "overlay";
  const wide = strips?.wide?.value ?? write`${site.usual("2", "50")}`;
  const at = Object.fromEntries(FACES.map((face) => [face, write`${room}.${face}`]));
  entries[slab] = {
    ...{ called: "door", "made of": said["made of"]?.value },
    ...{ as: "upright", facing: "front", ...at, boards: said.boards?.value },
    // Strips lie in front of the slab: together they are the door.
    ...(strips && inset ? { front: write`${prefix}left-strip.back` } : deep(room, making)),
  };
  if (!strips) return { hung: slab, pulled: slab };
  const front: Settings = inset ? { front: write`${room}.front` } : { back: write`${slab}.front` };
  const strip = (face: (typeof FACES)[number], more: Settings): void => {
    entries[`${prefix}${face}-strip`] = { "made of": strips["made of"].value, facing: "front", ...front, ...more };
  };
  for (const face of ["left", "right"] as const)
    strip(face, {
      as: "upright",
      [face]: write`${room}.${face}`,
      across: wide,
      bottom: write`${room}.bottom`,
      top: write`${room}.top`,
    });
  for (const face of ["bottom", "top"] as const)
    strip(face, {
      ...{ as: "on edge", [face]: write`${room}.${face}`, up: wide },
      ...{ left: write`${prefix}left-strip.right`, right: write`${prefix}right-strip.left` },
    });
  const names = FACES.map((face) => `${prefix}${face}-strip`);
  joints.push({ join: names, to: slab, ...(strips.join?.value ?? { with: "glue" }) });
  return { hung: slab, pulled: `${prefix}${hinged === "left" ? "right" : "left"}-strip`, behind: slab };
}

function addFrame({ prefix, room, hinged }: Leaf, making: Making): Made {
  const { said, site, entries, joints } = making;
  const { write } = site;
  const frame = said.frame?.value.said;
  const stock: Value = frame?.["made of"]?.value ?? said["made of"]?.value;
  const panel = said.panel?.value;
  const pane = panel && site.isGlass(panel.stock) ? panel : null;
  // Beads lie on the back of a stile beside its hinges.
  const usual = pane ? site.usual("2 1/2", "64") : site.usual("2 1/4", "57");
  const stiles = frame?.stiles?.value ?? write`${usual}`;
  const rails = frame?.rails?.value ?? stiles;
  const name = (of: string): string => `${prefix}${of}`;
  const level = deep(room, making);
  const join: Settings = frame?.join?.value ?? { with: "mortise and tenon" };
  // Mitred rails are as long as the door is wide.
  const [from, to] = crosses(join, site)
    ? [write`${room}.left`, write`${room}.right`]
    : [write`${name("left-stile")}.right`, write`${name("right-stile")}.left`];
  const rabbet = frame?.rabbet?.value.said;
  // As deep as the pane is thick: its beads lie on the back of the frame.
  const [wide, cut] = pane
    ? [rabbet?.wide.value ?? write`${site.usual("3/8", "10")}`, rabbet?.deep.value ?? write`${name("panel")}.deep`]
    : [rabbet?.wide.value, rabbet?.deep.value];
  // Where a rail meets a stile, the rabbet of the stile ends with that of the rail.
  const run = wide && {
    from: write`${name("bottom-rail")}.top - ${wide}`,
    to: write`${name("top-rail")}.bottom + ${wide}`,
  };
  for (const face of ["left", "right"] as const)
    entries[name(`${face}-stile`)] = {
      ...(run && { rabbet: { along: `back ${OTHER[face]}`, wide, deep: cut, ...run } }),
      ...{ called: "door stile", "made of": stock, as: "upright", facing: "front" },
      ...{ [face]: write`${room}.${face}`, across: stiles },
      ...{ bottom: write`${room}.bottom`, top: write`${room}.top`, ...level },
    };
  for (const face of ["bottom", "top"] as const)
    entries[name(`${face}-rail`)] = {
      ...(wide && { rabbet: { along: `back ${OTHER[face]}`, wide, deep: cut } }),
      ...{ called: "door rail", "made of": stock, as: "on edge", facing: "front" },
      ...{ [face]: write`${room}.${face}`, up: rails },
      ...{ left: from, right: to, ...level },
    };
  const both = [name("left-stile"), name("right-stile")];
  const ends = [name("bottom-rail"), name("top-rail")];
  const groove = frame?.groove?.value ?? write`${site.usual("3/8", "10")}`;
  // Without a joint of the maker's the rails end in tongues as long as the groove for the panel is deep.
  const tongues = panel && !pane ? { tenon: { long: groove } } : {};
  joints.push(endJoint(ends, both, frame?.join ? join : { ...join, ...tongues }, site));
  const at = said.panel?.key;
  if (pane && wide) within(at, making, (inner) => addPane({ name, stock, wide }, pane, inner));
  else if (panel)
    within(at, making, ({ entries, joints }) => {
      entries[name("panel")] = {
        ...{ called: "door panel", "made of": panel.stock, as: "upright", facing: "front" },
        grain: panel.grain?.value ?? "up",
        ...{ left: write`${both[0] as string}.right`, right: write`${both[1] as string}.left` },
        ...{ bottom: write`${ends[0] as string}.top`, top: write`${ends[1] as string}.bottom` },
        deep: write`centred on ${both[0] as string}`,
      };
      const grooves = { with: "groove", deep: groove, glue: "no", ...(panel.play && { play: panel.play.value }) };
      joints.push({ join: name("panel"), to: [...both, ...ends], ...grooves });
    });
  return { hung: name(`${hinged}-stile`), pulled: name(`${hinged === "left" ? "right" : "left"}-stile`) };
}
