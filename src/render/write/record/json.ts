/** JSON text that a person can read: what fits on a line stands on one, keys keep their order. */
import { millionths, printMillionths } from "./number.ts";

/** A `bigint` counts millionths; a `number` is rounded to them. A Map is an object whose keys come from the source. */
export type Json =
  | null
  | boolean
  | string
  | number
  | bigint
  | readonly Json[]
  | ReadonlyMap<string, Json>
  | { readonly [key: string]: Json };

const WIDTH = 120;

/** The value as JSON, ending with a newline. Throws a RangeError at a number that is not finite. */
export const printJson = (value: Json): string => `${print(value, "", 0)}\n`;

/** `used`: how much of the line stands before the value. */
function print(value: Json, indent: string, used: number): string {
  const inner = `${indent}  `;
  if (typeof value !== "object" || value === null) return leaf(value);
  const short = onOneLine(value);
  if (used + short.length < WIDTH) return short;
  if (isList(value)) return `[\n${value.map((v) => inner + print(v, inner, inner.length)).join(",\n")}\n${indent}]`;
  const fields = entries(value).map(([key, v]) => {
    const name = `${inner}${JSON.stringify(key)}: `;
    return name + print(v, inner, name.length);
  });
  return `{\n${fields.join(",\n")}\n${indent}}`;
}

function onOneLine(value: Json): string {
  if (typeof value !== "object" || value === null) return leaf(value);
  if (isList(value)) return `[${value.map(onOneLine).join(", ")}]`;
  const fields = entries(value).map(([key, v]) => `${JSON.stringify(key)}: ${onOneLine(v)}`);
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}

function leaf(value: null | boolean | string | number | bigint): string {
  if (typeof value === "bigint") return printMillionths(value);
  return typeof value === "number" ? printMillionths(millionths(value)) : JSON.stringify(value);
}

const isList = (value: object): value is readonly Json[] => Array.isArray(value);
const entries = (value: ReadonlyMap<string, Json> | { readonly [key: string]: Json }): readonly [string, Json][] =>
  value instanceof Map ? [...value] : Object.entries(value);
