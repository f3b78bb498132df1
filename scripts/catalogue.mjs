// Writes src/findings/catalogue.ts from the files in src/findings/rules. Run it when a rule is added or taken away:
//   node scripts/catalogue.mjs
// With --check it writes nothing, and fails if the file is not what it would write.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const findings = fileURLToPath(new URL("../src/findings/", import.meta.url));
const target = `${findings}catalogue.ts`;

/** `unknown-key` exports `unknownKey`. */
const camel = (name) => name.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());

const names = readdirSync(`${findings}rules`)
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.slice(0, -3))
  .sort();

const lines = [
  "// Written by scripts/catalogue.mjs from the files in rules/. Do not edit.",
  'import type { Rule } from "./finding.ts";',
  ...names.map((name) => `import { ${camel(name)} } from "./rules/${name}.ts";`),
  "",
  "/** Every rule, sorted by name. */",
  "export const catalogue: readonly Rule<never>[] = [",
  ...names.map((name) => `  ${camel(name)},`),
  "];",
  "",
];
const text = lines.join("\n");

if (process.argv.includes("--check")) {
  if (readFileSync(target, "utf8") !== text) {
    console.error("src/findings/catalogue.ts is out of date: run node scripts/catalogue.mjs");
    process.exit(1);
  }
} else writeFileSync(target, text);
