import type { Settings } from "../../expand/make.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import type { Site } from "../assembly.ts";
import { endJoint } from "../corners.ts";
import type { Said } from "./settings.ts";

/** How a drawer runs, and what that leaves of its opening for the box. */
export interface Runs {
  readonly kind: "side" | "under" | "wood";
  /** The width of the box over all, from the opening's, before it is rounded; and the height of its lower edge and of its sides. */
  readonly wide: TextNode;
  /** The most that its slides have room for, where they say so: then a box may also be rounded up. */
  readonly widest: TextNode | null;
  readonly bottom: TextNode;
  readonly high: TextNode;
  /** What stays open above its sides. */
  readonly above: TextNode;
  /** The length of its sides, from where they begin behind the front. */
  readonly long: (from: string) => TextNode;
  /** What an undermount slide wants of the box. */
  readonly under: { readonly bottomUp: TextNode; readonly back: (crossing: boolean) => Settings } | null;
  /** Runners, packing, and the joints of what runs. */
  add(entries: Record<string, Settings>, joints: Settings[], standsOn: string): void;
}

export function runsOf(said: Said, site: Site): Runs {
  const { write } = site;
  const opening = said.in.value.text;
  const above = said.above?.value;
  const behind = site.usual("1/8", "3");
  if (said.runners || said["runs on"]) {
    const floor = said.runners ? "left-runner.top" : `${opening}.bottom`;
    const room = above ?? write`${site.usual("1/8", "3")}`;
    return {
      kind: "wood",
      above: room,
      wide: write`${opening}.across - ${site.usual("1/8", "3")}`,
      widest: null,
      bottom: write`${floor}`,
      high: write`${opening}.top - ${floor} - ${room}`,
      long: (from) =>
        said.long
          ? write`within(${said.long.value}, ${opening}.back - ${from} - ${behind})`
          : write`round-down(${opening}.back - ${from} - ${behind}, ${site.step.text})`,
      under: null,
      add: (entries, joints, standsOn) => addRunners(said, site, entries, joints, standsOn),
    };
  }
  const item = site.item(said.slides?.value, "side slide");
  const below = item.kind === "undermount slide";
  const narrower = item.measure("narrower") ?? write`0`;
  const own = item.measure("length");
  const sold = item.lengths("lengths").map(({ text }) => text);
  const least = below ? null : item.least("side space");
  const under = said.under?.value ?? (below ? item.measure("under") : null) ?? write`${site.usual("1/4", "6")}`;
  // Packing that is a little thicker than the frame laps leaves less than the opening.
  const both = said.packing && said.walls?.value.said.left && said.walls.value.said.right;
  const clear = both
    ? write`min(${opening}.across, right-packing.left - left-packing.right)`
    : write`${opening}.across`;
  const lower = below && !above ? item.measure("lower") : null;
  const room = above ?? write`${site.usual("3/4", "19")}`;
  return {
    above: room,
    kind: below ? "under" : "side",
    wide: below ? write`${clear.text} - ${narrower} + 2 * left-side.across` : write`${clear.text} - ${narrower}`,
    widest: least && write`${clear.text} - 2 * (${least})`,
    bottom: write`${opening}.bottom + ${under}`,
    high: lower ? write`${opening}.up - ${lower}` : write`${opening}.up - ${under} - ${room}`,
    long: (from) => {
      const room = `${opening}.back - ${from} - ${behind}`;
      const wanted = said.long?.value ?? own;
      const lengths = sold.length > 0 ? `, ${sold.join(", ")}` : "";
      return wanted
        ? write`within(${wanted}, ${room}${lengths})`
        : write`within(longest(${room}${lengths}), ${room}${lengths})`;
    },
    under: below ? underneath(item, site) : null,
    add: (entries, joints) => addSlides(said, below, site, entries, joints),
  };
}

