import type { Settings } from "../../expand/make.ts";
import type { Site } from "../assembly.ts";
import { crosses, endJoint, methodOf } from "../corners.ts";
import type { Runs } from "./runs.ts";
import type { Front, Said } from "./settings.ts";

export const BOX_SIDES = ["left-side", "right-side"];

/** How the corners of a drawer's box are made. */
export interface Corners {
  readonly join: Settings;
  readonly back: Settings;
  readonly crossing: boolean;
  readonly backCrossing: boolean;
  /** The front is that of the drawer, and the sides end on it or in it. */
  readonly own: Front | null;
}

export function cornersOf(said: Said, own: Front | null, site: Site): Corners {
  const join: Settings = said.join?.value ?? { with: "rabbet" };
  const back: Settings = said["back join"]?.value ?? join;
  return { ...{ join, back, own }, crossing: crosses(join, site), backCrossing: crosses(back, site) };
}

/**
 * The room of the box: as wide as its runs leave, what has to be marked rounded down; or to the nearest where slides have a range for it, and
 * not rounded up past that. In the middle of the opening.
 */
export function roomOf(said: Said, runs: Runs, { crossing }: Corners, begins: string, site: Site): Settings {
  const { write, step, fit } = site;
  const opening = said.in.value.text;
  const [inside, sides] = crossing ? ["", ""] : [" - 2 * left-side.across", " + 2 * left-side.across"];
  const down = (wide: string): string => `round-down(${wide}${inside}, ${fit.text})`;
  const least = down(runs.wide.text);
  const marked = runs.widest
    ? `min(round(${runs.wide.text}${inside}, ${fit.text}), max(${least}, ${down(runs.widest.text)}))`
    : least;
  const wide = write`${marked}${sides}`;
  const high = said.high
    ? write`within(${said.high.value}, ${runs.high.text})`
    : write`round-down(${runs.high.text}, ${step.text})`;
  return {
    kind: "space",
    left: write`${opening}.left + (${opening}.across - (${wide.text})) / 2`,
    across: wide,
    bottom: runs.bottom,
    up: high,
    front: write`${begins}`,
    deep: runs.long(begins),
  };
}

/** Four walls and their joints. `front` is the part in front where it is the drawer's own. */
export function addWalls(
  said: Said,
  runs: Runs,
  corners: Corners,
  front: Settings | null,
  floor: string,
  { entries, joints, site }: { entries: Record<string, Settings>; joints: Settings[]; site: Site },
): void {
  const { write } = site;
  const { join, back, crossing, backCrossing, own } = corners;
  const stock = said["made of"].value;
  const lap = own?.lap?.value ?? site.usual("1/4", "6");
  const between = own?.["between the sides"]?.value === true;
  const sideFront = !own || between ? "room.front" : crossing ? write`box-front.front + ${lap}` : "box-front.back";
  for (const side of ["left", "right"] as const)
    entries[`${side}-side`] = {
      "made of": stock,
      ...{ as: "on edge", facing: side, grain: "deep" },
      ...{ [side]: `room.${side}`, bottom: floor, top: "room.top", front: sideFront, back: "room.back" },
    };
  const end = (crosses: boolean): Settings => ({
    ...{ as: "on edge", grain: "across", bottom: floor, top: "room.top" },
    ...(crosses ? { left: "room.left", right: "room.right" } : { left: "left-side.right", right: "right-side.left" }),
  });
  entries["box-front"] = front ?? {
    "made of": said["box front"]?.value ?? stock,
    ...{ ...end(crossing), facing: "front", front: "room.front" },
  };
  entries["box-back"] = {
    "made of": said["box back"]?.value ?? stock,
    ...{ ...end(backCrossing), facing: "back", back: "room.back" },
    ...(said.bottom?.value["under the back"]?.value && { bottom: "bottom-panel.top" }),
    ...runs.under?.back(backCrossing),
  };
  joints.push(cornerJoint("box-front", join, crossing, own !== null && !between, site));
  joints.push(cornerJoint("box-back", back, backCrossing, false, site));
}

/** Tails are cut on the sides, since they are pulled; else what ends is joined to what runs through. */
function cornerJoint(end: string, join: Settings, crossing: boolean, sidesEnd: boolean, site: Site): Settings {
  if (crossing) return { join: BOX_SIDES, to: end, ...join };
  return sidesEnd ? endJoint(BOX_SIDES, end, join, site) : endJoint(end, BOX_SIDES, join, site);
}

/** The bottom, in grooves of all four or laid on under them; what the drawer stands on with its lower edges. */
export function addBottom(
  said: Said,
  runs: Runs,
  { entries, joints, site }: { entries: Record<string, Settings>; joints: Settings[]; site: Site },
): { readonly floor: string; readonly standsOn: string } {
  const { write } = site;
  const own = said.bottom?.value;
  const seat = own?.in?.value ?? { in: "groove" as const };
  const laidOn = seat.in === "laid on";
  const between = seat.in === "between the sides";
  const underBack = own?.["under the back"]?.value === true;
  const up = own?.up?.value ?? runs.under?.bottomUp ?? site.usual("1/4", "6");
  entries["bottom-panel"] = {
    called: "drawer bottom",
    "made of": own?.["made of"].value ?? said["made of"].value,
    as: "lying flat",
    carries: said.carries?.value,
    ...(laidOn
      ? { left: "room.left", right: "room.right", front: "room.front", back: "room.back" }
      : {
          left: "left-side.right",
          right: "right-side.left",
          // Between the sides it lies in no grooves: its play is a gap behind the front.
          front: between && own?.play ? write`box-front.back + ${own.play.value}` : "box-front.back",
          back: underBack ? "room.back" : "box-back.front",
        }),
    bottom: laidOn || between ? "room.bottom" : write`room.bottom + ${up}`,
  };
  const walls = [...BOX_SIDES, "box-front", ...(underBack ? [] : ["box-back"])];
  const parts: Settings = { join: "bottom-panel", to: walls };
  const fasten: Settings = own?.fasten?.value ?? { with: "brads", glue: "yes", spacing: site.usual("4", "100") };
  if (underBack) joints.push({ join: "bottom-panel", to: "box-back", from: "bottom-panel", ...fasten });
  if (between) joints.push({ join: [...BOX_SIDES, ...(underBack ? [] : ["box-back"])], to: "bottom-panel", ...fasten });
  else if (laidOn) joints.push({ ...parts, ...fasten });
  else if (seat.in === "groove") {
    const play = own?.play?.value ?? site.usual("1/32", "0.5");
    joints.push({ ...parts, with: "groove", ...("deep" in seat && { deep: seat.deep }), play, glue: "no" });
  } else {
    const { with: _, ...row } = fasten;
    const holding = (methodOf(fasten, site) ?? "brads").replace(/s$/, "");
    joints.push({ ...parts, with: "rabbet", side: "bottom", ...row, [holding]: row[holding] ?? {} });
  }
  return laidOn ? { floor: "bottom-panel.top", standsOn: "bottom-panel" } : { floor: "room.bottom", standsOn: "sides" };
}
