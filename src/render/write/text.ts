/** A Document as text, one line an item, for comparing. */
import type { Document, Ink, Item, Page, PathStep } from "../document.ts";

const two = (value: number): string => (Math.round(value * 100) / 100 + 0).toFixed(2);

export function writeText(document: Document): string {
  const { title, author, subject, date, producer, paper } = document;
  const head = [`document ${quote(title)}`, `author ${quote(author)}`, `subject ${quote(subject)}`, `date ${date}`];
  const rest = [`producer ${producer}`, `paper ${paper.name} ${two(paper.width)} ${two(paper.height)}`];
  return `${[...head, ...rest, ...document.pages.flatMap(pageLines)].join("\n")}\n`;
}

function pageLines(page: Page): string[] {
  const of = page.of.length === 0 ? "" : ` · ${page.of.join(", ")}`;
  return ["", `page ${page.number} · ${page.kind}${of}`, ...page.items.flatMap((item) => itemLines(item, "  "))];
}

const quote = (text: string): string => JSON.stringify(text);
const ink = (colour: Ink): string => colour.map(two).join(" ");

function itemLines(item: Item, indent: string): string[] {
  switch (item.kind) {
    case "group": {
      const alt = item.alt === undefined ? "" : ` ${quote(item.alt)}`;
      return [`${indent}${item.role}${alt}`, ...item.items.flatMap((inner) => itemLines(inner, `${indent}  `))];
    }
    case "text": {
      const turn = item.turn === undefined ? "" : ` turned ${two(item.turn)}`;
      const type = `${item.font} ${item.size}${turn} (${ink(item.ink)})`;
      return [`${indent}text ${two(item.x)} ${two(item.y)} ${two(item.width)} ${type} ${quote(item.text)}`];
    }
    case "link":
      return [`${indent}link ${[item.x, item.y, item.width, item.height].map(two).join(" ")} to ${quote(item.to)}`];
    case "anchor": {
      const mark = item.bookmark === undefined ? "" : ` bookmark ${item.bookmark.level} ${quote(item.bookmark.title)}`;
      return [`${indent}anchor ${two(item.y)} ${quote(item.name)}${mark}`];
    }
    case "path": {
      const { stroke, fill } = item;
      const dash = stroke?.dash === undefined ? "" : ` dash ${stroke.dash.map(two).join(" ")}`;
      const drawn = stroke === undefined ? "" : ` stroke ${two(stroke.width)} (${ink(stroke.ink)})${dash}`;
      const filled = fill === undefined ? "" : ` fill (${ink(fill)})`;
      return [`${indent}path ${item.steps.map(stepText).join(" ")}${drawn}${filled}`];
    }
  }
}

function stepText(step: PathStep): string {
  switch (step.to) {
    case "move":
      return `M ${two(step.x)} ${two(step.y)}`;
    case "line":
      return `L ${two(step.x)} ${two(step.y)}`;
    case "curve":
      return `C ${[step.x1, step.y1, step.x2, step.y2, step.x, step.y].map(two).join(" ")}`;
    case "close":
      return "Z";
  }
}
