import { from, type Settings } from "../expand/make.ts";
import { joinWords, kept, measure, sizeOf, stockName } from "../kinds/kept.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { formulaIn, word } from "../kinds/simple.ts";
import { slice, type TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { type Collecting, within } from "./making.ts";
import { addShelf, addStretchers, shelf, stretchers } from "./table-below.ts";
import { addTableDrawer, apronOpening, tableDrawer } from "./table-drawer.ts";
import { taperFaces, tapering } from "./taper.ts";

/** `1/2 below the aprons`: gives the measure. */
const belowAprons: Kind<TextNode> = {
  words: "a measure below the aprons, such as 1/2 below the aprons",
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, this.words);
    const found = /^(.+?)\s+below\s+the\s+aprons?\s*$/i.exec(node.text);
    if (found === null) return tellWrong(where, node, this.words);
    const words = slice(node, 0, (found[1] ?? "").length);
    if (formulaIn(words, where) === undefined) return undefined;
    return { ...node, text: words.text, place: words.place };
  },
};

const taper = settings("the taper of the legs", {
  faces: may(taperFaces, "The faces that run in: inside if nothing is said."),
  to: need(measure, "How thick a leg is at the floor."),
  from: may(belowAprons, "Where it begins: 1/2 below the aprons."),
  over: may(measure, "How far up from the floor it begins."),
});

const legs = settings("the legs of a table", {
  "made of": need(stockName, "Their stock."),
  square: may(sizeOf, "Their section, where the stock does not give it."),
  taper: may(taper, "How they get thinner towards the floor."),
});

const aprons = settings("the aprons of a table", {
  "made of": need(stockName, "Their stock."),
  wide: need(sizeOf, "How far they reach down."),
  "set back": may(measure, "How far they stay behind the outer faces of the legs: 1/8 in or 3 mm if nothing is said."),
  top: may(kept(word(["flush with the legs"])), "Where their upper edges are: flush with the legs."),
  arch: may(measure, "The rise of an arch cut out of the lower edge of each."),
});

const bearer = settings("a bearer of a table", {
  "made of": may(stockName, "Its stock, if it is another than that of the aprons."),
  wide: need(sizeOf, "How far it reaches down."),
  count: may(measure, "How many, evenly spaced: one if nothing is said."),
  join: may(joinWords, "How it is joined to the long aprons, if otherwise than these to the legs."),
});

const own = settings("a table", {
  legs: need(legs, "The four legs."),
  aprons: need(aprons, "The four aprons between them."),
  bearer: may(bearer, "A cross rail between the long aprons.", "bearers"),
  join: may(joinWords, "How aprons and stretchers are joined to the legs: mortise and tenon if nothing is said."),
  stretchers: may(stretchers, "Rails low down between the legs."),
  drawer: may(tableDrawer, "A drawer in the front apron: its opening, and the settings of a drawer."),
  "lower shelf": may(shelf, "A shelf that lies on the side stretchers."),
});

type Said = Fields<typeof own.keys>;

const CORNERS = [
  ["front", "left"],
  ["front", "right"],
  ["back", "left"],
  ["back", "right"],
] as const;

export const table = assembly({
  kind: "table",
  also: [],
  meaning: "Four legs with aprons between them, and stretchers and a shelf below if you like.",
  makes:
    "Its parts are `front-left-leg`, `front-right-leg`, `back-left-leg`, `back-right-leg`, `aprons.front-apron`, `aprons.back-apron`, `aprons.left-apron`, `aprons.right-apron`, `bearer`, `left-stretcher`, `right-stretcher`, `front-stretcher`, `back-stretcher`, `middle-stretcher`, `lower-shelf`, and of a drawer `left-guide`, `right-guide`, the space `drawer-opening` and the drawer `drawer`.",
  settings: own,
  bearers: () => ["aprons"],
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const room = { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") };
    const entries: Record<string, Settings> = { room };
    for (const [deep, across] of CORNERS)
      entries[`${deep}-${across}-leg`] = from(said.legs.key, {
        "made of": said.legs.value.said["made of"].value,
        as: "upright",
        [across]: write`room.${across}`,
        [deep]: write`room.${deep}`,
        bottom: write`room.bottom`,
        top: write`room.top`,
        ...square(said),
        ...tapered(said, site, [deep, across]),
      });
    entries.aprons = from(said.aprons.key, apronsOf(said, site));
    const join: Settings = said.join?.value ?? { with: "mortise and tenon", tenon: { long: tenonLong(site) } };
    const joints: Settings[] = CORNERS_OF_APRONS.map(([name, to]) =>
      from(said.aprons.key, { join: `aprons.${name}`, to, ...join }),
    );
    const making = { site, entries, joints };
    const { bearer: cross, drawer, stretchers: low, "lower shelf": board } = said;
    if (cross) within(cross.key, making, (inner) => addBearer(said, inner, join));
    if (drawer)
      within(drawer.key, making, (inner) =>
        addTableDrawer(drawer.value, said.aprons.value.said["made of"].value, inner),
      );
    if (low) within(low.key, making, (inner) => addStretchers(low.value.said, inner, join));
    if (board) within(board.key, making, (inner) => addShelf(board.value.said, inner));
    return { entries, joints };
  },
});

