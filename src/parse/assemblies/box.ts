import { from, type Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { asOfPart, joinWords, measure, stockName, yesNoOr } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { type Seat, seat } from "./back-in.ts";
import { crosses, endJoint, methodOf } from "./corners.ts";
import { toBase, toBaseSetting } from "./to-base.ts";

const bottomSettings = settings("the bottom of a box", {
  "made of": need(stockName, "Its stock."),
  in: may(
    seat,
    "How it is let in: laid on under the sides, in a rabbet, or in a groove. If nothing is said it is laid on where the box stands on a base, which it is screwed to, else in a groove.",
  ),
  up: may(measure, "How far a bottom in a groove lies above the lower edges: 1/4 in or 6 mm if nothing is said."),
  play: may(measure, "How much room it has in its grooves at each edge."),
  fasten: may(joinWords, "What holds a bottom that is laid on or lies in a rabbet: glue and brads if nothing is said."),
});

/** How it is let in, where that is said. */
interface Bottom extends Partial<Seat> {
  readonly stock: TextNode;
  readonly up?: TextNode;
  readonly play?: TextNode;
  readonly fasten?: Settings;
}

const bottom = byForm({
  text: made(stockName, (stock): Bottom => ({ stock })),
  map: made(
    bottomSettings,
    ({ said }): Bottom => ({
      stock: said["made of"].value,
      ...said.in?.value,
      ...(said.up && { up: said.up.value }),
      ...(said.play && { play: said.play.value }),
      ...(said.fasten && { fasten: said.fasten.value }),
    }),
  ),
});

const own = settings("a box", {
  "made of": need(stockName, "The stock of its four sides."),
  join: may(
    joinWords,
    "The joint in its four corners: screws, nails, rabbet, box joint, dovetail, mitre …; glue and brads if nothing is said.",
  ),
  corners: may(
    word(["front and back over sides", "sides over front and back"]),
    "Which of the four run through where one ends on another: front and back if nothing is said.",
  ),
  boards: may(asOfPart, "How many boards each of its four sides is glued up from."),
  "bottom panel": may(yesNoOr(bottom), "Its bottom: its stock, or settings that say more; `no` for a box without one."),
  "to its base": toBaseSetting,
});

type Said = Fields<typeof own.keys>;

export const box = assembly({
  kind: "box",
  also: [],
  meaning: "Four sides and a bottom.",
  makes: "Its parts are `front-panel`, `back-panel`, `left-side`, `right-side` and `bottom-panel`.",
  settings: own,
  bearers: () => [...ENDS, ...SIDES],
  expand: (said: Said, site: Site): Expanded => {
    const stock = said["made of"].value;
    const floor = bottomOf(said, site);
    const join: Settings = said.join?.value ?? { with: "brads", glue: "yes" };
    const crossing = crosses(join, site);
    const over = said.corners?.value !== "sides over front and back";
    const height = { bottom: floor?.in === "laid on" ? "bottom-panel.top" : "room.bottom", top: "room.top" };
    const frontToBack =
      crossing || !over
        ? { front: "room.front", back: "room.back" }
        : { front: "front-panel.back", back: "back-panel.front" };
    const leftToRight =
      crossing || over
        ? { left: "room.left", right: "room.right" }
        : { left: "left-side.right", right: "right-side.left" };
    const wall = (face: "left" | "right" | "front" | "back"): Settings => ({
      "made of": stock,
      ...(said.boards && { boards: said.boards.value }),
      as: "on edge",
      facing: face,
      ...(face === "front" || face === "back" ? leftToRight : frontToBack),
      ...height,
      [face]: `room.${face}`,
    });
    const entries: Record<string, Settings> = {
      room: { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") },
      "front-panel": wall("front"),
      "back-panel": wall("back"),
      "left-side": wall("left"),
      "right-side": wall("right"),
    };
    const joints = [over ? endJoint(SIDES, ENDS, join, site) : endJoint(ENDS, SIDES, join, site)];
    if (floor) {
      const at = said["bottom panel"]?.key;
      joints.push(from(at, addBottom(floor, entries, site)));
      entries["bottom-panel"] = from(at, entries["bottom-panel"] ?? {});
      joints.push(...toBase(said["to its base"]?.value, floor.in !== "groove", site));
    }
    return { entries, joints };
  },
});

const SIDES = ["left-side", "right-side"];
const ENDS = ["front-panel", "back-panel"];

/**
 * A box has a bottom if it is not said that it has none; of the stock of its sides if nothing is said of it. On a base it is laid on: nothing
 * else of the box lies on the base for long enough to be screwed to it.
 */
function bottomOf(said: Said, { on }: Site): (Bottom & Seat) | null {
  const value = said["bottom panel"]?.value;
  if (value === false) return null;
  if (typeof value !== "object") return { stock: said["made of"].value, in: "laid on" };
  const groove = on?.assembly?.kind !== "base" || value.up !== undefined || value.play !== undefined;
  return { ...value, in: value.in ?? (groove ? "groove" : "laid on") };
}

/** The bottom in its place; its joint. */
function addBottom(floor: Bottom & Seat, entries: Record<string, Settings>, site: Site): Settings {
  const laidOn = floor.in === "laid on";
  entries["bottom-panel"] = {
    "made of": floor.stock,
    as: "lying flat",
    ...(laidOn
      ? { left: "room.left", right: "room.right", front: "room.front", back: "room.back" }
      : { left: "left-side.right", right: "right-side.left", front: "front-panel.back", back: "back-panel.front" }),
    bottom: floor.in === "groove" ? site.write`room.bottom + ${floor.up ?? site.usual("1/4", "6")}` : "room.bottom",
  };
  const fasten: Settings = floor.fasten ?? { with: "brads", glue: "yes", spacing: site.usual("4", "100") };
  const parts = { join: "bottom-panel", to: [...SIDES, ...ENDS] };
  if (laidOn) return { ...parts, ...fasten };
  const { with: _, ...row } = fasten;
  const holding = (methodOf(fasten, site) ?? "brads").replace(/s$/, "");
  return {
    ...parts,
    with: floor.in,
    ...(floor.deep && { deep: floor.deep }),
    ...(floor.play && { play: floor.play }),
    ...(floor.in === "rabbet" ? { side: "bottom", ...row, [holding]: row[holding] ?? {} } : { glue: "no" }),
  };
}
