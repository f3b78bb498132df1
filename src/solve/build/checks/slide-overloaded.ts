import { slideOverloaded } from "../../../findings/rules/slide-overloaded.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf } from "./drawers/drawers.ts";
import { GRAVITY } from "./wood/beam.ts";
import { bodyOf } from "./wood/body.ts";
import { loadOn } from "./wood/load.ts";

const POUND = 0.45359237;
/** What fills a drawer, kg in each litre: the clothes of the stability test in 16 CFR 1261 (88 FR 28403), 8.5 lb in each cubic foot. */
const FILLED = (8.5 * POUND) / 28.316846592;

/** A pair of slides carries the drawer and what is in it. */
export const slideOverloadedRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer) => (drawer.slides.length > 0 ? [judge(drawer, checked)] : []));

function judge(drawer: Drawer, checked: Checked): Verdict {
  const { design, mass } = checked;
  const metric = design.units === "mm";
  const own = drawer.parts.reduce((so, part) => so + mass(part), 0);
  const { kilograms, words, basis } = contentsOf(drawer, checked);
  const rated = Math.min(
    ...drawer.slides.map(({ onCase }) => onCase.item.numbers.get("load") ?? Number.POSITIVE_INFINITY),
  );
  const all = own + kilograms;
  const check = {
    ...{ rule: "slide-overloaded", subject: drawer.motion.name, value: all, limit: rated, unit: "kg" },
    basis: `what the slide is rated for; load: ${basis}`,
  };
  if (all <= rated) return { check: { ...check, verdict: "holds" } };
  const told = (kg: number): string => (metric ? `${Math.round(kg * 10) / 10} kg` : `${Math.round(kg / POUND)} lb`);
  const finding = slideOverloaded((drawer.slides[0]?.side ?? (drawer.parts[0] as Part)).at, {
    ...{ drawer: drawer.motion.name, all: told(all), own: told(own), contents: words, rated: told(rated) },
    ...{ needed: metric ? `${Math.ceil(all / 5) * 5} kg` : `${Math.ceil(all / POUND / 5) * 5} lb` },
    most: rated > own ? told(Math.floor(rated - own)) : null,
  });
  return { check: { ...check, verdict: "warns" }, finding };
}

/** What the plan says lies on its bottom; else what fills it. */
function contentsOf({ parts, slides }: Drawer, { design }: Checked) {
  const metric = design.units === "mm";
  const area = (part: Part): number => {
    const [[a, b], [c, d]] = [bodyOf(part, 0), bodyOf(part, 1)];
    return (b - a) * (d - c);
  };
  const flat = parts.filter(({ axes }) => axes.thickness === "up").toSorted((a, b) => area(b) - area(a));
  const [bottom] = flat;
  if (!bottom) return { kilograms: 0, words: "nothing", basis: "it has no bottom" };
  const said = bottom.carries ?? design.carries;
  if (said) {
    const sides = [bodyOf(bottom, 0), bodyOf(bottom, 1)].map(([low, high]) => high - low);
    const load = loadOn(said, Math.max(...sides), Math.min(...sides), metric);
    return {
      kilograms: (load?.force ?? 0) / GRAVITY,
      words: load?.words ?? "nothing",
      basis: load?.basis ?? "the plan",
    };
  }
  const top = Math.max(...slides.map(({ side }) => bodyOf(side, 2)[1]));
  const litres = (area(bottom) * Math.max(0, top - bodyOf(bottom, 2)[1])) / 1e6;
  const kilograms = litres * FILLED;
  const words = metric
    ? `${Math.round(litres)} l of things`
    : `${Math.round((litres / 28.316846592) * 10) / 10} cubic feet of things`;
  return { kilograms, words, basis: "8.5 lb in each cubic foot, 16 CFR 1261 (88 FR 28403)" };
}
