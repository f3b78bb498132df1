import { CURE, type Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { joinWords, measure, stockName } from "../kinds/kept.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formulaIn } from "../kinds/simple.ts";
import { slice, type TextNode } from "../yaml/nodes.ts";
import type { Site } from "./assembly.ts";
import type { Making } from "./making.ts";

/** How a back is let in: laid on, in a rabbet or in a groove, and how deep. */
export interface Seat {
  readonly in: "laid on" | "rabbet" | "groove";
  readonly deep?: TextNode;
}

const WORDS = "laid on, rabbet or groove, with its depth if you like: groove 1/4 deep";

/** `laid on`, `rabbet`, `groove 6 deep`. */
export const seat: Kind<Seat> = {
  words: WORDS,
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, WORDS);
    const found = /^\s*(laid on|rabbet|rebate|groove)(?:\s+(.+?)\s+deep)?\s*$/i.exec(node.text);
    if (found === null) return tellWrong(where, node, WORDS);
    const kind = (found[1] ?? "").toLowerCase();
    const name = kind === "rebate" ? "rabbet" : (kind as Seat["in"]);
    if (found[2] === undefined) return { in: name };
    const start = node.text.indexOf(found[2], (found[1] ?? "").length);
    const words = slice(node, start, start + found[2].length);
    if (formulaIn(words, where) === undefined) return undefined;
    return { in: name, deep: { ...node, text: words.text, place: words.place } };
  },
};

const full = settings("the back of a case", {
  "made of": need(stockName, "Its stock."),
  in: may(
    seat,
    "How it is let in: laid on, in a rabbet, or in a groove; in a rabbet if nothing is said, before a bevelled pair of cleats in a groove. `rabbet 3/8 deep` is cut 3/8 in from the inner faces of the sides, and as wide as the back is thick; `groove 1/4 deep` goes 1/4 into those faces.",
  ),
  "in from the back": may(
    measure,
    "How far a back in a groove stays in front of the back edges: 1/2 in or 12 mm, or as far as a bevelled pair of cleats behind it is thick, if nothing is said. Before such a pair say 1/16 in or 1.5 mm more than that: the cleat on the wall wants air.",
    "in from the wall",
  ),
  play: may(measure, "How much room it has in its grooves at each edge."),
  short: may(measure, "How far a back that is laid on stays inside the edges, all round."),
  fasten: may(
    joinWords,
    "What holds a back that is laid on or lies in a rabbet, to the sides and to the fixed shelves and dividers that end on it: brads if nothing is said.",
  ),
});

export interface SaidBack extends Partial<Seat> {
  readonly stock: TextNode;
  readonly inFrom?: TextNode;
  readonly play?: TextNode;
  readonly short?: TextNode;
  readonly fasten?: Settings;
}

/** A stock, or settings that say more. */
export const backIn = byForm({
  text: made(stockName, (stock): SaidBack => ({ stock })),
  map: made(
    full,
    ({ said }): SaidBack => ({
      stock: said["made of"].value,
      ...said.in?.value,
      ...(said["in from the back"] && { inFrom: said["in from the back"].value }),
      ...(said.play && { play: said.play.value }),
      ...(said.short && { short: said.short.value }),
      ...(said.fasten && { fasten: said.fasten.value }),
    }),
  ),
});

export type Back = SaidBack & Seat;

/** A back with how it is let in: before cleats it needs a groove. */
export const seated = (said: SaidBack, { behindBack }: Site): Back => ({
  ...said,
  in: said.in ?? (behindBack ? "groove" : "rabbet"),
});

/** How far a back in a groove stays in front of the back edges. */
const inFrom = ({ inFrom: said }: Back, { behindBack, usual, write }: Site): TextNode => {
  if (said) return said;
  return behindBack ? write`${behindBack}.thickness` : write`${usual("1/2", "12")}`;
};

/** What a back ends on below and above, by the names of parts; null where nothing is. */
export interface BackEnds {
  readonly bottom: string | null;
  readonly top: string | null;
}

/** What it lies on between its edges: fixed shelves and dividers. */
interface BackRests extends BackEnds {
  readonly between: readonly string[];
}

/** The back of a case, joined to its sides and to what there is below and above. `low`: where a case on posts ends below, above its feet. */
export function backPanel(
  back: Back,
  { site, entries, joints }: Making,
  { bottom, top, between }: BackRests,
  low: TextNode | null,
): void {
  const { write } = site;
  const upright: Settings = { "made of": back.stock, as: "upright", facing: "back", grain: "up" };
  const to = ["left-side", "right-side", bottom, top].filter((name) => name !== null);
  const fasten: Settings = back.fasten ?? { with: "brads", spacing: site.usual("5", "125") };
  if (back.in !== "groove" && between.length > 0) joints.push({ join: "back-panel", to: between, ...fasten });
  if (back.in === "laid on") {
    const short = back.short ?? write`${site.usual("1/16", "1")}`;
    entries["back-panel"] = {
      ...upright,
      left: write`room.left + ${short}`,
      right: write`room.right - ${short}`,
      bottom: low ?? write`room.bottom + ${short}`,
      top: write`room.top - ${short}`,
      back: write`room.back`,
    };
    joints.push({ join: "back-panel", to, ...fasten });
    return;
  }
  entries["back-panel"] = {
    ...upright,
    left: write`left-side.right`,
    right: write`right-side.left`,
    bottom: bottom ? write`${bottom}.top` : write`room.bottom`,
    top: top ? write`${top}.bottom` : write`room.top`,
    back: back.in === "groove" ? write`room.back - ${inFrom(back, site)}` : write`room.back`,
    [CURE]: {
      deep:
        back.in === "groove"
          ? "make `in from the back` of the back {by} more"
          : "let the back in by a groove, `in: groove` with its `in from the back`, so that there is room behind it",
    },
  };
  const housing: Settings = {
    with: back.in,
    glue: "no",
    ...(back.deep && { deep: back.deep }),
    ...(back.play && { play: back.play }),
  };
  const { with: method, ...row } = fasten;
  const held: Settings = back.in === "rabbet" ? { side: "back", ...row, ...holding(method) } : {};
  joints.push({ join: "back-panel", to, ...housing, ...held });
}

/** The fastener of a joint of which the method is already said. */
const holding = (method: Settings[string]): Settings => {
  const word = typeof method === "string" ? method : "brads";
  return { [word.replace(/s$/, "")]: {} };
};