/** Notches at the ends of the back for the slides, and the holes for their hooks; inside the sides, where the back runs through between their tails. */
function underneath(item: ReturnType<Site["item"]>, { write }: Site): Runs["under"] {
  const of = (field: string): TextNode => item.measure(field) ?? write`0`;
  const ends = ["left", "right"] as const;
  const bottomUp = of("bottom up");
  const hole = (end: string, from: TextNode): Settings => ({
    ...{ in: "back", [`from ${end}`]: from, "from bottom": write`${bottomUp} + ${of("hole up")}` },
    ...{ diameter: of("hole"), deep: of("hole deep") },
  });
  return {
    bottomUp,
    back: (crossing) =>
      crossing
        ? {
            "cut-out": ends.map((end) => ({
              ...{ in: "back", wide: of("notch wide"), high: bottomUp, "from bottom": 0 },
              [`from ${end}`]: write`${end}-side.across`,
            })),
            hole: ends.map((end) => hole(end, write`${of("hole in")} + ${end}-side.across`)),
          }
        : {
            notch: ends.map((end) => ({ along: `${end} bottom`, wide: of("notch wide"), deep: bottomUp })),
            hole: ends.map((end) => hole(end, of("hole in"))),
          },
  };
}

const SIDES = ["left", "right"] as const;

function addSlides(
  said: Said,
  below: boolean,
  site: Site,
  entries: Record<string, Settings>,
  joints: Settings[],
): void {
  const { write } = site;
  const opening = said.in.value.text;
  const packing = said.packing?.value;
  const name = said.slides?.value;
  const high = packing?.high?.value ?? site.item(name, "side slide").measure("high") ?? write`2`;
  const up = said["up from the bottom"]?.value;
  for (const side of SIDES) {
    const wall = said.walls?.value.said[side]?.value;
    if (!wall) continue;
    if (packing) {
      entries[`${side}-packing`] = {
        "made of": packing["made of"].value,
        ...{ as: "on edge", grain: "deep", facing: side, up: high },
        [side]: write`${wall.text}.${side === "left" ? "right" : "left"}`,
        ...(up && !below
          ? { bottom: write`${side}-side.bottom + ${up} - (${high}) / 2` }
          : below
            ? { top: write`${side}-side.bottom` }
            : { "centred on": { up: `${side}-side` } }),
        // A front over its opening lets the box begin in front of the frame, and the packing does not.
        front: write`max(${side}-side.front, ${wall.text}.front)`,
        back: write`${opening}.back`,
      };
      joints.push({ join: `${side}-packing`, to: wall, ...(packing.join?.value ?? { with: "screws" }) });
    }
    joints.push({
      ...{ join: `${side}-side`, to: packing ? `${side}-packing` : wall },
      with: below ? "undermount slides" : "slides",
      ...(name && { hardware: name }),
      ...(up && { "up from the bottom": up }),
      ...(said["set back"] && { "set back": said["set back"].value }),
    });
  }
}

/** Strips at both sides of the opening, or what is there already. */
function addRunners(
  said: Said,
  site: Site,
  entries: Record<string, Settings>,
  joints: Settings[],
  standsOn: string,
): void {
  const { write } = site;
  const opening = said.in.value.text;
  const own = said.runners?.value;
  // Where the sides run past the front, it may hang down before the runners.
  const front = said.front?.value;
  const begins = typeof front === "object" && front["between the sides"]?.value ? "box-front.back" : "room.front";
  for (const side of SIDES) {
    const runs = standsOn === "sides" ? `${side}-side` : standsOn;
    if (!own) {
      if (side === "left" || standsOn === "sides")
        joints.push({ join: runs, to: said["runs on"]?.value, with: "runs on" });
      continue;
    }
    entries[`${side}-runner`] = {
      "made of": own["made of"].value,
      ...{ as: "lying flat", grain: "deep", across: own.wide?.value ?? site.usual("1", "25") },
      [side]: write`${opening}.${side}`,
      ...{ bottom: write`${opening}.bottom`, front: begins, back: write`${opening}.back` },
    };
    const wall = said.walls?.value.said[side]?.value;
    if (wall)
      joints.push(
        endJoint(
          `${side}-runner`,
          wall,
          own.join?.value ?? { with: "screws", from: `${side}-runner`, "in from ends": site.usual("2", "50") },
          site,
        ),
      );
    joints.push({ join: runs, to: `${side}-runner`, with: "runs on" });
  }
}
