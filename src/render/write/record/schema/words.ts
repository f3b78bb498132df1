/** The words in which the record's JSON Schema (draft 2020-12) is written. */
export type Schema = { readonly [key: string]: unknown };

export const text: Schema = { type: "string" };
export const flag: Schema = { type: "boolean" };
export const number: Schema = { type: "number" };
/** A length, an area, minutes: zero or more. */
export const size: Schema = { type: "number", minimum: 0 };
export const count: Schema = { type: "integer", minimum: 0 };

const numbers = (n: number): Schema => ({ type: "array", items: number, minItems: n, maxItems: n });
/** x across, y deep, z up; millimetres. */
export const point = numbers(3);
/** A direction of length 1. */
export const unitVector: Schema = {
  type: "array",
  items: { type: "number", minimum: -1, maximum: 1 },
  minItems: 3,
  maxItems: 3,
};
/** x over the board's width, y along its length; millimetres. */
export const point2 = numbers(2);

export const oneOf = (...words: readonly string[]): Schema => ({ enum: words });
export const list = (items: Schema): Schema => ({ type: "array", items });
export const texts = list(text);
export const either = (...schemas: readonly Schema[]): Schema => ({ anyOf: schemas });
export const orNull = (schema: Schema): Schema => either(schema, { type: "null" });
export const about = (description: string, schema: Schema): Schema => ({ ...schema, description });

/** An object with all of these fields, and perhaps others. */
export const fields = (properties: { readonly [name: string]: Schema }): Schema => ({
  type: "object",
  properties,
  required: Object.keys(properties),
});
/** An object whose keys are names in the plan. */
export const byName = (schema: Schema): Schema => ({ type: "object", additionalProperties: schema });

/** The same schema without room for other fields. */
export function closed(schema: Schema): Schema {
  const inner = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(inner);
    return typeof value === "object" && value !== null ? closed(value as Schema) : value;
  };
  const copy = Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, inner(value)]));
  return "required" in schema ? { ...copy, additionalProperties: false } : copy;
}
