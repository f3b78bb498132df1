import { beforeAll, describe, expect, it } from "vitest";
import type { Document } from "../../../src/render/document.ts";
import { render } from "../../../src/render/index.ts";
import { articleOf } from "../../../src/render/write/article.ts";
import { tablesOf } from "../../../src/render/write/csv.ts";
import { figuresOf } from "../../../src/render/write/gather.ts";
import { svgOf } from "../../../src/render/write/svg.ts";
import type { Build } from "../../../src/solve/build.ts";
import { solveText, textOf } from "../../examples/compiled.ts";

let build: Build;
let document: Document;
beforeAll(() => {
  build = solveText(textOf("boot-bench")).build as Build;
  document = render(build, { paper: "letter", date: "2026-01-01", version: "1" }).value as Document;
});

/** Elements of an XML text, closed in the order in which they were opened; throws where they are not. */
function elements(xml: string): readonly string[] {
  const open: string[] = [];
  const names: string[] = [];
  for (const [, close, name = "", empty] of xml.matchAll(/<(\/?)([a-z]+)(?:"[^"]*"|[^">])*?(\/?)>/g)) {
    if (close) expect(open.pop()).toBe(name);
    else {
      names.push(name);
      if (!empty) open.push(name);
    }
  }
  expect(open).toEqual([]);
  return names;
}

describe("drawings as SVG", () => {
  it("are one for each drawing of the pages, each with its words", () => {
    const figures = figuresOf(document);
    expect(new Set(figures.map(({ name }) => name)).size).toBe(figures.length);
    expect(figures.filter(({ name }) => /^step-\d+$/.test(name))).toHaveLength(
      build.steps.filter(({ shows, unit }) => shows.fresh.length + shows.present.length > 0 || unit === "jigs").length,
    );
    for (const { figure } of figures) {
      const names = elements(svgOf(figure));
      expect(names.slice(0, 2)).toEqual(["svg", "title"]);
      expect(names.includes("path")).toBe(true);
      expect(svgOf(figure)).toContain(`<title>${figure.alt?.replace(/&/g, "&amp;")}</title>`);
    }
  });
  it("escapes what XML would read as its own", () => {
    const text = { kind: "text", x: 0, y: 0, font: "regular", size: 9, ink: [0, 0, 0], width: 9 } as const;
    const svg = svgOf({ kind: "group", role: "figure", alt: 'a < b & "c"', items: [{ ...text, text: "1 < 2 & 3" }] });
    expect(svg).toContain("<title>a &lt; b &amp; &quot;c&quot;</title>");
    expect(svg).toContain(">1 &lt; 2 &amp; 3</text>");
  });
});

/** RFC 4180, section 2. */
function cells(csv: string): readonly (readonly string[])[] {
  return csv
    .split("\r\n")
    .slice(0, -1)
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^",]*)(?:,|$)/g)].map(([, cell = ""]) =>
        cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell,
      ),
    );
}

describe("tables as CSV", () => {
  it("have every line of the cut list once", () => {
    const list = tablesOf(document).find(({ name }) => name === "cut-list");
    const rows = cells(list?.text ?? "");
    const column = rows[0]?.indexOf("Mark") ?? -1;
    expect(rows.map((row) => row[column]).filter((mark) => mark && mark !== "Mark")).toEqual(
      build.cutList.map(({ mark }) => mark),
    );
  });
});

describe("the steps as Markdown", () => {
  it("have every step, its sentences and cautions, and its picture", () => {
    const text = articleOf(build, ({ number }) => ({ file: `step-${number}.svg`, alt: "seen" }));
    for (const { number, title, text: sentences, cautions } of build.steps) {
      expect(text).toContain(`## ${number}. ${title}`);
      expect(text).toContain(`](step-${number}.svg)`);
      const plain = text.replaceAll("\\", "");
      for (const sentence of [...sentences, ...cautions]) expect(plain).toContain(sentence.replace(/^– /, ""));
    }
  });
});
