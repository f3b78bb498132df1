import type { Axis, Face } from "../draft.ts";
import { from, type Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { joinWords, measure, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import { squash } from "../names.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { crosses, endJoint } from "./corners.ts";

const member = settings("the stiles or rails of a frame", {
  "made of": may(stockName, "Their stock, if it is another than that of the frame."),
  wide: may(sizeOf, "How wide they are, if otherwise than the frame says.", "width"),
});

const panelSettings = settings("the panel of a frame", {
  "made of": need(stockName, "Its stock."),
  deep: may(measure, "How deep the groove is: 1/4 in or 6 mm if nothing is said.", "groove"),
  play: may(measure, "How much room it has in its grooves at each edge."),
  grain: may(word(["across", "deep", "up"]), "The direction of its grain: along the stiles if nothing is said."),
});

interface Panel {
  readonly stock: TextNode;
  readonly said: Partial<Fields<typeof panelSettings.keys>>;
}
const panel = byForm({
  text: made(stockName, (stock): Panel => ({ stock, said: {} })),
  map: made(panelSettings, ({ said }): Panel => ({ stock: said["made of"].value, said })),
});

const own = settings("a frame", {
  "made of": need(stockName, "The stock of its stiles and rails."),
  as: may(word(["upright", "lying flat"]), "Whether it stands, or lies flat; upright if nothing is said."),
  facing: may(
    word(["front", "back", "left", "right"]),
    "Where the broad side of a frame that stands looks: the front if nothing is said.",
  ),
  wide: may(sizeOf, "How wide stiles and rails are, where their stock does not say it.", "width"),
  stiles: may(member, "The two that run through: upright, or from front to back in a frame that lies flat."),
  rails: may(member, "The two between them."),
  foot: may(measure, "How far the stiles of a frame that stands reach down below its bottom rail."),
  join: may(joinWords, "The joint in its four corners: mortise and tenon if nothing is said."),
  panel: may(panel, "A panel in grooves of the frame: its stock, or settings that say more."),
});

type Said = Fields<typeof own.keys>;

/** How a frame lies. */
interface Lie {
  /** From stile to stile, and along the stiles. */
  readonly between: readonly [low: Face, high: Face];
  readonly along: readonly [low: Face, high: Face];
  readonly stileWidth: Axis;
  readonly railWidth: Axis;
  readonly grain: Axis;
  /** Its thickness lies in this direction, from this face. */
  readonly thick: readonly [axis: Axis, from: Face];
  readonly turned: readonly [stile: Settings, rail: Settings, panel: Settings];
  readonly names: readonly [string, string, string, string];
}

function lieOf({ as, facing }: Said): Lie {
  if (as?.value === "lying flat") {
    const flat = (grain: Axis): Settings => ({ as: "lying flat", grain });
    return {
      between: ["left", "right"],
      along: ["front", "back"],
      stileWidth: "across",
      railWidth: "deep",
      grain: "deep",
      thick: ["up", "bottom"],
      turned: [flat("deep"), flat("across"), { as: "lying flat" }],
      names: ["left-stile", "right-stile", "front-rail", "back-rail"],
    };
  }
  const face = facing?.value ?? "front";
  const across = face === "front" || face === "back";
  return {
    between: across ? ["left", "right"] : ["front", "back"],
    along: ["bottom", "top"],
    stileWidth: across ? "across" : "deep",
    railWidth: "up",
    grain: "up",
    thick: [across ? "deep" : "across", face],
    turned: [
      { as: "upright", facing: face },
      { as: "on edge", facing: face },
      { as: "upright", facing: face },
    ],
    names: [across ? "left-stile" : "front-stile", across ? "right-stile" : "back-stile", "bottom-rail", "top-rail"],
  };
}

export const frame = assembly({
  kind: "frame",
  also: [],
  meaning: "Two stiles and two rails, with a panel in them if wanted.",
  makes:
    "Its parts are `left-stile`, `right-stile`, `bottom-rail`, `top-rail` and `panel`; facing left or right `front-stile` and `back-stile`; lying flat `front-rail` and `back-rail`.",
  settings: own,
  bearers: (written) => {
    const as = written("as");
    const flat = as?.kind === "text" && squash(as.text) === "lyingflat";
    return flat ? ["left-stile", "right-stile", "front-rail", "back-rail"] : ["top-rail"];
  },
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const lie = lieOf(said);
    const [low, high, first, second] = lie.names;
    const join: Settings = said.join?.value ?? { with: "mortise and tenon" };
    const crossing = crosses(join, site);
    const stock = said["made of"].value;
    const [axis, shown] = lie.thick;
    const level = { [shown]: write`${low}.${shown}` };
    const foot = said.foot?.value;
    const [start, end] = lie.between;
    const [near, far] = lie.along;
    const stile = (face: Face): Settings => {
      const wide = said.stiles?.value.said.wide?.value ?? said.wide?.value;
      return {
        "made of": said.stiles?.value.said["made of"]?.value ?? stock,
        ...lie.turned[0],
        [face]: `room.${face}`,
        ...(wide && { [lie.stileWidth]: wide }),
        [near]: `room.${near}`,
        [far]: `room.${far}`,
        ...(face === start ? site.thin(axis, shown) : level),
      };
    };
    const rail = (face: Face): Settings => {
      const wide = said.rails?.value.said.wide?.value ?? said.wide?.value;
      return {
        "made of": said.rails?.value.said["made of"]?.value ?? stock,
        ...lie.turned[1],
        [start]: crossing ? `room.${start}` : write`${low}.${end}`,
        [end]: crossing ? `room.${end}` : write`${high}.${start}`,
        [face]: foot && face === "bottom" ? write`room.bottom + ${foot}` : `room.${face}`,
        ...(wide && { [lie.railWidth]: wide }),
        ...level,
      };
    };
    const entries: Record<string, Settings> = {
      room: roomOf(lie, site),
      [low]: from(said.stiles?.key, stile(start)),
      [high]: from(said.stiles?.key, stile(end)),
      [first]: from(said.rails?.key, rail(near)),
      [second]: from(said.rails?.key, rail(far)),
    };
    const joints = [endJoint([first, second], [low, high], join, site)];
    const held = said.panel?.value;
    if (held) {
      entries.panel = from(said.panel?.key, {
        "made of": held.stock,
        ...lie.turned[2],
        grain: held.said.grain?.value ?? lie.grain,
        [start]: write`${low}.${end}`,
        [end]: write`${high}.${start}`,
        [near]: write`${first}.${far}`,
        [far]: write`${second}.${near}`,
        [axis]: write`centred on ${low}`,
      });
      const deep = held.said.deep?.value ?? site.usual("1/4", "6");
      const play = held.said.play?.value;
      const grooves = { with: "groove", deep, ...(play && { play }), glue: "no" };
      joints.push(from(said.panel?.key, { join: "panel", to: [low, high, first, second], ...grooves }));
    }
    return { entries, joints };
  },
});

/** The room that the frame fills: as thick as its stock. */
function roomOf({ thick: [thin], names: [stile] }: Lie, site: Site): Settings {
  const { write } = site;
  const faces = (["across", "deep", "up"] as const).flatMap((axis): readonly (readonly [string, Settings[string]])[] =>
    axis === thin
      ? FACES[axis].map((face) => [face, write`${stile}.${face}`] as const)
      : Object.entries(site.placed(axis)),
  );
  return { kind: "space", ...Object.fromEntries(faces) };
}

const FACES: Readonly<Record<Axis, readonly [Face, Face]>> = {
  across: ["left", "right"],
  deep: ["front", "back"],
  up: ["bottom", "top"],
};
