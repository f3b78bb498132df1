import type { Settings } from "../expand/make.ts";
import { asOfPart, joinWords, measure, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word, yesNo } from "../kinds/simple.ts";
import type { Collecting } from "./making.ts";

export const stretchers = settings("the stretchers of a table", {
  "made of": need(stockName, "Their stock."),
  wide: need(sizeOf, "How far they reach up."),
  "up from floor": need(measure, "How high their lower edges are.", "up"),
  where: may(word(["sides", "front and back", "all"]), "Between which legs: at the sides if nothing is said."),
  middle: may(yesNo, "One more from the left to the right stretcher, in the middle."),
  join: may(joinWords, "How they are joined, if otherwise than the aprons."),
});

export const shelf = settings("the lower shelf of a table", {
  "made of": need(stockName, "Its stock."),
  boards: may(asOfPart, "How many boards it is glued up from."),
  join: may(joinWords, "What holds it to the stretchers: screws from below if nothing is said."),
});

/** Rails between the legs, in the middle of their thickness. */
export function addStretchers(
  said: Fields<typeof stretchers.keys>,
  { site: { write }, entries, joints }: Collecting,
  join: Settings,
): void {
  const where = said.where?.value ?? "sides";
  const how = said.join?.value ?? join;
  const rail: Settings = {
    "made of": said["made of"].value,
    as: "on edge",
    up: said.wide.value,
    bottom: write`room.bottom + ${said["up from floor"].value}`,
  };
  if (where !== "front and back")
    for (const side of ["left", "right"] as const) {
      const legs = [`front-${side}-leg`, `back-${side}-leg`];
      entries[`${side}-stretcher`] = {
        ...rail,
        grain: "deep",
        front: write`front-${side}-leg.back`,
        back: write`back-${side}-leg.front`,
        "centred on": { across: `front-${side}-leg` },
      };
      joints.push({ join: `${side}-stretcher`, to: legs, ...how });
    }
  if (where !== "sides")
    for (const side of ["front", "back"] as const) {
      entries[`${side}-stretcher`] = {
        ...rail,
        grain: "across",
        left: write`${side}-left-leg.right`,
        right: write`${side}-right-leg.left`,
        "centred on": { deep: `${side}-left-leg` },
      };
      joints.push({ join: `${side}-stretcher`, to: [`${side}-left-leg`, `${side}-right-leg`], ...how });
    }
  if (said.middle?.value !== true || where === "front and back") return;
  entries["middle-stretcher"] = {
    ...rail,
    grain: "across",
    left: write`left-stretcher.right`,
    right: write`right-stretcher.left`,
    "centred on": { deep: "room" },
  };
  joints.push({ join: "middle-stretcher", to: ["left-stretcher", "right-stretcher"], ...how });
}

/** A shelf on the side stretchers, between the front and the back legs, so that it needs no notches. */
export function addShelf(said: Fields<typeof shelf.keys>, { site: { write }, entries, joints }: Collecting): void {
  entries["lower-shelf"] = {
    "made of": said["made of"].value,
    boards: said.boards?.value,
    as: "lying flat",
    grain: "across",
    on: "left-stretcher",
    left: write`left-stretcher.left`,
    right: write`right-stretcher.right`,
    front: write`front-left-leg.back`,
    back: write`back-left-leg.front`,
  };
  joints.push({
    join: "lower-shelf",
    to: ["left-stretcher", "right-stretcher"],
    ...(said.join?.value ?? { with: "screws", from: "left-stretcher" }),
  });
}
