import type { Design } from "../../solve/design.ts";
import type { Item, Paper } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { HEAD, MARGIN, RULE, TYPE } from "../style.ts";
import { fit, label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";

/** Title, edition and page of pages above a line. Not part of what is read aloud. */
export function runningHead({ title, edition }: Design, paper: Paper, page: number, total: number): Item[] {
  const style = TYPE.caption;
  const [left, right] = [MARGIN.left, paper.width - MARGIN.right];
  const number = `page ${page} of ${total}`;
  const room = right - left - measure(number, style.font, style.size) - 24;
  const text = edition === "" ? title : `${fit(title, style, room * 0.6)} · ${edition}`;
  return [
    decoration(
      label(fit(text, style, room), style, left, HEAD.baseline),
      label(number, style, right, HEAD.baseline, "right"),
      line(left, HEAD.rule, right, HEAD.rule, { width: 0.5, ink: RULE }),
    ),
  ];
}
