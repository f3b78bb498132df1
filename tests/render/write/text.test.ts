import { expect, test } from "vitest";
import type { Document } from "../../../src/render/document.ts";
import { render } from "../../../src/render/index.ts";
import { decoration, line } from "../../../src/render/shapes.ts";
import { LETTER } from "../../../src/render/style.ts";
import { writeText } from "../../../src/render/write/text.ts";
import { bench } from "../fixture/bench.ts";

const small: Document = {
  title: 'A "bench"',
  author: "",
  subject: "",
  language: "en-US",
  date: "2025-03-01",
  producer: "test",
  paper: LETTER,
  pages: [
    {
      number: 1,
      kind: "steps",
      of: ["step 1", "step 2"],
      items: [
        { kind: "anchor", name: "step-1", y: 10, bookmark: { title: "1. Cut", level: 2 } },
        {
          kind: "group",
          role: "figure",
          alt: "a line",
          items: [line(0, 0, 10.005, -0.001, { width: 0.5, ink: [0, 0, 0], dash: [2, 1] })],
        },
        decoration({ kind: "path", steps: [{ to: "move", x: 1, y: 2 }, { to: "close" }], fill: [1, 0.5, 0] }),
        { kind: "text", x: 72, y: 118.5, text: "23⁄32", font: "bold", size: 12, ink: [0, 0, 0], width: 20, turn: 90 },
        { kind: "link", x: 1, y: 2, width: 3, height: 4, to: "step-1" },
      ],
    },
  ],
};

test("every item is one line", () => {
  expect(writeText(small)).toBe(`document "A \\"bench\\""
author ""
subject ""
date 2025-03-01
producer test
paper letter 612.00 792.00

page 1 · steps · step 1, step 2
  anchor 10.00 "step-1" bookmark 2 "1. Cut"
  figure "a line"
    path M 0.00 0.00 L 10.01 0.00 stroke 0.50 (0.00 0.00 0.00) dash 2.00 1.00
  decoration
    path M 1.00 2.00 Z fill (1.00 0.50 0.00)
  text 72.00 118.50 20.00 bold 12 turned 90.00 (0.00 0.00 0.00) "23⁄32"
  link 1.00 2.00 3.00 4.00 to "step-1"
`);
});

test("the same plan gives the same text, twice", () => {
  const text = (): string => {
    const { value } = render(bench(), { paper: "a4", date: "2025-03-01", version: "0.0.0" });
    if (value === undefined) throw new Error("no document");
    return writeText(value);
  };
  expect(text()).toBe(text());
  expect(text()).toContain('"Step by step"');
});
