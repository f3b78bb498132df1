import type { SizeDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import { named } from "../kinds/named.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, text } from "../kinds/simple.ts";

const withRange = settings("a size", {
  value: need(formula, "The measure when nothing else is asked for."),
  from: may(formula, "The smallest that a reader may ask for."),
  to: may(formula, "The largest that a reader may ask for."),
  ask: may(text(300), "The question that a reader answers with this measure."),
});

const short = made(formula, (value, node): SizeDraft => ({ at: node.at, value }));
const long = made(withRange, ({ said }, node, where): SizeDraft => {
  const { value, from, to, ask } = said;
  return {
    at: node.kind === "map" ? where.at : node.at,
    value: value.value,
    ...(from === undefined ? {} : { from: from.value }),
    ...(to === undefined ? {} : { to: to.value }),
    ...(ask === undefined ? {} : { ask }),
  };
});

/** A measure, or one that a reader may change within a range. */
export const size = byForm({ text: short, map: long });

export const sizes = named(size, "size");

export const outside = settings("`outside`", {
  width: may(size, "From side to side over everything but knobs and pulls.", "wide"),
  depth: may(size, "From front to back, doors shut.", "deep"),
  height: may(size, "From the floor to the top.", "high"),
});
