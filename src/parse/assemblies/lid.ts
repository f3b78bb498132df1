import type { Face } from "../draft.ts";
import { from, type Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { asOfPart, joinWords, kept, measure, partName, sizeOf, stockName } from "../kinds/kept.ts";
import { axis } from "../kinds/places.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { text, word } from "../kinds/simple.ts";
import type { Node, TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { type Overhang, overhang } from "./top.ts";

const battenSettings = settings("the battens of a lid", {
  "made of": may(stockName, "Their stock, if it is another than that of the lid."),
  count: may(measure, "How many there are: two if nothing is said."),
  wide: may(
    sizeOf,
    "How wide they are: 2 1/2 in or 65 mm of the wood of the lid; a stock of their own may say it.",
    "width",
  ),
  in: may(measure, "How far their ends stay inside of what carries the lid: 1 1/2 in or 40 mm if nothing is said."),
  fasten: may(joinWords, "What holds them: slotted screws, so that the lid can move, if nothing is said."),
});

const supportSettings = settings("the support of a lid", {
  fit: may(partName, "Which of the plan's hardware it is, or its kind: lid support if nothing is said."),
  down: may(
    measure,
    "How far its upper end is below the lid: against it, or as high as its screws find wood, if nothing is said.",
  ),
  "from the back": may(
    measure,
    "How far its middle is from the back of the side: 3 in or 75 mm if nothing is said. Near the hinge its arm is short.",
  ),
});
type SupportSaid = Partial<Fields<typeof supportSettings.keys>>;

const own = settings("a lid", {
  "made of": need(stockName, "Its stock."),
  form: may(
    word(["panel", "frame and panel", "slab with battens"]),
    "A panel if nothing is said; a frame with a panel in it; or a glued slab with battens under it that keep it flat.",
  ),
  "panel of": may(stockName, "The stock of the panel in a frame."),
  wide: may(sizeOf, "How wide the members of a frame are, where their stock does not say it.", "width"),
  boards: may(asOfPart, "How many boards a slab is glued up from."),
  battens: may(battenSettings, "The battens of a slab."),
  grain: may(kept(axis), "The direction of its grain: across if nothing is said."),
  overhang: may(overhang, "How far it reaches beyond what carries it: on all sides, or by side."),
  edges: may(asOfPart, "How its upper edges are worked, but for that on which it hangs: chamfer 1/8, round-over 1/4."),
  "air gap": may(measure, "How far above what carries it it lies when it is shut."),
  bumpers: may(text(100), "The bumpers that it lies on in front, where there is an air gap: a name of `hardware`."),
  hinge: may(joinWords, "How it hangs at the back: butt hinges if nothing is said; continuous hinge; loose."),
  "hinged to": need(text(100), "The wall or rail at its back on which it hangs."),
  support: may(
    byForm({
      text: made(partName, (name): SupportSaid => ({ fit: { value: name, at: name.at, key: name.at } })),
      map: made(supportSettings, ({ said }): SupportSaid => said),
    }),
    "What keeps it from falling: a name of `hardware` or lid support, or settings that say where it is as well.",
  ),
  "supported from": may(text(100), "The side of the chest that the support is fixed to."),
  called: may(text(60), "The name that the plan prints."),
});
type Said = Fields<typeof own.keys>;

/** What closes a chest from above. */
export const lid = assembly({
  kind: "chest-lid",
  also: [],
  meaning: "A panel, a frame with a panel or a slab with battens over a chest, hinged at its back.",
  makes:
    "Its parts are `slab` and `batten.1`, or the frame `frame`; its space `footprint` is what lies under it, without the overhang.",
  settings: own,
  flat: true,
  footprint: true,
  expand: (said: Said, site: Site): Expanded => {
    const form = said.form?.value ?? "panel";
    const framed = form === "frame and panel";
    const body = framed ? "frame" : "slab";
    const entries: Record<string, Settings> = {
      [body]: { ...(framed ? frameOf(said) : slabOf(said)), ...places(said, site) },
      footprint: footprint(body, said, site),
    };
    const [hung, side] = framed ? ["frame.back-rail", "frame.left-stile"] : ["slab", "slab"];
    const joints: Settings[] = [
      from((said.hinge ?? said["hinged to"]).key, {
        ...{ join: hung, to: said["hinged to"].value },
        ...(said.hinge?.value ?? { with: "butt hinges", opens: "top" }),
      }),
    ];
    if (form === "slab with battens") joints.push(from(said.battens?.key, addBattens(entries, said, site)));
    return {
      entries,
      joints,
      fittings: [...supportOf(said, side, body, site), ...bumpersOf(said, framed, body, site)],
    };
  },
});

const slabOf = (said: Said): Settings => ({
  "made of": said["made of"].value,
  ...(said.called && { called: said.called.value }),
  as: "lying flat",
  grain: said.grain?.value ?? "across",
  ...(said.boards && { boards: said.boards.value }),
  // Hinges lie flush in a square edge.
  ...(said.edges && { edges: freeEdges(said.edges.value) }),
});
const freeEdges = (edges: Node): Node =>
  edges.kind === "text" && !/\sexcept\s/i.test(edges.text) ? { ...edges, text: `${edges.text} except back` } : edges;
const frameOf = (said: Said): Settings => ({
  kind: "frame",
  as: "lying flat",
  "made of": said["made of"].value,
  ...(said.wide && { wide: said.wide.value }),
  ...(said["panel of"] && { panel: said["panel of"].value }),
});

const isLow = (face: Face): boolean => face === "left" || face === "front" || face === "bottom";

function places(said: Said, site: Site): Settings {
  const over: Overhang = said.overhang?.value ?? {};
  const gap = said["air gap"]?.value;
  const moved = (face: Face, from: TextNode, by: TextNode | undefined): TextNode =>
    by === undefined ? from : isLow(face) ? site.write`${from.text} - ${by}` : site.write`${from.text} + ${by}`;
  const beyond = (face: Face, from: TextNode): TextNode => moved(face, from, over[face as keyof Overhang]);
  const { on, ...up } = site.placed("up");
  const below = site.on?.path;
  // Where it lies on something it is that much higher; where it gives what is under it its height, its footprint is that much lower.
  const raised = on && gap && below ? { bottom: site.write`${below}.top + ${gap}` } : on ? { on } : {};
  return { ...up, ...raised, ...site.placed("across", beyond), ...site.placed("deep", beyond) };
}

/** What carries it, seen from above. */
function footprint(body: string, said: Said, { write }: Site): Settings {
  const over: Overhang = said.overhang?.value ?? {};
  const within = (face: keyof Overhang): TextNode => {
    const by = over[face];
    if (!by) return write`${body}.${face}`;
    return isLow(face) ? write`${body}.${face} + ${by}` : write`${body}.${face} - ${by}`;
  };
  const sides = { left: within("left"), right: within("right"), front: within("front"), back: within("back") };
  const gap = said["air gap"]?.value;
  return {
    kind: "space",
    ...sides,
    bottom: gap ? write`${body}.bottom - ${gap}` : write`${body}.bottom`,
    top: write`${body}.top`,
  };
}

/** Battens across the boards, inside of the chest. */
function addBattens(entries: Record<string, Settings>, said: Said, { usual, write }: Site): Settings {
  const own = said.battens?.value.said;
  const grain = said.grain?.value;
  const along = grain?.kind === "text" && grain.text === "deep" ? "across" : "deep";
  const [low, high, over, begin, end] =
    along === "deep" ? ["front", "back", "across", "left", "right"] : ["left", "right", "deep", "front", "back"];
  const inside = own?.in?.value ?? usual("1 1/2", "40");
  entries.batten = from(said.battens?.key, {
    "made of": own?.["made of"]?.value ?? said["made of"].value,
    as: "lying flat",
    grain: along,
    // A stock of their own may be sold in one width.
    [over]: own?.wide?.value ?? (own?.["made of"] ? undefined : usual("2 1/2", "65")),
    [low]: write`footprint.${low} + ${inside}`,
    [high]: write`footprint.${high} - ${inside}`,
    top: "slab.bottom",
    count: own?.count?.value ?? "2",
    spread: `${over} between footprint.${begin} and footprint.${end}`,
    gaps: "both ends",
  });
  return { join: "batten", to: "slab", ...(own?.fasten?.value ?? { with: "slotted screws" }) };
}

function supportOf(
  { support, "supported from": side }: Said,
  lidPart: string,
  body: string,
  { item, usual, write }: Site,
): readonly Settings[] {
  if (!side) return [];
  const { fit, down, "from the back": off } = support?.value ?? {};
  const high = item(fit?.value, "lid support").measure("high");
  return [
    from((support ?? side).key, {
      ...{ fit: fit?.value ?? "lid support", to: side.value, against: lidPart },
      deep: write`${side.value}.back - ${off?.value ?? usual("3", "75")}`,
      ...(down && high && { up: write`${body}.bottom - ${down.value} - ${high} / 2` }),
    }),
  ];
}

/** Under its front corners, where it would come down on the walls. */
function bumpersOf(said: Said, framed: boolean, body: string, { usual, write }: Site): readonly Settings[] {
  const named = said.bumpers?.value;
  if (!named) return [];
  const inside = usual("3/8", "10");
  return (["left", "right"] as const).map((face) => ({
    fit: named,
    // The stiles of a frame run through to its front.
    to: framed ? `frame.${face}-stile` : body,
    face: "bottom",
    across: face === "left" ? write`footprint.left + ${inside}` : write`footprint.right - ${inside}`,
    deep: write`footprint.front + ${inside}`,
  }));
}
