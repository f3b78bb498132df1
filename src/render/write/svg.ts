/** A drawing of the pages as SVG, with its alternative in words. Lengths are points, as on the page. */
import type { Font, Ink, Item, PathStep } from "../document.ts";
import { bounds, type Leaf, leaves } from "../shapes.ts";

export type Figure = Extract<Item, { kind: "group" }>;

/** Room round the drawing, for the width of its outermost lines. */
const MARGIN = 2;

/** Complete SVG text. Type is named, not embedded: a page on the web has its own. */
export function svgOf(figure: Figure): string {
  const parts = leaves(figure.items);
  const [x0, y0, x1, y1] = parts.length === 0 ? [0, 0, 0, 0] : bounds(parts);
  const box = [x0 - MARGIN, y0 - MARGIN, x1 - x0 + 2 * MARGIN, y1 - y0 + 2 * MARGIN].map(two);
  const [, , width, height] = box;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}pt" height="${height}pt" viewBox="${box.join(" ")}" role="img">`,
    `<title>${escapeXml(figure.alt ?? "")}</title>`,
    ...parts.map(leafOf),
    "</svg>",
    "",
  ].join("\n");
}

function leafOf(leaf: Leaf): string {
  if (leaf.kind === "path") {
    const { stroke, fill } = leaf;
    const dash = stroke?.dash === undefined ? "" : ` stroke-dasharray="${stroke.dash.map(two).join(" ")}"`;
    const drawn =
      stroke === undefined
        ? ""
        : ` stroke="${colour(stroke.ink)}" stroke-width="${two(stroke.width)}" stroke-linecap="${stroke.cap ?? "butt"}"${dash}`;
    return `<path d="${leaf.steps.map(stepOf).join("")}" fill="${fill === undefined ? "none" : colour(fill)}"${drawn}/>`;
  }
  const { x, y, text, font, size, ink, turn, width } = leaf;
  const turned = turn === undefined ? "" : ` transform="rotate(${two(-turn)} ${two(x)} ${two(y)})"`;
  return `<text x="${two(x)}" y="${two(y)}" font-family="'Source Sans 3', 'Source Sans Pro', sans-serif" font-size="${two(size)}"${FACES[font]} fill="${colour(ink)}" textLength="${two(width)}"${turned}>${escapeXml(text)}</text>`;
}

const FACES: Readonly<Record<Font, string>> = {
  regular: "",
  bold: ' font-weight="700"',
  italic: ' font-style="italic"',
};

function stepOf(step: PathStep): string {
  switch (step.to) {
    case "move":
      return `M${two(step.x)} ${two(step.y)}`;
    case "line":
      return `L${two(step.x)} ${two(step.y)}`;
    case "curve":
      return `C${[step.x1, step.y1, step.x2, step.y2, step.x, step.y].map(two).join(" ")}`;
    case "close":
      return "Z";
  }
}

const two = (value: number): string => String(Math.round(value * 100) / 100 + 0);
const colour = (ink: Ink): string =>
  `#${ink
    .map((share) =>
      Math.round(share * 255)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
const ESCAPED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escapeXml = (text: string): string => text.replace(/[&<>"]/g, (each) => ESCAPED[each] ?? each);
