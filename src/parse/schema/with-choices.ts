import type { Json, JsonSchema } from "../kinds/kind.ts";

/** Any value may be given per option of a choice. */
export const CHOSEN: JsonSchema = {
  type: "object",
  properties: { by: { type: "string", description: "The choice by whose options the value goes." } },
  required: ["by"],
};
const ref: JsonSchema = { $ref: "#/$defs/chosen" };
const when: JsonSchema = { type: "string", description: "Under which options this stands: wood is oak." };

/** A schema in which each value may also be given per option, and all settings may carry `when`. */
export function withChoices(schema: JsonSchema): JsonSchema {
  const { properties, patternProperties, ...rest } = mapped(schema);
  if (!isSchema(properties)) return rest;
  return {
    ...rest,
    properties: { ...eachChosen(properties), when },
    ...(isSchema(patternProperties) && { patternProperties: eachChosen(patternProperties) }),
  };
}

const isSchema = (value: Json | undefined): value is JsonSchema =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const eachChosen = (properties: JsonSchema): JsonSchema =>
  Object.fromEntries(
    Object.entries(properties).map(([name, property]) => {
      if (!isSchema(property)) return [name, property];
      const { description, ...value } = property;
      return [name, { ...(description !== undefined && { description }), anyOf: [value, ref] }];
    }),
  );

/** The same done to every schema inside. */
const mapped = (schema: JsonSchema): JsonSchema =>
  Object.fromEntries(
    Object.entries(schema).map(([key, value]) => [
      key,
      key === "properties" || key === "patternProperties" || key === "$defs"
        ? isSchema(value)
          ? Object.fromEntries(
              Object.entries(value).map(([name, each]) => [name, isSchema(each) ? withChoices(each) : each]),
            )
          : value
        : deep(value),
    ]),
  );
const deep = (value: Json): Json =>
  Array.isArray(value) ? value.map((each) => deep(each as Json)) : isSchema(value) ? withChoices(value) : value;
