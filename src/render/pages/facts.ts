/** The few numbers that one wants to know before turning the page. */
import { subtract } from "../../units/index.ts";
import type { Item } from "../document.ts";
import { outsideOf } from "../drawing/outside.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, TYPE } from "../style.ts";
import { baseline } from "../typeset/atom.ts";
import { label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import type { Plan } from "./plan.ts";
import { duration } from "./step-title.ts";
import { inDays } from "./time.ts";

export const FACTS_HEIGHT = 48;

const KG_PER_POUND = 0.45359237; // exact, by definition of the international pound

/** "52 lb", "24 kg" */
export const sayMass = (mass: number, { unit }: Pick<Plan["printer"], "unit">): string =>
  unit === "in" ? `${Math.round(mass / KG_PER_POUND)}\u202flb` : `${Math.round(mass)}\u202fkg`;

function facts({ build, printer }: Plan): (readonly [string, string])[] {
  const outside = outsideOf(build.parts);
  const size =
    outside === null
      ? []
      : [([0, 1, 2] as const).map((i) => printer.rounded(subtract(outside.high[i], outside.low[i]))).join(" × ")];
  const mass = build.parts.reduce((sum, part) => sum + part.mass, 0);
  const weight = sayMass(mass, printer);
  const { days } = build.timeline;
  const bench = build.timeline.bench;
  return [
    ...size.map((text) => ["Width × depth × height", `${text}\u202f${printer.unit}`] as const),
    ...(mass >= 1 ? [["Weight, about", weight] as const] : []),
    ["Parts", String(build.parts.length)] as const,
    ...(bench > 0 ? [["At the bench, about", duration(bench)] as const] : []),
    ...(days.length > 1 ? [["Spread over", inDays(days)] as const] : []),
  ];
}

export function factItems(plan: Plan, x: number, y: number, width: number): Item[] {
  const rule = (at: number): Item => decoration(line(x, at, x + width, at, { width: 0.6, ink: BLACK }));
  const all = facts(plan);
  const widths = all.map(([name, value]) =>
    Math.max(measure(name, TYPE.caption.font, TYPE.caption.size), measure(value, TYPE.fact.font, TYPE.fact.size)),
  );
  const gap = Math.min(64, (width - widths.reduce((a, b) => a + b, 0)) / Math.max(1, all.length - 1));
  let left = x;
  const items = all.map(([name, value], i): Item => {
    const at = left;
    left += (widths[i] ?? 0) + gap;
    return {
      kind: "group",
      role: "paragraph",
      items: [
        label(name, TYPE.caption, at, y + 6 + baseline(TYPE.caption)),
        label(value, TYPE.fact, at, y + 20 + baseline(TYPE.fact)),
      ],
    };
  });
  return [rule(y), ...items, rule(y + FACTS_HEIGHT)];
}
