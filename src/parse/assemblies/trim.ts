import type { Face } from "../draft.ts";
import type { Settings } from "../expand/make.ts";
import { oneOrList } from "../kinds/combine.ts";
import { joinWords, partName, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";

const edge = word(["left", "right", "front", "back", "bottom", "top"]);

const own = settings("a trim", {
  "made of": need(stockName, "The stock of its strips."),
  round: need(partName, "The part or assembly that it is put on."),
  along: may(
    word(["front edges", "top edges"], { front: "front edges", top: "top edges" }),
    "The front edges if nothing is said: strips before them; or strips round the top edges, on the outside.",
  ),
  edges: may(
    oneOrList(edge),
    "Which edges get a strip: left, right, bottom and top in front; front, left and right round the top.",
  ),
  wide: may(sizeOf, "How wide its strips are, where their stock does not say it.", "width"),
  corners: may(
    word(["mitred", "butted"], { mitered: "mitred", mitre: "mitred", butt: "butted" }),
    "How strips meet: mitred if nothing is said; butted, the upright ones, or that in front, run through.",
  ),
  fasten: may(
    joinWords,
    "What holds it: glue and brads if nothing is said; glue alone for mitred strips before front edges.",
  ),
});

type Said = Fields<typeof own.keys>;

export const trim = assembly({
  kind: "trim",
  also: [],
  meaning: "Strips round the front edges or the top edges of something.",
  makes: "Its parts are `left-strip`, `right-strip`, `bottom-strip`, `top-strip`, `front-strip` and `back-strip`.",
  settings: own,
  expand: (said: Said, site: Site): Expanded => {
    const inFront = said.along?.value !== "top edges";
    const all: readonly Face[] = inFront ? ["left", "right", "bottom", "top"] : ["left", "right", "front", "back"];
    const usual: readonly Face[] = inFront ? all : ["front", "left", "right"];
    const wanted = new Set(said.edges?.value ?? usual);
    const edges = all.filter((face) => wanted.has(face));
    const strips = (inFront ? before : around)(said, new Set(edges), site);
    const names = edges.map((face) => `${face}-strip`);
    // Before the corner of a case a mitred strip lies on a triangle of its neighbour, where no brad finds room.
    const brads: Settings = { with: "brads", glue: "yes", spacing: site.usual("6", "150") };
    const fasten: Settings = said.fasten?.value ?? (inFront && isMitred(said) ? { with: "glue" } : brads);
    const joints: Settings[] = [{ join: names, to: said.round.value, ...fasten }];
    const isSide = (name: string): boolean => name === "left-strip" || name === "right-strip";
    const ends = names.filter((name) => isSide(name) !== inFront);
    const through = names.filter((name) => isSide(name) === inFront);
    if (ends.length > 0 && through.length > 0)
      joints.push({ join: ends, to: through, with: isMitred(said) ? "mitre" : "glue" });
    return { entries: strips, joints };
  },
});

const isMitred = (said: Said): boolean => said.corners?.value !== "butted";

/** Strips before the front edges: flush with the outside, their backs on the edges. */
function before(said: Said, edges: ReadonlySet<Face>, { like, write }: Site): Record<string, Settings> {
  const of: TextNode = said.round.value;
  const wide = said.wide?.value;
  const mitred = isMitred(said);
  const strips = [...edges].map((face): [string, Settings] => {
    const standing = face === "left" || face === "right";
    const inner = (side: Face): string =>
      mitred || !edges.has(side) ? `room.${side}` : `${side}-strip.${side === "left" ? "right" : "left"}`;
    return [
      `${face}-strip`,
      {
        "made of": said["made of"].value,
        as: standing ? "upright" : "on edge",
        facing: "front",
        [face]: `room.${face}`,
        ...(wide && { [standing ? "across" : "up"]: wide }),
        ...(standing ? { bottom: "room.bottom", top: "room.top" } : { left: inner("left"), right: inner("right") }),
        back: write`${of}.front`,
      },
    ];
  });
  const [first] = edges;
  const room = { kind: "space", ...like("across", of), ...like("up", of) };
  const thick = { front: `${first}-strip.front`, back: `${first}-strip.back` };
  return { room: { ...room, ...thick }, ...Object.fromEntries(strips) };
}

/** Strips round the top edges: on the outside of what they are put on, level with its top. */
function around(said: Said, edges: ReadonlySet<Face>, { like, write }: Site): Record<string, Settings> {
  const of: TextNode = said.round.value;
  const wide = said.wide?.value;
  const mitred = isMitred(said);
  const outer = (side: Face): string | TextNode => (edges.has(side) ? `${side}-strip.${side}` : write`${of}.${side}`);
  const strips = [...edges].map((face): [string, Settings] => {
    const toSide = face === "left" || face === "right";
    const end = (side: Face): string | TextNode => (toSide && !mitred ? write`${of}.${side}` : outer(side));
    return [
      `${face}-strip`,
      {
        "made of": said["made of"].value,
        as: "on edge",
        facing: face,
        [OPPOSITE[face]]: write`${of}.${face}`,
        ...(toSide ? { front: end("front"), back: end("back") } : { left: end("left"), right: end("right") }),
        ...(wide && { up: wide }),
        top: "room.top",
      },
    ];
  });
  const sides = (["left", "right", "front", "back"] as const).map((side) => [side, outer(side)] as const);
  const room = { kind: "space", ...Object.fromEntries(sides), ...like("up", of) };
  return { room, ...Object.fromEntries(strips) };
}

const OPPOSITE: Readonly<Record<Face, Face>> = {
  ...{ left: "right", right: "left", front: "back", back: "front", bottom: "top", top: "bottom" },
};
