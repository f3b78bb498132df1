import { catalogue } from "../../findings/catalogue.ts";
import type { Rule } from "../../findings/finding.ts";
import { escapeText } from "../../findings/print/index.ts";
import { wrap } from "../../findings/print/width.ts";
import { nearest } from "../../findings/suggest.ts";
import { LIMITS } from "../../parse/limits.ts";
import { type ExcerptLine, examplesOf } from "../excerpt.ts";
import { EXIT, type Exit, Misuse } from "../exit.ts";
import { quote } from "../quote.ts";
import type { World } from "../world.ts";

/** `explain`: what a finding is about, by its name; the limits; or, without a name, the names of all findings. */
export async function explain(name: string | undefined, world: World): Promise<Exit> {
  await world.out.write(textFor(name, Math.min(world.out.columns, 100)));
  return EXIT.done;
}

function textFor(name: string | undefined, width: number): string {
  if (name === undefined) return listOfNames();
  if (name === "limits") return listOfLimits();
  const rule = catalogue.find((each) => each.name === name);
  if (rule !== undefined) return explanation(rule, width);
  const near = nearest(name, [...catalogue.map((each) => each.name), "limits"]);
  const hint = near.length === 0 ? '"boardwright explain" lists them all' : `there is ${near.join(", ")}`;
  throw new Misuse(`no finding is called ${quote(name)}; ${hint}`);
}

function explanation(rule: Rule<never>, width: number): string {
  const { wrong, right } = examplesOf(rule);
  return [
    `${rule.name} (${rule.severity})`,
    "",
    ...rule.explain.split("\n\n").flatMap((paragraph) => [...wrap(paragraph.replaceAll("\n", " "), width), ""]),
    ...shown("This gives it:", wrong),
    ...shown("This does not:", right),
    ...wrap(`Where the rule comes from: ${rule.basis}.`, width),
    "",
  ].join("\n");
}

const shown = (title: string, lines: readonly ExcerptLine[]): string[] =>
  lines.length === 0
    ? []
    : [title, "", ...lines.map(({ text, differs }) => `  ${differs ? ">" : " "} ${escapeText(text)}`.trimEnd()), ""];

const listOfNames = (): string =>
  (["error", "warning", "advice"] as const)
    .flatMap((severity) => {
      const names = catalogue.filter((rule) => rule.severity === severity).map((rule) => rule.name);
      return names.length === 0 ? [] : [`${severity}:`, ...names.map((name) => `  ${name}`), ""];
    })
    .join("\n");

const listOfLimits = (): string => {
  const rows = Object.values(LIMITS).map(({ limit, of }) => ({ limit: grouped(limit), of }));
  const widest = Math.max(...rows.map(({ limit }) => limit.length));
  return `A plan may have at most\n\n${rows.map(({ limit, of }) => `  ${limit.padStart(widest)} ${of}\n`).join("")}`;
};

/** 1048576 as 1,048,576. */
const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");
