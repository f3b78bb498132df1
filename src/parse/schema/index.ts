import type { JsonSchema } from "../kinds/kind.ts";
import { entryJson } from "./piece.ts";
import { plan } from "./plan.ts";

/** The JSON Schema of the plan language, for editors. It allows whatever the program reads, and knows nothing of formulas. */
export const jsonSchema = (): JsonSchema => ({
  $schema: "http://json-schema.org/draft-07/schema#",
  title: "Boardwright plan",
  ...plan.json,
  $defs: {
    measure: { type: ["string", "number"], description: "A measure such as 34 1/2, or a formula.", maxLength: 500 },
    entry: entryJson,
  },
});
