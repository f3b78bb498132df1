import type { Finding } from "../../../findings/finding.ts";
import { unknownHardware } from "../../../findings/rules/unknown-hardware.ts";
import type { Located } from "../../../findings/span.ts";
import { nearest } from "../../../findings/suggest.ts";
import type { Formula, HardwareDraft, HardwareValue, Units } from "../../../parse/draft.ts";
import { HARDWARE, type HardwareField, type HardwareKind, hardwareKind } from "../../../parse/hardware/index.ts";
import type { Length } from "../../../units/length.ts";
import { readLength } from "../../../units/read-measure.ts";
import type { Item } from "../../design.ts";

export interface ItemsContext {
  readonly units: Units;
  readonly hardware: ReadonlyMap<string, HardwareDraft>;
  readonly measure: (formula: Formula) => Length | null;
  readonly report: (finding: Finding) => void;
  /** For the plan: true fractions, with their unit. */
  readonly printItem: (length: Length) => string;
}

/** Finds hardware by the name that the plan gives it, or by its kind. */
export interface Items {
  /** The named one, which must be of one of these kinds where some are given; else the usual one of the first kind. Null where that was told. */
  find(named: Located<string> | undefined, kinds: readonly string[]): Item | null;
}

export function createItems(context: ItemsContext): Items {
  const known = new Map<string, Item | null>();
  const made = (key: string, make: () => Item | null): Item | null => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const item = make();
    known.set(key, item);
    return item;
  };
  const usual = (kind: HardwareKind): Item | null => made(`kind ${kind.kind}`, () => itemOf(kind, null, context));
  return {
    find(named, kinds) {
      if (named === undefined) {
        const kind = hardwareKind(kinds[0] ?? "");
        if (kind === undefined) throw new Error(`there is no kind of hardware ${kinds[0]}`);
        return usual(kind);
      }
      const draft = context.hardware.get(named.value);
      const kind = hardwareKind(draft?.kind ?? named.value);
      if (kind === undefined || (kinds.length > 0 && !kinds.includes(kind.kind))) {
        const fits = [...context.hardware.values()].filter((each) => kinds.length === 0 || kinds.includes(each.kind));
        const names = [...fits.map(({ name }) => name), ...(kinds.length > 0 ? kinds : HARDWARE.map((k) => k.kind))];
        const near = nearest(named.value, names);
        context.report(unknownHardware(named.at, { name: named.value, kind: kind?.kind ?? null, known: names, near }));
        return null;
      }
      return draft ? made(`name ${draft.name}`, () => itemOf(kind, draft, context)) : usual(kind);
    },
  };
}

/** The item with the measures that the plan gives, and the usual ones for the rest. Null where one of them could not be worked out. */
function itemOf(kind: HardwareKind, draft: HardwareDraft | null, context: ItemsContext): Item | null {
  const measures = new Map<string, Length>();
  const ranges = new Map<string, { low: Length; high: Length }>();
  const lists = new Map<string, readonly Length[]>();
  const numbers = new Map<string, number>();
  const words = new Map<string, string>();
  let complete = true;
  const length = (formula: Formula, take: (value: Length) => void): void => {
    const value = context.measure(formula);
    if (value === null) complete = false;
    else take(value);
  };
  for (const [name, field] of Object.entries(kind.fields)) {
    const value: HardwareValue | undefined = draft?.values.get(name);
    if (value === undefined) takeUsual(name, field, context.units, { measures, ranges, lists, numbers, words });
    else if (value.is === "measure") length(value.value, (each) => measures.set(name, each));
    else if (value.is === "number") numbers.set(name, value.value);
    else if (value.is === "word") words.set(name, value.value);
    else if (value.is === "range")
      length(value.low, (low) => length(value.high, (high) => ranges.set(name, { low, high })));
    else {
      const all: Length[] = [];
      for (const each of value.values) length(each, (one) => all.push(one));
      lists.set(name, all);
    }
  }
  if (!complete) return null;
  const print = context.printItem;
  const decides = Object.entries(kind.fields).flatMap(([name, { decides: asked, is, unit = "" }]) => {
    const range = ranges.get(name);
    const one = measures.get(name);
    const value = one
      ? print(one)
      : range
        ? `${print(range.low)} to ${print(range.high)}`
        : numbersOf(name, is === "mass", unit);
    const decides = asked === true || (asked === "said" && draft?.values.has(name));
    return decides && value !== null ? [{ name, value }] : [];
  });
  function numbersOf(name: string, mass: boolean, unit: string): string | null {
    const number = numbers.get(name);
    if (mass && number !== undefined) return massText(number, context.units);
    return number === undefined ? (words.get(name) ?? null) : `${Math.round(number * 10) / 10}${unit}`;
  }
  return {
    name: draft?.name ?? kind.kind,
    kind: kind.kind,
    label: draft?.called?.value ?? labelOf(kind, decides),
    ...{ measures, ranges, lists, numbers, words, decides },
    said: new Set(draft?.values.keys()),
    price: draft?.price?.value ?? null,
  };
}

