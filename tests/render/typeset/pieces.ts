/** What pages are flowed from: sections, boxes, and the rows of a table. */
import type { Item } from "../../../src/render/document.ts";
import type { Section } from "../../../src/render/typeset/flow.ts";
import type { FlowAtom } from "../../../src/render/typeset/sheet.ts";
import { textsOf } from "../boxes.ts";

export const frame = { x: 60, y: 64, width: 300, height: 400 };
export const section = (name: string, atoms: readonly FlowAtom[], start: Section["start"] = "fits"): Section => ({
  ...{ name, title: name, kind: name, start, atoms },
});
export const rows = (count: number): string[][] =>
  Array.from({ length: count }, (_, i) => [`M${i}`, `part number ${i}`, `${i}\u202f1⁄2`]);
export const columns = [
  { head: "Mark" },
  { head: "Part", stretch: true },
  { head: "Length", align: "length" },
] as const;
export const marks = (items: readonly Item[]): string[] =>
  textsOf(items)
    .map((t) => t.text)
    .filter((t) => /^M\d/.test(t));
