/** Paints paths and text; knows nothing of structure. */
import { circlePoint } from "../../geometry/angle.ts";
import type { Ink, Item } from "../document.ts";
import type { Pdf } from "./pdfkit.ts";

export type Path = Extract<Item, { kind: "path" }>;
export type Text = Extract<Item, { kind: "text" }>;

/** A coordinate, to a thousandth of a point. Throws an Error for what is not a place on a page. */
export function pt(value: number): number {
  if (!Number.isFinite(value) || Math.abs(value) > 100_000) throw new Error(`not a coordinate: ${value}`);
  return Math.round(value * 1000) / 1000 + 0;
}

/** pdfkit divides by 255. */
const rgb = (ink: Ink): number[] => ink.map((share) => Math.round(Math.min(1, Math.max(0, share)) * 255));

export function paintPath(pdf: Pdf, { steps, stroke, fill }: Path): void {
  if (steps.length === 0 || (stroke === undefined && fill === undefined)) return;
  for (const step of steps) {
    if (step.to === "move") pdf.moveTo(pt(step.x), pt(step.y));
    else if (step.to === "line") pdf.lineTo(pt(step.x), pt(step.y));
    else if (step.to === "close") pdf.closePath();
    else pdf.bezierCurveTo(pt(step.x1), pt(step.y1), pt(step.x2), pt(step.y2), pt(step.x), pt(step.y));
  }
  if (fill !== undefined) pdf.fillColor(rgb(fill));
  if (stroke === undefined) {
    pdf.fill();
    return;
  }
  pdf.lineWidth(pt(stroke.width));
  pdf.lineCap(stroke.cap ?? "butt");
  pdf.strokeColor(rgb(stroke.ink));
  if (stroke.dash !== undefined) pdf.dash(stroke.dash.map(pt));
  if (fill === undefined) pdf.stroke();
  else pdf.fillAndStroke();
  if (stroke.dash !== undefined) pdf.undash();
}

export function paintText(pdf: Pdf, { x, y, text, font, size, ink, turn }: Text): void {
  if (text === "") return;
  pdf.font(font, pt(size));
  pdf.fillColor(rgb(ink));
  if (turn === undefined || turn % 360 === 0) {
    pdf.text(text, pt(x), pt(y), { lineBreak: false, baseline: "alphabetic" });
    return;
  }
  const [cos, sin] = circlePoint(turn, 360);
  pdf.save();
  pdf.transform(cos, -sin, sin, cos, pt(x), pt(y));
  pdf.text(text, 0, 0, { lineBreak: false, baseline: "alphabetic" });
  pdf.restore();
}
