import { expect, test } from "vitest";
import type { Item } from "../../../src/render/document.ts";
import { anchorsOf, cited } from "../../../src/render/pages/citing.ts";
import { TYPE } from "../../../src/render/style.ts";
import { label } from "../../../src/render/typeset/lines.ts";
import { measure } from "../../../src/render/typeset/measure.ts";

const sentence = (): Item =>
  ({ ...label("The picture of step 3 shows it.", TYPE.caption, 0, 0), cites: "step-3" }) as Item;
const group = (items: readonly Item[]): Item => ({ kind: "group", role: "paragraph", items });
const pages = [[group([{ kind: "anchor", name: "step-3", y: 10 }])], [], [group([sentence()])]];

test("a text tells the page of what it cites, unless that is this page or the one before", () => {
  const anchors = anchorsOf(pages);
  // The cover is the first page.
  expect(anchors.get("step-3")).toBe(2);
  const on = (page: number): string => {
    const [all] = cited([group([sentence()])], page, anchors);
    const [text] = all?.kind === "group" ? all.items : [];
    if (text?.kind !== "text") throw new Error("no text");
    expect(text.width).toBeCloseTo(measure(text.text, text.font, text.size), 6);
    expect(text).not.toHaveProperty("cites");
    return text.text;
  };
  expect([2, 3, 4].map(on)).toEqual([
    "The picture of step 3 shows it.",
    "The picture of step 3 shows it.",
    "The picture of step 3 shows it (page 2).",
  ]);
});
