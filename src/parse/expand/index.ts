import type { Finding } from "../../findings/finding.ts";
import { choiceUnknown } from "../../findings/rules/choice-unknown.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import type { ChoiceDraft } from "../draft.ts";
import type { Where } from "../kinds/kind.ts";
import { normaliseName, squash } from "../names.ts";
import { choices as choicesKind } from "../schema/choices.ts";
import { type Entry, type MapNode, type Node, settingOf } from "../yaml/nodes.ts";
import { choose } from "./choose.ts";
import { include } from "./include.ts";
import { openPiece } from "./open.ts";
import { ownAssemblies } from "./own.ts";

/** A plan at its lower height: included files merged, choices made, assemblies opened into parts. */
export interface Opened {
  readonly tree: Node;
  readonly choices: readonly ChoiceDraft[];
  /** The option chosen in each choice. */
  readonly chosen: ReadonlyMap<string, string>;
}

export interface OpenOptions {
  /** Options asked for, by choice; others are their defaults. */
  readonly choose: ReadonlyMap<string, string>;
  /** The trees of files named by `include`; absent where a file could not be had. */
  readonly files: ReadonlyMap<string, Node>;
  /** Points to the plan as a whole. */
  readonly at: Span;
  readonly owners: Where["owners"];
}

/** Opens what a maker says about assemblies into parts, before any number is evaluated. */
export function openPlan(source: Node, options: OpenOptions, findings: Finding[]): Opened {
  const where: Where = { key: "the plan", at: options.at, findings, owners: options.owners };
  if (source.kind !== "map") return { tree: source, choices: [], chosen: new Map() };
  const whole = include(source, options.files, where);
  const said = settingOf(whole, "choices");
  const choices = (said && choicesKind.read(said.value, { ...where, key: "choices", at: said.key.at })) ?? [];
  const chosen = chosenOf(choices, options, findings);
  const of = (choice: ChoiceDraft): string => chosen.get(choice.name) ?? choice.default;
  const kept = whole.entries.filter((entry) => entry !== said);
  const made = { choices, of, findings };
  const tree: MapNode = { ...whole, entries: kept.map(({ key, value }) => ({ key, value: choose(value, made) })) };
  const own = ownAssemblies(settingOf(tree, "assemblies"), where);
  const lower = tree.entries.filter(({ key }) => !["assemblies", "include"].includes(squash(key.text)));
  const plan: MapNode = { ...tree, entries: lower };
  const entries = lower.map((entry): Entry => {
    if (squash(entry.key.text) !== "piece" || entry.value.kind !== "map") return entry;
    return { ...entry, value: openPiece(entry.value, { plan, own, where }) };
  });
  return { tree: { ...plan, entries }, choices, chosen };
}

function chosenOf(
  choices: readonly ChoiceDraft[],
  { choose: asked, at }: OpenOptions,
  findings: Finding[],
): ReadonlyMap<string, string> {
  const chosen = new Map(choices.map((choice) => [choice.name, choice.default]));
  for (const [key, word] of asked) {
    const choice = choices.find((each) => each.name === normaliseName(key));
    const known = choice ? choice.options.map((option) => option.name) : choices.map((each) => each.name);
    const option = choice?.options.find((each) => each.name === normaliseName(word));
    if (choice && option) chosen.set(choice.name, option.name);
    else
      findings.push(
        choiceUnknown(at, {
          name: choice ? word : key,
          ...(choice && { of: choice.name }),
          near: nearest(choice ? word : key, known),
          known,
        }),
      );
  }
  return chosen;
}
