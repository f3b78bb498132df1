import type { Formula, SizeDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { named } from "../kinds/named.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { extent, formula, text } from "../kinds/simple.ts";

const ranged = (value: Kind<Formula>) =>
  settings("a size", {
    value: need(value, "The measure when nothing else is asked for."),
    from: may(formula, "The smallest that a reader may ask for."),
    to: may(formula, "The largest that a reader may ask for."),
    ask: may(text(300), "The question that a reader answers with this measure."),
  });

/** A measure of this kind, or one that a reader may change within a range. */
const sized = (kind: Kind<Formula>): Kind<SizeDraft> => {
  const short = made(kind, (value, node): SizeDraft => ({ at: node.at, value }));
  const long = made(ranged(kind), ({ said }, node, where): SizeDraft => {
    const { value, from, to, ask } = said;
    return {
      at: node.kind === "map" ? where.at : node.at,
      value: value.value,
      ...(from === undefined ? {} : { from: from.value }),
      ...(to === undefined ? {} : { to: to.value }),
      ...(ask === undefined ? {} : { ask }),
    };
  });

  return byForm({ text: short, map: long });
};

export const size = sized(formula);
const outer = sized(extent);

export const sizes = named(size, "size");

export const outside = settings("`outside`", {
  width: may(outer, "From side to side over everything but knobs and pulls.", "wide"),
  depth: may(outer, "From front to back, doors shut.", "deep"),
  height: may(outer, "From the floor to the top.", "high"),
});
