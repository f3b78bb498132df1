/** The first page: what it is, what it looks like, how large, and where to find what. */
import type { Item, Paper } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, MARGIN, onGrid, TYPE } from "../style.ts";
import { baseline, paragraph } from "../typeset/atom.ts";
import { fit, label } from "../typeset/lines.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { madeFor } from "./choices.ts";
import { contentsHeight, contentsItems, type Entry } from "./contents.ts";
import { FACTS_HEIGHT, factItems } from "./facts.ts";
import { coverPicture } from "./pictures.ts";
import type { Plan } from "./plan.ts";

const TOP = 56;
const LEAST_PICTURE = 120;

/** Longer texts would leave no room for the drawing. */
const clip = (text: string, letters: number): string =>
  text.length <= letters
    ? text
    : `${[...text]
        .slice(0, letters - 1)
        .join("")
        .trimEnd()}…`;

export function coverItems(plan: Plan, paper: Paper, contents: readonly Entry[]): Item[] {
  const { x, width } = plan.frame;
  const { title, subtitle, summary, by, edition } = plan.build.design;
  const head = stack([
    ...paragraph(clip(title, 120), TYPE.title, width, { role: "heading 1" }),
    ...(subtitle === "" ? [] : paragraph(clip(subtitle, 160), TYPE.subtitle, width, { above: 4 })),
  ]);
  const made = clip(madeFor(plan.build.design), 400);
  const about = stack([
    ...(summary === "" ? [] : paragraph(clip(summary, 400), TYPE.lead, width)),
    ...(made === "" ? [] : paragraph(made, TYPE.body, width, { above: 8 })),
  ]);
  const colophon = [by, edition, plan.buyer === "" ? "" : `Copy of ${plan.buyer}`]
    .filter((text) => text !== "")
    .join(" · ");
  const foot = paper.height - MARGIN.bottom - 16;
  const list = onGrid(foot - contentsHeight(contents, width) - 16);
  const facts = list - FACTS_HEIGHT - 20;
  const aboutTop = facts - about.height - (about.height > 0 ? 16 : 0);
  const pictureTop = TOP + 20 + head.height + 20;
  const room = Math.max(LEAST_PICTURE, aboutTop - pictureTop - 24);
  const picture = coverPicture(plan, { width, height: room });
  return [
    { kind: "anchor", name: "cover", y: 0, bookmark: { title, level: 1 } },
    decoration(line(x, TOP, x + width, TOP, { width: 4, ink: BLACK })),
    ...paintStack(head, x, TOP + 16),
    picture.paint(x, pictureTop),
    ...paintStack(about, x, aboutTop),
    ...factItems(plan, x, facts, width),
    ...contentsItems(contents, x, list, width),
    ...(colophon === ""
      ? []
      : [
          {
            kind: "group",
            role: "paragraph",
            items: [label(fit(colophon, TYPE.caption, width), TYPE.caption, x, foot + baseline(TYPE.caption))],
          } as const,
        ]),
  ];
}
