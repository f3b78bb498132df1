import { byForm } from "../../kinds/combine.ts";
import { joinWords, kept, measure, sizeOf, stockName, yesNoOr } from "../../kinds/kept.ts";
import { axis } from "../../kinds/places.ts";
import { type Fields, may, need, settings } from "../../kinds/settings.ts";
import { word } from "../../kinds/simple.ts";
import { backIn } from "../back-in.ts";
import { frontEdges } from "../front-edges.ts";
import { caseOpenings } from "../openings.ts";
import { shelves } from "../shelves-in.ts";
import { taperFaces } from "../taper.ts";
import { toBaseSetting } from "../to-base.ts";

const taper = settings("the taper of posts", {
  faces: may(taperFaces, "The faces that run in: inside if nothing is said."),
  to: need(measure, "How thick a post is at the floor."),
  over: may(measure, "How far up from the floor it begins: as far as the feet reach if nothing is said."),
});

const posts = settings("the posts of a case", {
  "made of": need(stockName, "Their stock."),
  square: may(sizeOf, "Their section, where the stock does not give it."),
  foot: may(measure, "How far they reach down below the sides and the bottom: 4 in or 100 mm if nothing is said."),
  taper: may(taper, "How they get thinner towards the floor."),
});

const sidePanels = settings("the panels between posts", {
  lie: may(
    word(["flush inside", "flush outside", "in the middle"]),
    "Where they lie in the thickness of the posts: flush inside if nothing is said, so that the inside is smooth.",
    "lies",
  ),
  "set back": may(measure, "How far they stay behind the outer faces of the posts."),
  grain: may(
    kept(axis),
    "The direction of their grain, up or deep: that in which they are longer if they are of solid wood, else up, if nothing is said.",
  ),
  join: may(
    joinWords,
    "How they are joined to the posts: by dowels where they are flush, in grooves where they are not or have rails, if nothing is said.",
  ),
});

const sideRails = settings("the rails between posts", {
  "made of": need(stockName, "Their stock."),
  wide: need(sizeOf, "How far each reaches up."),
  join: may(joinWords, "How they are joined to the posts: mortise and tenon if nothing is said."),
});

const sides = settings("the sides of a case", {
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  run: may(
    word(["full height", "between top and bottom"]),
    "Whether they run from end to end, or stand between top and bottom.",
  ),
  posts: may(posts, "Posts at the four corners, with the sides as panels between them."),
  panels: may(sidePanels, "How the panels lie between the posts, and how they are joined to them.", "panel"),
  rails: may(sideRails, "Rails between the posts, below and above the panel of each side."),
});
export type Sides = Fields<typeof sides.keys>;

const panel = settings("a panel of a case", {
  "made of": may(stockName, "Its stock, if it is another than that of the case."),
  up: may(measure, "How far the bottom panel lies above the lower ends of the sides.", "raised"),
  "set back": may(measure, "How far it stays behind the front."),
  join: may(joinWords, "How it is joined, if otherwise than the case.", "in"),
});
export type PanelSaid = Fields<typeof panel.keys>;

const rails = settings("the top rails of a case", {
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  wide: may(
    sizeOf,
    "How far each reaches from front to back: as far as a post, or 3 in or 75 mm between plain sides, if nothing is said.",
  ),
  join: may(joinWords, "How they are joined to the sides or posts, if otherwise than the case."),
});

const backRails = settings("the back rails of a case", {
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  wide: may(sizeOf, "How far each reaches up: 3 in or 75 mm if nothing is said."),
  where: may(word(["top", "bottom", "top and bottom"]), "Above and below the back panel if nothing is said."),
  join: may(joinWords, "How they are joined to the sides or posts, if otherwise than the case."),
});

const topPanel = yesNoOr(byForm({ text: word(["rails"]), map: panel }));

export const own = settings("a case", {
  "made of": need(stockName, "The stock of its panels."),
  sides: may(sides, "The two sides: panels, or posts with panels between them."),
  "bottom panel": may(yesNoOr(panel), "The panel at the bottom."),
  "top panel": may(topPanel, "The panel at the top; `rails` for two rails in its place."),
  "top rails": may(rails, "The two rails that hold the sides together at the top, where there is no panel."),
  "top and bottom": may(
    joinWords,
    "How top and bottom are joined to the sides, if otherwise than the rest. With dovetails, a box joint or a mitre they run to the outer corners; a bottom that is raised, or between posts, cannot.",
  ),
  join: may(
    joinWords,
    "How its panels, dividers and shelves are joined: dado if nothing is said, 3/16 in or 5 mm deep between panels that are dowelled to posts.",
  ),
  "front edges": may(
    frontEdges,
    "The band on the front edges of its panels, dividers and shelves: what it is, or settings that say more.",
    "edge banding",
  ),
  back: may(backIn, "The back: its stock, or settings that say more."),
  "back rails": may(backRails, "Rails on edge between the sides at the back, above and below the back panel."),
  openings: may(caseOpenings, "How the inside is divided."),
  shelves: may(shelves, "Shelves, where the inside is not divided: how many fixed ones, or what they are."),
  "to its base": toBaseSetting,
});
export type Said = Fields<typeof own.keys>;
