import type { Finding } from "../../findings/finding.ts";
import { choiceUnknown } from "../../findings/rules/choice-unknown.ts";
import { choiceWithoutValue } from "../../findings/rules/choice-without-value.ts";
import { whenNotRead } from "../../findings/rules/when-not-read.ts";
import { nearest } from "../../findings/suggest.ts";
import type { ChoiceDraft } from "../draft.ts";
import { normaliseName, squash } from "../names.ts";
import { type Entry, type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";

/** The choices of a plan, and what is chosen in each. */
export interface Chosen {
  readonly choices: readonly ChoiceDraft[];
  readonly of: (choice: ChoiceDraft) => string;
  readonly findings: Finding[];
}

/**
 * The tree as one choice of options makes it: `{ by: wood, oak: …, painted: … }` becomes the value of the option chosen, and settings
 * that carry `when: wood is painted` stay, without it, or go.
 */
export function choose(node: Node, chosen: Chosen): Node {
  if (node.kind === "list")
    return {
      ...node,
      items: node.items.filter((item) => stays(item, chosen)).map((item) => choose(without(item), chosen)),
    };
  if (node.kind !== "map") return node;
  const picked = pick(node, chosen);
  if (picked !== undefined) return picked === null ? { kind: "empty", at: node.at } : choose(picked, chosen);
  const entries = node.entries.flatMap((entry): Entry[] =>
    stays(entry.value, chosen) ? [{ ...entry, value: choose(without(entry.value), chosen) }] : [],
  );
  return { ...node, entries };
}

const setting = (node: Node, name: string): Entry | undefined =>
  node.kind === "map" ? settingOf(node, name) : undefined;

const without = (node: Node): Node =>
  node.kind === "map" && setting(node, "when")
    ? { ...node, entries: node.entries.filter(({ key }) => squash(key.text) !== "when") }
    : node;

/** The value that a `by` gives; undefined where the settings are no such thing, null where it has no value. */
function pick(node: MapNode, { choices, of, findings }: Chosen): Node | null | undefined {
  const by = setting(node, "by")?.value;
  if (by?.kind !== "text") return undefined;
  const name = normaliseName(by.text);
  const choice = choices.find((each) => each.name === name);
  if (choice === undefined) {
    // Other settings have a `by` of their own: a measure, or a name of one.
    const known = choices.map((each) => each.name);
    const near = nearest(name, known);
    if (near.length === 0) return undefined;
    findings.push(choiceUnknown(by.at, { name: by.text, near, known }));
    return null;
  }
  const odd = node.entries.find(
    ({ key }) => squash(key.text) !== "by" && !choice.options.some((option) => option.name === normaliseName(key.text)),
  );
  if (odd !== undefined) {
    findings.push(notAnOption(odd.key, choice));
    return null;
  }
  const value = node.entries.find(({ key }) => normaliseName(key.text) === of(choice))?.value;
  if (value === undefined) findings.push(choiceWithoutValue(by.at, { choice: choice.name, option: of(choice) }));
  return value ?? null;
}

const notAnOption = (word: TextNode, choice: ChoiceDraft): Finding =>
  choiceUnknown(word.at, {
    name: word.text,
    of: choice.name,
    near: nearest(
      word.text,
      choice.options.map((option) => option.name),
    ),
    known: choice.options.map((option) => option.name),
  });

/** Whether the `when` of some settings holds; true where there is none. */
function stays(node: Node, chosen: Chosen): boolean {
  const when = setting(node, "when")?.value;
  if (when === undefined || when.kind === "empty") return true;
  if (when.kind !== "text") return true;
  return when.text.split(/\s+or\s+/i).some((each) => each.split(/\s+and\s+/i).every((one) => holds(one, when, chosen)));
}

/** `wood is painted`, `wood is not oak`. */
function holds(words: string, when: TextNode, { choices, of, findings }: Chosen): boolean {
  const found = /^\s*(.+?)\s+is\s+(not\s+)?(.+?)\s*$/i.exec(words);
  if (found === null) {
    findings.push(whenNotRead(when.at, { text: when.text }));
    return true;
  }
  const [, name = "", not, wanted = ""] = found;
  const choice = choices.find((each) => each.name === normaliseName(name));
  if (choice === undefined) {
    const known = choices.map((each) => each.name);
    findings.push(choiceUnknown(when.at, { name, near: nearest(name, known), known }));
    return true;
  }
  if (!choice.options.some((option) => option.name === normaliseName(wanted))) {
    findings.push(notAnOption({ ...when, text: wanted }, choice));
    return true;
  }
  return (of(choice) === normaliseName(wanted)) === (not === undefined);
}