/** kg as a shop prints it: "99 lb". */
const massText = (kg: number, units: Units): string =>
  units === "inch" ? `${Math.round(kg * 2.20462)} lb` : `${Math.round(kg)} kg`;

/** "knob 1 1/4 in across, screw 1 in" */
function labelOf({ kind, fields }: HardwareKind, decides: Item["decides"]): string {
  const words = decides.map(({ name, value }) => ({ value, told: fields[name]?.told ?? `${name} #` }));
  const [first, ...rest] = words.map(({ value, told }) => told.replace("#", () => value));
  const near = words[0]?.told.startsWith("#") ? " " : ", ";
  return first === undefined ? kind : [`${kind}${near}${first}`, ...rest].join(", ");
}

type Maps = {
  readonly measures: Map<string, Length>;
  readonly ranges: Map<string, { low: Length; high: Length }>;
  readonly lists: Map<string, readonly Length[]>;
  readonly numbers: Map<string, number>;
  readonly words: Map<string, string>;
};

function takeUsual(name: string, field: HardwareField, units: Units, maps: Maps): void {
  const text = field[units];
  if (text === undefined) return;
  const one = (each: string): Length => {
    const value = readLength(each, units);
    if (value === undefined) throw new Error(`${each} is no measure`);
    return value;
  };
  if (field.is === "measure") maps.measures.set(name, one(text));
  else if (field.is === "range") {
    const [low, high] = text.split(" to ");
    maps.ranges.set(name, { low: one(low ?? ""), high: one(high ?? "") });
  } else if (field.is === "measures") maps.lists.set(name, text.split(", ").map(one));
  else if (field.is === "word") maps.words.set(name, text);
  else maps.numbers.set(name, Number(text));
}

/** The item with another measure, told as it then is. */
export function withMeasure(item: Item, name: string, value: Length, print: (length: Length) => string): Item {
  const kind = hardwareKind(item.kind);
  const decides = item.decides.map((each) => (each.name === name ? { name, value: print(value) } : each));
  const usual = kind !== undefined && item.label === labelOf(kind, item.decides);
  const measures = new Map([...item.measures, [name, value] as const]);
  return { ...item, measures, decides, label: usual ? labelOf(kind, decides) : item.label };
}

/** A measure that every item of its kind has. Throws where the kind has none of that name and no usual value. */
export function measureOf(item: Item, name: string): Length {
  const value = item.measures.get(name);
  if (value === undefined) throw new Error(`a ${item.kind} has no measure ${name}`);
  return value;
}
export function numberOf(item: Item, name: string): number {
  const value = item.numbers.get(name);
  if (value === undefined) throw new Error(`a ${item.kind} has no number ${name}`);
  return value;
}
export function rangeOf(item: Item, name: string): { readonly low: Length; readonly high: Length } {
  const value = item.ranges.get(name);
  if (value === undefined) throw new Error(`a ${item.kind} has no range ${name}`);
  return value;
}
