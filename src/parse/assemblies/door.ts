import { from, type Settings } from "../expand/make.ts";
import { squash } from "../names.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { addLeaf, type Leaf, type Made, type Making } from "./door/leaf.ts";
import { doorSettings, type Said } from "./door/settings.ts";
import { comesToSize, TO_OPENING } from "./making.ts";

const SIDES = ["left", "right", "bottom", "top"] as const;
type Side = (typeof SIDES)[number];

/** One door or a pair, in an opening or over its edges, on its hinges. */
export const door = assembly({
  kind: "door",
  also: ["doors"],
  meaning: "A door or a pair of doors on hinges: a slab, a slab with strips, or a frame with a panel.",
  makes:
    "Its parts are `slab` with `left-strip`, `right-strip`, `bottom-strip`, `top-strip`, or `left-stile`, `right-stile`, `bottom-rail`, `top-rail`, `panel` and round glass `left-bead`, `right-bead`, `bottom-bead`, `top-bead`; of a pair each begins with left- or right-, as in `left-right-stile` or `right-slab`.",
  settings: doorSettings,
  moves: true,
  expand: (said: Said, site: Site): Expanded => {
    const entries: Record<string, Settings> = {};
    const joints: Settings[] = [];
    const making: Making = { site, said, entries, joints };
    const fittings: Settings[] = [];
    entries.room = roomOf(said, site);
    for (const leaf of leavesOf(said, site, entries)) {
      const made = addLeaf(leaf, making);
      joints.push(from(said.hinges?.key, hingesOf(leaf, made, said, site)));
      fittings.push(...pullOf(leaf, made, said, site).map((each) => from(said.pull?.key, each)));
    }
    comesToSize(entries, said.cut?.value ?? (said.lies?.value === "overlay" ? undefined : TO_OPENING));
    return { entries, joints, fittings };
  },
});

/** Hinges that the plan wants mortised ask for a gap narrower than they close: half of that, 1/16 in for the usual ones (a page on inset doors, reproduced). */
function mortisedGap({ hinges }: Said, { item, write }: Site): TextNode | null {
  const hinge = item(hinges?.value.hardware?.value, "butt hinge");
  const closed = hinge.measure("closed");
  const fit = hinge.said("fit")?.text ?? "";
  return hinge.kind === "butt hinge" && squash(fit) === squash("mortised") && closed ? write`${closed} / 2` : null;
}

/** The room that the doors fill, the gap between a pair included; as thick as its wood, its back or front is where that begins. */
function roomOf(said: Said, site: Site): Settings {
  const { write, usual } = site;
  const opening = said.in.value;
  const overlay = said.lies?.value === "overlay";
  const gap = said.gap?.value ?? mortisedGap(said, site) ?? write`${usual("1/8", "3")}`;
  const beyond = (side: Side): TextNode =>
    said.overlay?.value[side] ?? said.covers?.value[side] ?? write`${usual("1/2", "12")}`;
  const at = (side: Side): TextNode => {
    const outwards = side === "left" || side === "bottom" ? "-" : "+";
    const inwards = outwards === "-" ? "+" : "-";
    return overlay
      ? write`${opening}.${side} ${outwards} ${beyond(side)}`
      : write`${opening}.${side} ${inwards} ${gap}`;
  };
  const off = said.against?.value;
  const back = said["set back"]?.value;
  const nothing = usual("1/16", "1");
  // Only one of its faces counts: the door itself is as thick as its wood.
  const deep = overlay
    ? { back: off ? write`${opening}.front - ${off}` : write`${opening}.front`, deep: nothing }
    : { front: back ? write`${opening}.front + ${back}` : write`${opening}.front`, deep: nothing };
  return { kind: "space", ...Object.fromEntries(SIDES.map((side) => [side, at(side)])), ...deep };
}

/** Each leaf as large as can be marked, so that its parts close: what is left over widens the gaps at its free edge and above it. */
function leavesOf(said: Said, { write, usual, step }: Site, entries: Record<string, Settings>): readonly Leaf[] {
  const deep = Object.fromEntries(["front", "back"].map((face) => [face, `room.${face}`]));
  const opening = said.in.value;
  const less = (extent: "across" | "up", least: { readonly value: TextNode } | undefined): string =>
    least ? write` - (${opening}.${extent} - ${least.value})`.text : "";
  const [narrower, lower] = [less("across", said["least wide"]), less("up", said["least high"])];
  const leaf = (name: string, side: "left" | "right", across: TextNode): void => {
    const high = { bottom: "room.bottom", up: write`round-down(room.up${lower}, ${step.text})` };
    entries[name] = { kind: "space", [side]: `room.${side}`, across, ...high, ...deep };
  };
  if (said.pair?.value !== true) {
    const hinged = said.hinged?.value ?? "left";
    leaf("leaf-room", hinged, write`round-down(room.across${narrower}, ${step.text})`);
    return [{ prefix: "", room: "leaf-room", hinged }];
  }
  const between = said["gap between"]?.value ?? write`${usual("1/8", "3")}`;
  return (["left", "right"] as const).map((side) => {
    leaf(`${side}-room`, side, write`round-down((room.across${narrower} - ${between}) / 2, ${step.text})`);
    return { prefix: `${side}-`, room: `${side}-room`, hinged: side };
  });
}

/** The joint follows from the hinges that are named: overlay or inset decides only where none are. */
function hingesOf({ hinged }: Leaf, { hung }: Made, said: Said, site: Site): Settings {
  const hinges = said.hinges?.value;
  const usual = said.lies?.value === "overlay" ? "cup hinge" : "butt hinge";
  const { kind } = site.item(hinges?.hardware?.value, usual);
  const method = kind.startsWith("cup hinge") ? "cup hinges" : kind === "continuous hinge" ? kind : "butt hinges";
  return {
    ...{ join: hung, to: said.walls.value.said[hinged]?.value, with: hinges?.with?.value ?? method },
    ...(hinges?.hardware && { hardware: hinges.hardware.value }),
    ...(hinges?.count && { count: hinges.count.value }),
    ...(hinges?.["in from ends"] && { "in from ends": hinges["in from ends"].value }),
  };
}

/** Near the edge that opens: in the middle of its stile or strip, or so far in from the edge of a slab. */
function pullOf(
  { hinged, room }: Leaf,
  { pulled, behind }: Made,
  said: Said,
  { write, usual }: Site,
): readonly Settings[] {
  const pull = said.pull?.value;
  if (!pull) return [];
  const free = hinged === "left" ? "right" : "left";
  const from = pull.in?.value ?? (said.frame || said.panel || said.strips ? null : write`${usual("2", "50")}`);
  const across = from ? write`${room}.${free} ${free === "right" ? "-" : "+"} ${from}` : undefined;
  const up = pull.up ? write`${room}.bottom + ${pull.up.value}` : undefined;
  return [{ fit: pull.fit.value, to: pulled, face: "front", across, up, ...(behind && { through: [behind] }) }];
}