const CORNERS_OF_APRONS = [
  ["front-apron", ["front-left-leg", "front-right-leg"]],
  ["back-apron", ["back-left-leg", "back-right-leg"]],
  ["left-apron", ["front-left-leg", "back-left-leg"]],
  ["right-apron", ["front-right-leg", "back-right-leg"]],
] as const;

/**
 * The length of a tenon that stays clear of the one that comes into the leg from the side: that is a third of its apron thick, in the middle of it, and
 * between two mortises, each 1/16 in deeper than its tenon, there stays 1/16 in of wood. Else 1 in, or two thirds of the leg. Common practice, no source.
 */
function tenonLong({ write, usual, step }: Site) {
  const [leg, side, front] = ["front-left-leg", "aprons.left-apron", "aprons.front-apron"];
  const across = write`${leg}.right - ${side}.left - ${side}.across * 2 / 3 - ${usual("1/8", "3")}`;
  const deep = write`${leg}.back - ${front}.front - ${front}.deep * 2 / 3 - ${usual("1/8", "3")}`;
  return write`round-down(min(${usual("1", "25")}, ${leg}.across * 2 / 3, ${leg}.deep * 2 / 3, ${across}, ${deep}), ${step})`;
}

const square = ({ legs: { value } }: Said): Settings =>
  value.said.square ? { facing: "front", across: value.said.square.value, deep: value.said.square.value } : {};

/** The taper of a leg at a corner. */
function tapered(
  { legs: { value }, aprons: { value: rails } }: Said,
  { write }: Site,
  corner: (typeof CORNERS)[number],
): Settings {
  const said = value.said.taper?.value.said;
  if (!said) return {};
  const below = said.from?.value;
  const wide = rails.said.wide.value;
  const over = said.over?.value ?? (below ? write`top - bottom - ${wide} - ${below}` : write`top - bottom - ${wide}`);
  return { taper: { faces: tapering(said.faces?.value ?? "inside", corner), at: "bottom", to: said.to.value, over } };
}

function apronsOf({ aprons: { value }, drawer }: Said, site: Site): Settings {
  const { write } = site;
  const { said } = value;
  const back = said["set back"]?.value ?? write`${site.usual("1/8", "3")}`;
  const arch = said.arch && { arch: { in: "bottom", deep: said.arch.value } };
  const rail: Settings = {
    "made of": said["made of"].value,
    as: "on edge",
    up: said.wide.value,
    top: write`room.top`,
    ...arch,
  };
  const along: Settings = {
    ...rail,
    grain: "across",
    left: write`front-left-leg.right`,
    right: write`front-right-leg.left`,
  };
  const deep: Settings = {
    ...rail,
    grain: "deep",
    front: write`front-left-leg.back`,
    back: write`back-left-leg.front`,
  };
  return {
    "front-apron": { ...along, ...(drawer && apronOpening(drawer.value.said)), front: write`room.front + ${back}` },
    "back-apron": { ...along, back: write`room.back - ${back}` },
    "left-apron": { ...deep, left: write`room.left + ${back}` },
    "right-apron": { ...deep, right: write`room.right - ${back}` },
  };
}

/** Cross rails between the front and the back apron. */
function addBearer(
  { bearer: field, aprons: rails }: Said,
  { site: { write }, entries, joints }: Collecting,
  join: Settings,
): void {
  const said = field?.value.said;
  if (!said) return;
  const row: Settings = said.count
    ? { count: said.count.value, spread: write`across between left-apron and right-apron` }
    : { "centred on": { across: "room" } };
  entries.bearer = {
    "made of": said["made of"]?.value ?? rails.value.said["made of"].value,
    as: "on edge",
    grain: "deep",
    up: said.wide.value,
    top: write`room.top`,
    front: write`front-apron.back`,
    back: write`back-apron.front`,
    ...row,
  };
  joints.push({ join: "bearer", to: ["front-apron", "back-apron"], ...(said.join?.value ?? join) });
}
