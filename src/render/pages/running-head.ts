import type { Design } from "../../solve/design.ts";
import { sayThickness } from "../../units/say-thickness.ts";
import type { Item, Paper } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { HEAD, MARGIN, RULE, TYPE } from "../style.ts";
import { fit, label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import type { Plan } from "./plan.ts";

/** Title, owner, edition and page of pages above a line. Not part of what is read aloud. */
export function runningHead(
  { build: { design }, buyer, author }: Plan,
  paper: Paper,
  page: number,
  total: number,
): Item[] {
  const { title, edition } = design;
  const style = TYPE.caption;
  const [left, right] = [MARGIN.left, paper.width - MARGIN.right];
  const number = `page ${page} of ${total}`;
  const room = right - left - measure(number, style.font, style.size) - 24;
  const more = [author ? "author’s copy" : "", buyer === "" ? "" : `copy of ${buyer}`, edition, measuredFor(design)]
    .filter((each) => each !== "")
    .join(" · ");
  const text = more === "" ? title : `${fit(title, style, room * 0.6)} · ${more}`;
  return [
    decoration(
      label(fit(text, style, room), style, left, HEAD.baseline),
      label(number, style, right, HEAD.baseline, "right"),
      line(left, HEAD.rule, right, HEAD.rule, { width: 0.5, ink: RULE }),
    ),
  ];
}

/** Whose copy it is: "for 3/4 birch plywood measured 45/64 in". */
function measuredFor({ stock, units }: Design): string {
  const told = stock
    .filter(({ measured }) => measured)
    .map(({ label, thickness }) => `${label} measured ${sayThickness(thickness, { units, style: "typographic" })}`);
  return told.length === 0 ? "" : `for ${told.join(", ")}`;
}
