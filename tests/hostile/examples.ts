import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("../../examples/", import.meta.url);

/** Every plan among the examples: its name, and its text. */
export const EXAMPLES: readonly (readonly [name: string, text: string])[] = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith(".yaml") && !name.startsWith("workshops"))
  .sort()
  .map((name) => [name, readFileSync(new URL(name, folder), "utf8")]);
