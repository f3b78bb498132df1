// npm run generate: everything in the project that is made from something else.
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./bundle.mjs";
import { findings } from "./docs/findings.mjs";
import { reference } from "./docs/reference.mjs";
import { load } from "./load.mjs";

const biome = "node_modules/@biomejs/biome/bin/biome";
for (const args of [
  ["scripts/catalogue.mjs"],
  ["scripts/fonts.mjs"],
  [biome, "format", "--write", "src/findings/catalogue.ts", "src/render/typeset/metrics"],
]) {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: ["ignore", "ignore", "inherit"] });
  if (status !== 0) process.exit(1);
}

const { catalogue, examplesOf, jsonSchema, language, recordSchema, workshopSchema } =
  await load("scripts/docs/sources.ts");
const preface = readFileSync(join(root, "scripts/docs/preface.md"), "utf8");
const workshop = readFileSync(join(root, "scripts/docs/workshop.md"), "utf8");
const json = (value) => `${JSON.stringify(value, null, 2)}\n`;

mkdirSync(join(root, "docs/schema"), { recursive: true });
for (const [path, text] of [
  ["docs/reference.md", reference(language(false), preface)],
  ["docs/workshop.md", reference(workshopSchema(), workshop, "The workshop")],
  ["docs/findings.md", findings(catalogue, examplesOf)],
  ["docs/schema/plan.schema.json", json(jsonSchema())],
  ["docs/schema/workshop.schema.json", json(workshopSchema())],
  ["docs/schema/record.schema.json", json(recordSchema)],
])
  writeFileSync(join(root, path), text);
