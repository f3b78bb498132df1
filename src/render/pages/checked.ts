/** What has been checked: one page for the reader, and all of it for the maker. */

import { TOLD } from "../../solve/build/checks/told.ts";
import { series } from "../../solve/build/steps/draft.ts";
import { groupedBy } from "../../solve/build/steps/wishes/own-key.ts";
import type { Check } from "../../solve/build.ts";
import { inches, millimetres } from "../../units/length.ts";
import { roundTo } from "../../units/round.ts";
import { TYPE } from "../style.ts";
import { type Atom, list } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import { columnWidth, type Unit } from "../typeset/columns.ts";
import type { Section } from "../typeset/flow.ts";
import { cutStack, type Stack, stack } from "../typeset/stack.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";
import { proofText } from "./proof.ts";

/** In the order in which the checks are made. */
function byRule(checks: readonly Check[]): readonly (readonly [rule: string, own: readonly Check[]])[] {
  const rules = [...new Set(checks.map(({ rule }) => rule))];
  return rules.map((rule) => [rule, checks.filter((each) => each.rule === rule)]);
}

/** A rule without words of its own is told by its name. */
const told = (rule: string): string => TOLD.get(rule) ?? rule.replaceAll("-", " ");

export function whatWasChecked(plan: Plan): Section | null {
  const { build, frame } = plan;
  const { checks, steps, fasteners } = build;
  if (checks.length === 0) return null;
  const { width } = frame;
  const rules = byRule(checks);
  const good = rules.filter(([, own]) => own.every(({ verdict }) => verdict === "holds"));
  const open = rules.filter(([, own]) => own.some(({ verdict }) => verdict === "warns" || verdict === "fails"));
  const screws = fasteners.length === 0 ? "" : ", and every fastener has room for its tool";
  const narrow = columnWidth(width, GAP);
  const points = (title: string, texts: readonly string[]): Atom[] =>
    texts.length === 0
      ? []
      : [...subheading(title, narrow, 16), ...list(texts, TYPE.body, narrow, { above: 4, between: 3 })];
  const words = [
    ...list(
      good.map(([rule]) => `${told(rule)}.`),
      TYPE.body,
      narrow,
      { between: 3 },
    ),
    ...points(
      "Does not hold everywhere",
      open.map(([rule]) => `${told(rule)}: not in every place. Ask the maker of the plan before you build.`),
    ),
    ...points("Known and accepted", accepted(plan)),
    ...body(
      "This is arithmetic on a drawing: it knows nothing of knots, of a joint that was not glued, or of a use that nobody thought of.",
      narrow,
      { above: 12 },
    ),
  ];
  return {
    ...{ name: "checked", title: "What has been checked", kind: "checked", start: "fits" },
    atoms: [
      ...sectionHeading("checked", "What has been checked", width),
      ...body(
        `The piece was worked out as solid wood in space before this plan was printed. No part lies in another; in the ${steps.length} steps every part can be brought to its place${screws}.`,
        width,
      ),
    ],
    columns: { gap: GAP, between: 16, units: pagesOf(words, 2 * frame.height - SLACK) },
  };
}

const GAP = 24;
/** What the foot of two columns can leave empty, and the words above them. */
const SLACK = 260;

/** In runs that go into two columns. */
function pagesOf(atoms: readonly Atom[], most: number): readonly Unit[] {
  const units: Unit[] = [];
  for (let rest: Stack | null = stack(atoms); rest !== null; ) {
    const [now, later]: readonly [Stack, Stack | null] = cutStack(rest, most);
    units.push(now.atoms);
    rest = later;
  }
  return units;
}

/** To which figures of checks are told. */
const FINE = { inch: inches(1, 64), mm: millimetres(1, 10) } as const;

/** What the maker accepts, with the figure that comes nearest to the truth for a reader, and the reason, each once. */
function accepted({
  build: {
    checks,
    parts,
    design: { units },
  },
  printer,
}: Plan): readonly string[] {
  const name = new Map(parts.map((part) => [part.id, `the ${part.name.toLowerCase()} (${part.mark})`]));
  const open = checks.filter(({ verdict }) => verdict === "accepted");
  const say = (mm: number): string =>
    `${printer.exact(roundTo(millimetres(Math.round(mm * 1000), 1000), FINE[units]))}\u202f${printer.unit}`;
  return groupedBy(open, ({ rule, because }) => `${rule}|${because}`).map((own) => {
    const [{ rule, because = "" }] = own as [Check];
    const whose = [...new Set(own.flatMap(({ subject }) => name.get(subject) ?? []))];
    const worst = own.reduce((most, each) => (each.value / each.limit > most.value / most.limit ? each : most));
    const [value, limit] = [say(worst.value), say(worst.limit)];
    const figures = worst.unit === "mm" && value !== limit ? `: ${value}, where ${limit} is the usual limit` : "";
    const where = whose.length === 0 ? "" : ` of ${series(whose)}`;
    return `${told(rule)}: not true${where}${figures}. ${capital(because.replace(/\.$/u, ""))}.`;
  });
}

const COLUMNS: readonly Column[] = [
  { head: "Of", stretch: true },
  { head: "Value", align: "right" },
  { head: "Limit", align: "right" },
  { head: "Apart by", align: "right" },
  { head: "Unit" },
  { head: "Verdict" },
  { head: "Source", align: "right" },
];

/** For the maker: every check with its value, its limit and its source. */
export function allChecks(plan: Plan): Section | null {
  const { build, frame } = plan;
  const { checks, findings, layoutProof } = build;
  const { width } = frame;
  const sources = [...new Set(checks.map(({ basis }) => basis))];
  const row = (each: Check): readonly string[] => [
    each.subject,
    number(each.value),
    number(each.limit),
    number(Math.abs(each.value - each.limit)),
    each.unit,
    each.verdict,
    String(sources.indexOf(each.basis) + 1),
  ];
  const rows = byRule(checks).flatMap(([rule, own]) => [`${told(rule)} [${rule}]`, ...own.map(row)]);
  const warned = findings.map(
    ({ severity, rule, message, at }) => `Line ${at.line}, ${severity} [${rule}]: ${message}.`,
  );
  const proofs = layoutProof.map((proof) => `${proof.stocks.join(", ")}: ${proofText(proof)}`);
  const points = (title: string, texts: readonly string[]): Atom[] =>
    texts.length === 0 ? [] : [...subheading(title, width, 16), ...list(texts, TYPE.body, width, { above: 4 })];
  if (rows.length + warned.length + proofs.length === 0) return null;
  return {
    ...{ name: "all checks", title: "All checks", kind: "all checks", start: "page" },
    atoms: [
      ...sectionHeading("all checks", "All checks", width),
      ...table({ columns: COLUMNS, rows, width, above: 4 }),
      ...points(
        "Sources",
        sources.map((source, i) => `${i + 1}: ${source}.`),
      ),
      ...points("Accepted", accepted(plan)),
      ...points("Found", warned),
      ...points("Layouts", proofs),
    ],
  };
}

/** To the thousandth. */
const number = (value: number): string => String(Math.round(value * 1000) / 1000);
