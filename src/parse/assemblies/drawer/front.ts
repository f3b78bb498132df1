import type { Settings } from "../../expand/make.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import type { Site } from "../assembly.ts";
import type { Runs } from "./runs.ts";
import type { Front, Said } from "./settings.ts";

const SIDES = ["left", "right", "bottom", "top"] as const;
/** The way out of the opening on each side. */
const sign = (side: (typeof SIDES)[number], out: boolean): "+" | "-" =>
  (side === "left" || side === "bottom") === out ? "-" : "+";

export interface FrontPlace {
  /** Settings of the part that is the front. */
  readonly part: Settings;
  /** Where the box begins, if another front stands before it. */
  readonly behind: string;
}

/** Where a front lies in its opening or over it. `name` is its part, `filled`: it fills the width and height of a box on runners. */
export function frontIn(front: Front, name: string, said: Said, filled: boolean, site: Site): FrontPlace {
  const { write } = site;
  const opening = said.in.value.text;
  const lies = front.lies?.value ?? "inset";
  const gap = front.gap?.value ?? write`${filled ? site.usual("1/16", "1.5") : site.usual("1/8", "3")}`;
  const over = front.overlay?.value ?? said.covers?.value ?? {};
  const beyond = (side: (typeof SIDES)[number]): TextNode => over[side] ?? write`${site.usual("3/8", "10")}`;
  // What its opening is larger than that of its like widens the gap at its right and above it.
  const more = (side: (typeof SIDES)[number]): string => {
    const [least, extent] = side === "right" ? [said["least wide"], "across"] : [said["least high"], "up"];
    return least && (side === "right" || side === "top") ? write` - (${opening}.${extent} - ${least.value})`.text : "";
  };
  const at = (side: (typeof SIDES)[number]): TextNode =>
    lies === "inset"
      ? write`${opening}.${side} ${sign(side, false)} ${gap}${more(side)}`
      : write`${opening}.${side} ${sign(side, true)} ${beyond(side)}${more(side)}`;
  const made: Settings = {
    "made of": front["made of"].value,
    ...{ facing: "front", grain: front.grain?.value ?? "across" },
    ...(front.called && { called: front.called.value }),
    ...{ boards: front.boards?.value, edges: front.edges?.value },
    ...{ "edge banding": front["edge banding"]?.value, "from one strip": front["from one strip"]?.value },
    ...Object.fromEntries(SIDES.map((side) => [side, at(side)])),
  };
  if (lies === "inset") return { part: { ...made, front: write`${opening}.front` }, behind: `${name}.back` };
  if (lies === "overlay") return { part: { ...made, back: write`${opening}.front` }, behind: `${opening}.front` };
  const clear = site.usual("1/16", "1.5");
  const rabbet = SIDES.map((side) => ({
    ...{ along: `back ${side}`, wide: write`${beyond(side)} + ${clear}`, deep: write`${name}.deep / 2` },
  }));
  return {
    part: { ...made, back: write`${opening}.front + ${name}.deep / 2`, rabbet },
    behind: `${name}.back`,
  };
}

/** Lengths of screws, so that the point stays 1/8 in (3 mm) under the face of the front. */
const sold = ({ units }: Site): string =>
  units === "inch" ? "1/2, 5/8, 3/4, 1, 1 1/4, 1 1/2, 1 3/4, 2" : "12, 16, 20, 25, 30, 35, 40, 45, 50";

/** Screws from inside the box, while the front stands where it will stay. */
export const frontJoint = (front: Front, site: Site): Settings => ({
  ...{ join: "box-front", to: "false-front" },
  ...(front.screws?.value ?? {
    ...{ with: "screws", from: "box-front", count: 2, "in from ends": site.usual("2", "50") },
    screw: {
      length: site.write`longest(box-front.deep + false-front.deep - ${site.usual("1/8", "3")}, ${sold(site)})`,
    },
    "set with": front["set with"]?.value ?? "shims",
  }),
});

/** What it is pulled by, through its front and that of its box. */
export function pullsOf(said: Said, name: string, site: Site): readonly Settings[] {
  const { write } = site;
  const pull = said.pull?.value;
  if (!pull) return [];
  const up = pull.up ? write`${name}.bottom + ${pull.up.value}` : undefined;
  const through = name === "false-front" ? { through: "box-front" } : {};
  const one: Settings = { fit: pull.fit.value, to: name, face: "front", up, ...through };
  if (pull.count?.value !== "2") return [one];
  return [
    { ...one, across: write`${name}.left + ${name}.across / 4` },
    { ...one, across: write`${name}.right - ${name}.across / 4` },
  ];
}

/** A button inside the back: turned up it reaches past the room above the drawer, and catches behind what lies over that. */
export function stopOf(said: Said, runs: Runs, site: Site): readonly Settings[] {
  if (!said.stop) return [];
  const item = site.item(said.stop.value, "drawer stop");
  const { write } = site;
  const half = (field: string, usual: string): string => `(${(item.measure(field) ?? write`${usual}`).text}) / 2`;
  const catches = site.usual("1/4", "6");
  const up = write`min(box-back.top - ${half("wide", site.usual("3/4", "20"))}, room.top + ${runs.above} + ${catches} - ${half("long", site.usual("1 1/2", "40"))})`;
  // The face is said: in a mirror image it is still the inside.
  return [{ fit: said.stop.value, to: "box-back", face: "front", up }];
}
