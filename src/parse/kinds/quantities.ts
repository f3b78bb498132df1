import { toNumber } from "../../units/rational.ts";
import { scanNumber } from "../../units/scan-number.ts";
import { type Kind, tellWrong } from "./kind.ts";

/** A number and the unit behind it, or undefined. */
function amount(text: string): { value: number; rest: string } | undefined {
  const plain = text.trim();
  const negative = plain.startsWith("-");
  const digits = negative ? plain.slice(1).trimStart() : plain;
  const number = digits.length > 40 ? undefined : scanNumber(digits, 0);
  if (number === undefined || number === "zero") return undefined;
  const value = toNumber(number.value);
  return { value: negative ? -value : value, rest: digits.slice(number.end).trim() };
}

const quantity = <T>(words: string, make: (text: string) => T | undefined): Kind<T> => ({
  words,
  json: { type: ["string", "number"] },
  read(node, where) {
    const value = node.kind === "text" ? make(node.text) : undefined;
    return value ?? tellWrong(where, node, words);
  },
});

const share = (text: string): number | undefined => {
  const found = amount(text);
  if (found === undefined || !["", "%", "percent"].includes(found.rest.toLowerCase())) return undefined;
  return found.value >= 0 && found.value <= 100 ? found.value : undefined;
};

/** `19 %`: 19. */
export const percent: Kind<number> = quantity("a percentage, such as 19 %", share);

export interface PercentRange {
  readonly low: number;
  readonly high: number;
}
/** `30 to 60 %`. */
export const percentRange: Kind<PercentRange> = quantity("two percentages, such as 30 to 60 %", (text) => {
  const [first, second, ...more] = text.split(/\s+(?:to|and)\s+/i);
  const [low, high] = [share(first ?? ""), share(second ?? "")];
  return low === undefined || high === undefined || more.length > 0 || low > high ? undefined : { low, high };
});

/** `20 C`, `68 F`, `20 °C`: degrees Celsius. */
export const temperature: Kind<number> = quantity("a temperature, such as 20 C or 68 F", (text) => {
  const found = amount(text);
  const scale = /^(?:°|deg(?:rees?)?)?\s*([CF])$/i.exec(found?.rest ?? "")?.[1]?.toUpperCase();
  if (found === undefined || scale === undefined) return undefined;
  const celsius = scale === "C" ? found.value : ((found.value - 32) * 5) / 9;
  return celsius >= -20 && celsius <= 60 ? celsius : undefined;
});

/** US gallon: 231 cubic inches of 25.4 mm. */
const LITRES_PER_GALLON = (231 * 25.4 * 25.4 * 25.4) / 1e6;
/** Square foot: 304.8 mm squared. */
const METRES_PER_SQUARE_FOOT = (304.8 * 304.8) / 1e6;
const AREAS: ReadonlyMap<string, number> = new Map([
  ...["m2", "m²", "sq m", "square metres", "square meters"].map((word) => [word, 1] as const),
  ...["sq ft", "ft2", "ft²", "square feet"].map((word) => [word, METRES_PER_SQUARE_FOOT] as const),
]);
const VOLUMES: ReadonlyMap<string, number> = new Map([
  ...["l", "litre", "liter"].map((word) => [word, 1] as const),
  ...["gallon", "gal"].map((word) => [word, LITRES_PER_GALLON] as const),
  ["quart", LITRES_PER_GALLON / 4],
  ["pint", LITRES_PER_GALLON / 8],
]);

/** `12 m2 per litre`, `400 sq ft per gallon`: m² a litre, from 0.1 to 200. */
export const coverage: Kind<number> = quantity(
  "a coverage, such as 12 m2 per litre or 400 sq ft per gallon",
  (text) => {
    const found = amount(text);
    const [area = "", volume = "", ...more] = (found?.rest ?? "").toLowerCase().split(/\s*(?:\/|\bper\b|\ba\b)\s*/);
    const [square, litres] = [AREAS.get(area.trim().replace(/\s+/g, " ")), VOLUMES.get(volume.trim())];
    if (found === undefined || square === undefined || litres === undefined || more.length > 0) return undefined;
    const covers = (found.value * square) / litres;
    return covers >= 0.1 && covers <= 200 ? covers : undefined;
  },
);

/** A pound is 0.45359237 kg exactly (international yard and pound agreement, 1959). */
export const KILOGRAMS_PER_POUND = 0.45359237;
const MASSES: ReadonlyMap<string, number> = new Map([
  ...["kg", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"].map((word) => [word, 1] as const),
  ...["lb", "lbs", "pound", "pounds"].map((word) => [word, KILOGRAMS_PER_POUND] as const),
]);

/** `40 lb`, `6 kg each`: kilograms, above zero and no more than 10 t. */
export const mass: Kind<number> = quantity("a mass, such as 40 lb or 6 kg", (text) => {
  const found = amount(text);
  const one = MASSES.get((found?.rest ?? "").toLowerCase().replace(/\s+each$/, ""));
  if (found === undefined || one === undefined) return undefined;
  const kilograms = found.value * one;
  return kilograms > 0 && kilograms <= 10_000 ? kilograms : undefined;
});

const MINUTES: ReadonlyMap<string, number> = new Map([
  ...["min", "minute", "minutes"].map((word) => [word, 1] as const),
  ...["h", "hour", "hours"].map((word) => [word, 60] as const),
  ...["day", "days"].map((word) => [word, 24 * 60] as const),
]);

/** `12 h`, `45 min`, `2 days`: minutes, up to 60 days. */
export const duration: Kind<number> = quantity("a time, such as 12 h, 45 min or 2 days", (text) => {
  const found = amount(text);
  const unit = MINUTES.get(found?.rest.toLowerCase() ?? "");
  if (found === undefined || unit === undefined) return undefined;
  const minutes = Math.round(found.value * unit);
  return minutes >= 0 && minutes <= 60 * 24 * 60 ? minutes : undefined;
});
