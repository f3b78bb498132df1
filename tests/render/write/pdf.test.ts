import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Document, Item } from "../../../src/render/document.ts";
import { render } from "../../../src/render/index.ts";
import { LETTER } from "../../../src/render/style.ts";
import { writePdf } from "../../../src/render/write/pdf.ts";
import { textsOf } from "../boxes.ts";
import { bench } from "../fixture/bench.ts";
import { fonts } from "../fonts.ts";
import { readPdf, type StructNode } from "../read-pdf.ts";

const text = (words: string, more: Partial<Extract<Item, { kind: "text" }>> = {}): Item => ({
  kind: "text",
  x: 72,
  y: 100,
  text: words,
  font: "regular",
  size: 12,
  ink: [0, 0, 0],
  width: 1,
  ...more,
});
const documentOf = (items: readonly Item[], about: Partial<Document> = {}): Document => ({
  title: "T",
  author: "",
  subject: "",
  language: "en-US",
  date: "2025-03-01",
  producer: "test",
  paper: LETTER,
  pages: [{ number: 1, kind: "test", of: [], items }],
  ...about,
});
const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

/** Runs a program on the file, where the machine has it. */
function outside(
  program: string,
  flags: readonly string[],
  bytes: Uint8Array,
  more: readonly string[] = [],
): string | null {
  if (spawnSync(program, ["--version"]).error !== undefined) return null;
  const folder = mkdtempSync(join(tmpdir(), "plan-"));
  try {
    const file = join(folder, "plan.pdf");
    writeFileSync(file, bytes);
    return execFileSync(program, [...flags, file, ...more], { encoding: "utf8" });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const roles = (node: StructNode): string[] => [node.role ?? "", ...(node.children ?? []).flatMap(roles)];
const figures = (node: StructNode): StructNode[] => [
  ...(node.role === "Figure" ? [node] : []),
  ...(node.children ?? []).flatMap(figures),
];

describe("a whole plan", async () => {
  const { value } = render(bench(), { paper: "letter", date: "2025-03-01", version: "0.0.0" });
  if (value === undefined) throw new Error("no document");
  const bytes = await writePdf(value, fonts);
  const read = await readPdf(bytes);

  test("is sound to qpdf", () => {
    const said = outside("qpdf", ["--check"], bytes);
    if (said !== null) expect(said).toContain("No syntax or stream encoding errors found");
  });

  test("every text stands where the document says, as wide as it was measured", () => {
    const typed = (words: string): string =>
      words
        .replace(/[\u202f\u00a0]/g, " ")
        .replaceAll("⁄", "/")
        .trim();
    value.pages.forEach((page, i) => {
      const found = read.pages[i]?.texts ?? [];
      for (const item of textsOf(page.items)) {
        if (item.turn !== undefined || item.text.trim() === "") continue;
        const words = typed(item.text);
        const line = found.filter((t) => t.text.trim() !== "" && Math.abs(t.y - item.y) < 0.02);
        const match = line.find((t) => Math.abs(t.x - item.x) < 0.02);
        // pdf.js joins runs that follow on one another.
        if (match === undefined) expect(line.map((t) => t.text).join(""), item.text).toContain(words);
        else expect(match.text.startsWith(words), `${words} | ${match.text}`).toBe(true);
        if (match?.text === item.text) expect(match.width, item.text).toBeCloseTo(item.width, 2);
      }
    });
  });

  test("nothing is painted outside the structure or an artifact", () => {
    expect(read.pages.map(({ unmarked }) => unmarked)).toEqual(value.pages.map(() => 0));
    expect(read.mark).toMatchObject({ Marked: true });
  });

  test("headings, lists, tables, links and figures with words are in the structure", () => {
    const all = read.pages.flatMap(({ structure }) => (structure === null ? [] : roles(structure)));
    for (const role of ["H1", "H2", "P", "L", "LI", "LBody", "Link", "Table", "TR", "TH", "TD", "Figure"])
      expect(all, role).toContain(role);
    const drawn = read.pages.flatMap(({ structure }) => (structure === null ? [] : figures(structure)));
    expect(drawn.length).toBeGreaterThan(bench().steps.length);
    for (const figure of drawn) expect(figure.alt?.length ?? 0).toBeGreaterThan(20);
  });

  test("has bookmarks, page labels, and a link for each line of the contents", () => {
    const titles = (read.outline ?? []).map(({ title }) => title);
    expect(titles).toEqual(expect.arrayContaining(["Boot bench", "Cut list", "Step by step"]));
    const steps = read.outline?.find(({ title }) => title === "Step by step")?.items.map(({ title }) => title);
    expect(steps).toEqual(bench().steps.map(({ number, title }) => `${number}. ${title}`));
    expect(read.labels).toEqual(value.pages.map(({ number }) => String(number)));
    expect(read.pages[0]?.links).toBe(titles.length - 1);
    expect(read.info).toMatchObject({ Title: "Boot bench", CreationDate: "D:20250301000000Z" });
  });

  test("nothing in it can act", () => {
    expect(latin1(bytes)).not.toMatch(/\/(JS|JavaScript|Launch|EmbeddedFiles?|AA|OpenAction|SubmitForm|RichMedia)\b/);
    expect(latin1(bytes)).not.toContain("/URI");
  });

  test("all fonts are embedded", () => {
    const said = outside("pdffonts", [], bytes);
    if (said === null) return;
    const rows = said.trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows) expect(row).toMatch(/BoardwrightSans-\w+ +CID TrueType +Identity-H +yes yes yes/);
  });
});

test("fractions and narrow blanks are found as they are typed", async () => {
  const words = "1\u202f23⁄32 × 5⁄8 in";
  const read = await readPdf(await writePdf(documentOf([text(words)]), fonts));
  expect(read.pages[0]?.texts.map((t) => t.text).join("")).toBe("1 23/32 × 5/8 in");
  const said = outside("pdftotext", ["-layout"], await writePdf(documentOf([text(words)]), fonts), ["-"]);
  if (said !== null) expect(said.trim()).toBe("1 23/32 × 5/8 in");
});

test("titles with signs of XML, PDF and lone surrogates do no harm", async () => {
  const title = 'A & B <x> "q" ]]> (y) \\ /JS \ud800';
  const bytes = await writePdf(documentOf([text("x")], { title, author: title, subject: title }), fonts);
  const packet = /<x:xmpmeta[\s\S]*<\/x:xmpmeta>/.exec(Buffer.from(bytes).toString("utf8"))?.[0] ?? "";
  expect(packet).toContain("A &amp; B &lt;x&gt;");
  expect(packet).not.toMatch(/<x>|]]>|&(?!amp;|lt;|gt;)/);
  expect((await readPdf(bytes)).info.Title).toContain("A & B <x>");
});

test("turned text reads upwards at 90°", async () => {
  const bytes = await writePdf(documentOf([text("up", { turn: 90 })]), fonts);
  const said = outside("pdftotext", ["-bbox"], bytes, ["-"]);
  const box = /xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)"/.exec(said ?? "");
  if (box === null) return expect(said).toBeNull();
  const [left, top, right, bottom] = box.slice(1).map(Number) as [number, number, number, number];
  expect(bottom - top).toBeGreaterThan(10);
  expect(left).toBeLessThan(72);
  expect(right).toBeLessThan(78);
  expect(bottom).toBeCloseTo(100, 0);
});

test("faults of the document are told, not drawn", async () => {
  await expect(writePdf(documentOf([text("x", { x: Number.NaN })]), fonts)).rejects.toThrow("not a coordinate");
  const link: Item = { kind: "link", x: 0, y: 0, width: 9, height: 9, to: "nowhere" };
  await expect(writePdf(documentOf([link]), fonts)).rejects.toThrow("nowhere");
  await expect(writePdf(documentOf([{ ...link, to: "javascript:x" }]), fonts)).rejects.toThrow("javascript");
  await expect(writePdf(documentOf([], { date: "today" }), fonts)).rejects.toThrow("not a date");
});
