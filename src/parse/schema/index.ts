import { ALL } from "../assemblies/index.ts";
import { openingJson } from "../assemblies/openings.ts";
import type { JsonSchema } from "../kinds/kind.ts";
import { part } from "./part.ts";
import { space } from "./piece.ts";
import { placing } from "./placing.ts";
import { plan } from "./plan.ts";
import { CHOSEN, withChoices } from "./with-choices.ts";

/** The JSON Schema of the plan language, for editors. It allows whatever the program reads, and knows nothing of formulas. */
export function jsonSchema(): JsonSchema {
  const { $defs, ...schema } = withChoices(language());
  return { ...schema, $defs: { ...($defs as JsonSchema), chosen: CHOSEN } };
}

/** The same without what holds for every value and all settings alike; without `places`, assemblies have only settings of their own. */
export const language = (places = true): JsonSchema => ({
  $schema: "http://json-schema.org/draft-07/schema#",
  title: "Boardwright plan",
  ...plan.json,
  $defs: {
    measure: { type: ["string", "number"], description: "A measure such as 34 1/2, or a formula.", maxLength: 500 },
    opening: openingJson,
    entry: {
      anyOf: [part.json, ...ALL.map((each) => assemblyJson(each, places)), withKind(space.json, "space"), own, group],
    },
  },
});

const group: JsonSchema = { type: "object", additionalProperties: { $ref: "#/$defs/entry" } };
/** An assembly of the plan's own takes what its parameters are called. */
const own: JsonSchema = { type: "object", properties: { kind: { type: "string" } }, required: ["kind"] };

const withKind = (json: JsonSchema, kind: string, makes?: string): JsonSchema => ({
  ...json,
  properties: { ...(json.properties as JsonSchema), kind: { const: kind, ...(makes && { description: makes }) } },
});

/** An assembly's own settings, and those of place. */
const assemblyJson = ({ kind, meaning, makes, settings }: (typeof ALL)[number], places: boolean): JsonSchema => {
  const words = places ? Object.entries(placing).map(([name, key]) => [name, key.kind.json]) : [];
  const json = settings.json as JsonSchema;
  const properties = { ...Object.fromEntries(words), ...(json.properties as JsonSchema) };
  return { ...withKind({ ...json, properties }, kind, makes), description: meaning };
};
