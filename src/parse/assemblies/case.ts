import type { Settings } from "../expand/make.ts";
import { byForm } from "../kinds/combine.ts";
import { joinWords, measure, stockName, yesNoOr } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import { squash } from "../names.ts";
import type { Node, TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { backIn, backPanel } from "./back-in.ts";
import { divide } from "./divide.ts";
import { frontEdges } from "./front-edges.ts";
import type { Making } from "./making.ts";
import { openings } from "./openings.ts";
import { shelve } from "./shelve.ts";
import { shelves } from "./shelves-in.ts";
import { toBase, toBaseSetting } from "./to-base.ts";

const sides = settings("the sides of a case", {
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  run: may(
    word(["full height", "between top and bottom"]),
    "Whether they run from end to end, or stand between top and bottom.",
  ),
});

const panel = settings("a panel of a case", {
  "made of": may(stockName, "Its stock, if it is another than that of the case."),
  up: may(measure, "How far the bottom panel lies above the lower ends of the sides.", "raised"),
  "set back": may(measure, "How far it stays behind the front."),
  join: may(joinWords, "How it is joined, if otherwise than the case.", "in"),
});

const rails = settings("the top rails of a case", {
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  wide: may(measure, "How far each reaches from front to back: 3 in or 75 mm if nothing is said."),
});

const topPanel = yesNoOr(byForm({ text: word(["rails"]), map: panel }));

const own = settings("a case", {
  "made of": need(stockName, "The stock of its panels."),
  sides: may(sides, "The two sides."),
  "bottom panel": may(yesNoOr(panel), "The panel at the bottom."),
  "top panel": may(topPanel, "The panel at the top; `rails` for two rails in its place."),
  "top rails": may(rails, "The two rails that hold the sides together at the top, where there is no panel."),
  "top and bottom": may(joinWords, "How top and bottom are joined to the sides, if otherwise than the rest."),
  join: may(joinWords, "How its panels, dividers and shelves are joined: dado if nothing is said."),
  "front edges": may(
    frontEdges,
    "The band on the front edges of its panels, dividers and shelves: what it is, or settings that say more.",
    "edge banding",
  ),
  back: may(backIn, "The back: its stock, or settings that say more."),
  openings: may(openings, "How the inside is divided."),
  shelves: may(shelves, "Shelves, where the inside is not divided: how many fixed ones, or what they are."),
  "to its base": toBaseSetting,
});

type Said = Fields<typeof own.keys>;

export const carcase = assembly({
  kind: "case",
  also: ["carcase"],
  meaning: "Two sides with panels between them, divided into openings.",
  settings: own,
  bearers: (written) => {
    const panel = written("top panel");
    const rails = panel === undefined ? written("top rails") !== undefined : isText(panel, "rails");
    return rails
      ? ["top-rail-front", "top-rail-back"]
      : isText(panel, "no")
        ? ["left-side", "right-side"]
        : ["top-panel"];
  },
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const stock = said["made of"].value;
    const join: Settings = said.join?.value ?? { with: "dado" };
    const edge: Settings = said["front edges"]?.value ?? {};
    const making: Making = { site, entries: {}, joints: [], stock, join, edge };
    const { entries, joints } = making;
    entries.room = { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") };
    const full = said.sides?.value.said.run?.value !== "between top and bottom";
    const back = said.back?.value;
    const laidOn = back !== undefined && back.in === "laid on";
    const backFace = laidOn ? "back-panel.front" : "room.back";
    const [bottom, top] = [panelOf(said["bottom panel"]?.value), topOf(said)];
    const inner = back === undefined ? "room.back" : "back-panel.front";

    const side = (face: "left" | "right"): Settings => ({
      "made of": said.sides?.value.said["made of"]?.value ?? stock,
      as: "upright",
      facing: face,
      [face]: write`room.${face}`,
      bottom: full || bottom === null ? write`room.bottom` : write`bottom-panel.top`,
      top: full || top === null || top === "rails" ? write`room.top` : write`top-panel.bottom`,
      front: write`room.front`,
      back: write`${backFace}`,
      ...edge,
    });
    entries["left-side"] = side("left");
    entries["right-side"] = side("right");

    const lying = (setBack: TextNode | undefined): Settings => ({
      as: "lying flat",
      grain: "across",
      ...(full
        ? { left: write`left-side.right`, right: write`right-side.left` }
        : { left: write`room.left`, right: write`room.right` }),
      front: setBack ? write`room.front + ${setBack}` : write`room.front`,
      back: write`${backFace}`,
      ...edge,
    });
    const both = ["left-side", "right-side"];
    const ends = said["top and bottom"]?.value;
    const joinEnd = (name: string, own: Settings | undefined): void => {
      const how = own ?? ends ?? join;
      joints.push(full ? { join: name, to: both, ...how } : { join: both, to: name, ...how });
    };
    if (bottom !== null) {
      const up = bottom.up?.value;
      entries["bottom-panel"] = {
        "made of": bottom["made of"]?.value ?? stock,
        ...lying(bottom["set back"]?.value),
        bottom: up ? write`room.bottom + ${up}` : write`room.bottom`,
      };
      joinEnd("bottom-panel", bottom.join?.value);
      joints.push(...toBase(said["to its base"]?.value, up === undefined, site));
    }
    if (top === "rails") addRails(said, making);
    else if (top !== null) {
      entries["top-panel"] = {
        "made of": top["made of"]?.value ?? stock,
        ...lying(top["set back"]?.value),
        top: write`room.top`,
      };
      joinEnd("top-panel", top.join?.value);
    }
    entries.inside = {
      kind: "space",
      left: write`left-side.right`,
      right: write`right-side.left`,
      bottom: bottom === null ? write`room.bottom` : write`bottom-panel.top`,
      top: top === null ? write`room.top` : top === "rails" ? write`top-rail-front.bottom` : write`top-panel.bottom`,
      front: write`room.front`,
      back: write`${inner}`,
    };
    const bounds = {
      left: "left-side",
      right: "right-side",
      ...(bottom !== null && { bottom: "bottom-panel" }),
      ...(top !== null && { top: top === "rails" ? "top-rail-front" : "top-panel" }),
    };
    if (said.openings) divide("inside", said.openings.value, bounds, making);
    if (said.shelves) shelve("inside", said.shelves.value, bounds, making, "");
    if (back !== undefined)
      backPanel(
        back,
        making,
        [bottom, top === "rails" ? null : top].map((each) => each !== null),
      );
    return { entries, joints };
  },
});

const isText = (node: Node | undefined, word: string): boolean => node?.kind === "text" && squash(node.text) === word;

type PanelSaid = Fields<typeof panel.keys>;

const panelOf = (said: boolean | { readonly said: PanelSaid } | undefined): PanelSaid | null =>
  said === false ? null : said === undefined || said === true ? {} : said.said;

function topOf(said: Said): PanelSaid | "rails" | null {
  const value = said["top panel"]?.value;
  if (value === "rails" || (value === undefined && said["top rails"] !== undefined)) return "rails";
  return panelOf(value);
}

/** Two rails lying flat, at the front and at the back. */
function addRails(said: Said, { site, entries, joints, stock, join }: Making): void {
  const { write } = site;
  const own = said["top rails"]?.value.said;
  for (const [name, face] of [
    ["top-rail-front", "front"],
    ["top-rail-back", "back"],
  ] as const) {
    entries[name] = {
      "made of": own?.["made of"]?.value ?? stock,
      as: "lying flat",
      grain: "across",
      left: write`left-side.right`,
      right: write`right-side.left`,
      top: write`room.top`,
      deep: own?.wide?.value ?? site.usual("3", "75"),
      [face]: face === "front" ? write`room.front` : write`left-side.back`,
    };
    joints.push({ join: name, to: ["left-side", "right-side"], ...(said["top and bottom"]?.value ?? join) });
  }
}
