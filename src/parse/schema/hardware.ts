import { missingKey } from "../../findings/rules/missing-key.ts";
import { unknownHardwareKind } from "../../findings/rules/unknown-hardware-kind.ts";
import { nearest } from "../../findings/suggest.ts";
import type { HardwareDraft, HardwareValue } from "../draft.ts";
import { HARDWARE, type HardwareField, type HardwareKind, hardwareKind } from "../hardware/index.ts";
import { list, made } from "../kinds/combine.ts";
import { type Kind, tell, tellWrong } from "../kinds/kind.ts";
import { named } from "../kinds/named.ts";
import { range } from "../kinds/places.ts";
import { mass } from "../kinds/quantities.ts";
import { type Field, type Key, may, settings } from "../kinds/settings.ts";
import { formula, plainNumber, text, word } from "../kinds/simple.ts";
import { squash } from "../names.ts";
import { settingOf } from "../yaml/nodes.ts";

const common = {
  called: may(text(100), "What the plan calls it, if not by its kind."),
  price: may(plainNumber, "The price of one, or of one pair where it is sold in pairs."),
};

function fieldKind({ is, words = [] }: HardwareField): Kind<HardwareValue> {
  switch (is) {
    case "measure":
      return made(formula, (value) => ({ is: "measure", value }));
    case "range":
      return made(range, ({ low, high }) => ({ is: "range", low, high }));
    case "measures":
      return made(list(formula, "a list of lengths"), (values) => ({ is: "measures", values }));
    case "number":
      return made(plainNumber, (value) => ({ is: "number", value }));
    case "mass":
      return made(mass, (value) => ({ is: "number", value }));
    case "word":
      return made(word(words), (value) => ({ is: "word", value }));
  }
}

const settingsOf = ({ kind, fields }: HardwareKind) => {
  const own: [string, Key<HardwareValue, false>][] = Object.entries(fields).map(([name, field]) => [
    name,
    may(fieldKind(field), field.meaning, ...(field.also ?? [])),
  ]);
  return settings(`a ${kind}`, { ...common, ...Object.fromEntries(own) });
};

/** The settings of each kind, for the reference as well. */
export const ITEMS = HARDWARE.map((each) => ({ ...each, settings: settingsOf(each) }));

const item: Kind<Omit<HardwareDraft, "name" | "at">> = {
  words: "settings of a piece of hardware (kind, and its measures)",
  json: {
    type: "object",
    required: ["kind"],
    anyOf: ITEMS.map(({ kind, meaning, settings: { json } }) => ({
      ...json,
      description: meaning,
      properties: { kind: { const: kind }, ...(json.properties as object) },
    })),
  },
  inside: ITEMS.flatMap((each) => each.settings.inside ?? []),
  read(node, where) {
    if (node.kind !== "map") return tellWrong(where, node, this.words);
    const entry = settingOf(node, "kind");
    if (entry === undefined || entry.value.kind !== "text")
      return tell(where, node, missingKey(where.at, { what: "a piece of hardware", key: "kind" }));
    const found = hardwareKind(entry.value.text);
    const known = HARDWARE.map(({ kind }) => kind);
    if (found === undefined) {
      const near = nearest(entry.value.text, known);
      return tell(
        where,
        entry.value,
        unknownHardwareKind(entry.value.at, { kind: entry.value.text, near, known: [...known].sort() }),
      );
    }
    const own = ITEMS.find(({ kind }) => kind === found.kind);
    const rest = node.entries.filter(({ key }) => squash(key.text) !== "kind");
    const read = own?.settings.read({ ...node, entries: rest }, where);
    if (read === undefined) return undefined;
    const { called, price, ...said } = read.said;
    const values = Object.entries(said as Readonly<Record<string, Field<HardwareValue>>>).map(
      ([name, field]) => [name, { ...field.value, at: field.at }] as const,
    );
    return {
      kind: found.kind,
      ...(called && { called }),
      ...(price && { price }),
      values: new Map(values),
    };
  },
};

/** Hardware by names of the plan's own. */
export const hardware: Kind<readonly HardwareDraft[]> = made(named(item, "piece of hardware"), (entries) =>
  entries.map(({ name, at, value }) => ({ name, at, ...value })),
);
