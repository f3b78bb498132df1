/** What the pages in `docs` are made from. */
export { examplesOf } from "../../src/cli/excerpt.ts";
export { catalogue } from "../../src/findings/catalogue.ts";
export { jsonSchema, language } from "../../src/parse/schema/index.ts";
export { workshopSchema } from "../../src/parse/schema/workshop.ts";
export { recordSchema } from "../../src/render/write/record-schema.ts";
