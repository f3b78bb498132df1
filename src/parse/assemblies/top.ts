import type { Face } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import { asOfPart, joinWords, kept, measure, stockName } from "../kinds/kept.ts";
import { axis } from "../kinds/places.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";

const sides = settings("an overhang", {
  "each end": may(measure, "Beyond what carries it, at the left and at the right.", "ends"),
  "each side": may(measure, "The same at all four sides.", "all round"),
  left: may(measure, "At the left only."),
  right: may(measure, "At the right only."),
  front: may(measure, "At the front."),
  back: may(measure, "At the back."),
});

export type Overhang = Partial<Record<"left" | "right" | "front" | "back", TextNode>>;

/** One measure for all four sides, or each side by its name. */
export const overhang = byForm({
  text: made(measure, (all): Overhang => ({ left: all, right: all, front: all, back: all })),
  map: made(sides, ({ said }): Overhang => {
    const all = said["each side"]?.value;
    const ends = said["each end"]?.value ?? all;
    const own = (side: "left" | "right" | "front" | "back", usual: TextNode | undefined) => {
      const value = said[side]?.value ?? usual;
      return value ? { [side]: value } : {};
    };
    return { ...own("left", ends), ...own("right", ends), ...own("front", all), ...own("back", all) };
  }),
});

const own = settings("a top", {
  "made of": need(stockName, "Its stock."),
  boards: may(asOfPart, "How many boards it is glued up from."),
  layers: may(asOfPart, "How many layers of sheet it is built up from."),
  grain: may(kept(axis), "The direction of its grain: across if nothing is said."),
  overhang: may(overhang, "How far it reaches beyond what carries it: on all sides, or by side."),
  edges: may(asOfPart, "How its upper edges are worked: chamfer 1/8, round-over 1/4."),
  "corner radius": may(
    asOfPart,
    "Corners that are rounded: { at: [left front, right front, left back, right back], radius: 9 }, which makes a top of 18 by 18 round.",
  ),
  fasten: may(joinWords, "What holds it down: a method that lets solid wood move."),
  to: may(text(100), "What it is fastened to, if not to what is under it."),
  called: may(text(60), "The name that the plan prints."),
});

/** A panel, a built-up panel or an edge-glued slab over something. */
export const top = assembly({
  kind: "top",
  also: [],
  meaning: "A panel, a built-up panel or a glued slab that lies over something.",
  makes: "Its part is `slab`; its space `footprint` is what lies under it, without the overhang.",
  settings: own,
  flat: true,
  footprint: true,
  expand: (said: Fields<typeof own.keys>, site: Site): Expanded => {
    const { write } = site;
    const over = said.overhang?.value ?? {};
    const beyond = (face: Face, from: TextNode): TextNode => {
      const by = over[face as keyof Overhang];
      if (!by) return from;
      return face === "left" || face === "front" ? write`${from.text} - ${by}` : write`${from.text} + ${by}`;
    };
    const within = (face: keyof Overhang): TextNode => {
      const by = over[face];
      if (!by) return write`slab.${face}`;
      return face === "left" || face === "front" ? write`slab.${face} + ${by}` : write`slab.${face} - ${by}`;
    };
    const slab = {
      "made of": said["made of"].value,
      ...(said.called && { called: said.called.value }),
      as: "lying flat",
      grain: said.grain?.value ?? "across",
      ...site.placed("up"),
      ...site.placed("across", beyond),
      ...site.placed("deep", beyond),
      boards: said.boards?.value,
      layers: said.layers?.value,
      edges: said.edges?.value,
      "corner radius": said["corner radius"]?.value,
    };
    const footprint = {
      kind: "space",
      left: within("left"),
      right: within("right"),
      front: within("front"),
      back: within("back"),
      bottom: write`slab.bottom`,
      top: write`slab.top`,
    };
    const to = said.to ? [said.to.value] : (site.on?.bearers ?? []);
    const joints =
      said.fasten && to.length > 0 ? [{ join: "slab", to: to.length === 1 ? to[0] : to, ...said.fasten.value }] : [];
    return { entries: { slab, footprint }, joints };
  },
});
