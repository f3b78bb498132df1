import type { Finding } from "../findings/finding.ts";
import { andThen, failed, hasErrors, type Outcome } from "../findings/outcome.ts";
import { lineWithoutColon } from "../findings/rules/line-without-colon.ts";
import { moreThanOneDocument } from "../findings/rules/more-than-one-document.ts";
import { yamlVersion } from "../findings/rules/yaml-version.ts";
import type { Span } from "../findings/span.ts";
import type { Draft } from "./draft.ts";
import { includedFiles } from "./expand/include.ts";
import { type Opened, openPlan } from "./expand/index.ts";
import { byPlace } from "./order.ts";
import { owners } from "./owners.ts";
import { plan } from "./schema/plan.ts";
import { type Places, placesOf } from "./text/lines.ts";
import { readText } from "./text/read-text.ts";
import { toDraft } from "./to-draft.ts";
import { buildTree } from "./yaml/build-tree.ts";
import type { Node } from "./yaml/nodes.ts";
import { recover } from "./yaml/recover.ts";

/** A source as it was read: the name that findings print, and its bytes. */
export interface Source {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Files of the plan's folder that it includes, by name; see `includes`. */
  readonly files?: ReadonlyMap<string, Uint8Array>;
}

export interface ParseOptions {
  /** The option asked for in a choice, by the choice's name; the others take their defaults. */
  readonly choose?: ReadonlyMap<string, string>;
}

/** A source as a tree, which may then be opened under several choices. */
export interface Tree {
  readonly node: Node;
  readonly text: string;
  readonly places: Places;
  readonly findings: readonly Finding[];
  /** Whether something could not be read, so that what is missing may only follow from it. */
  readonly broken: boolean;
  readonly files: ReadonlyMap<string, Node>;
}

/** Text to Draft. There is a value exactly when no finding is an error. Never throws. */
export const parse = (source: Source, options: ParseOptions = {}): Outcome<Draft> =>
  andThen(readTree(source), (tree) => draftOf(tree, options));

/** Text to tree. There is a value wherever anything could be read; its findings come with it into the Draft. */
export function readTree(source: Source): Outcome<Tree> {
  const read = readFile(source.bytes);
  if (read.value === undefined) return failed(read.findings);
  const files = new Map<string, Node>();
  const findings = [...read.findings];
  for (const name of includedFiles(read.value.node)) {
    const bytes = source.files?.get(name);
    if (bytes === undefined) continue;
    const file = readFile(bytes, name);
    findings.push(...file.findings);
    if (file.value !== undefined) files.set(name, file.value.node);
  }
  return { value: { ...read.value, findings, files }, findings: [] };
}

/** Without these letters in a text, however they are set apart, it includes nothing; a backslash may stand for any of them. */
const MAY_INCLUDE = /\\|i[\s_-]*n[\s_-]*c[\s_-]*l[\s_-]*u[\s_-]*d[\s_-]*e/i;

/** Names of the files that a source includes. Most include nothing, and need not be read as YAML to know it. */
export function includes({ bytes }: Source): readonly string[] {
  if (!MAY_INCLUDE.test(readText(bytes).value ?? "")) return [];
  const read = readFile(bytes).value;
  return read === undefined ? [] : includedFiles(read.node);
}

export function readFile(bytes: Uint8Array, file?: string): Outcome<Omit<Tree, "files">> {
  const { value: text, findings: refused } = readText(bytes);
  if (text === undefined)
    return failed(file === undefined ? refused : refused.map((each) => ({ ...each, at: { ...each.at, file } })));
  const plain = placesOf(text);
  const places: Places = file === undefined ? plain : (start, end) => ({ ...plain(start, end), file });
  const { document, findings: broken, second } = recover(text, places);
  const findings: Finding[] = [...broken, ...aboutDocuments(text, second, places)];
  if (document === undefined) return failed(byPlace(findings));
  const node = buildTree(document, text, places, findings);
  return { value: { node, text, places, findings, broken: broken.length > 0 }, findings };
}

/** A tree under one choice of options, at its lower height: what `expand` prints. */
export function openTree(tree: Tree, options: ParseOptions, findings: Finding[]): Opened {
  const choose = options.choose ?? new Map();
  return openPlan(tree.node, { choose, files: tree.files, at: beginning(tree), owners }, findings);
}

/** Tree to Draft. */
export function draftOf(tree: Tree, options: ParseOptions): Outcome<Draft> {
  const { text } = tree;
  const findings: Finding[] = [...tree.findings];
  const draft = readPlan(tree, options, findings);
  const told = byPlace(tree.broken ? findings.filter((each) => !followsFrom(each, text)) : findings);
  return draft === undefined || hasErrors(told) ? failed(told) : { value: draft, findings: told };
}

function aboutDocuments(text: string, second: number | undefined, places: Places): Finding[] {
  const found: Finding[] = [];
  const version = /^%YAML[ \t]+(\S+)/m.exec(text);
  if (version?.[1] !== undefined && version[1] !== "1.2")
    found.push(yamlVersion(places(version.index, version.index + version[0].length), { version: version[1] }));
  if (second !== undefined) found.push(moreThanOneDocument(places(second, second + 1), {}));
  return found;
}

const FIRST = /^[ \t]*[^\s#].*/m;

/** The first line that says anything. */
function beginning({ text, places }: Tree): Span {
  const first = FIRST.exec(text);
  const begin = first?.index ?? 0;
  return places(begin, begin + (first?.[0].trimEnd().length ?? 0));
}

function readPlan(tree: Tree, options: ParseOptions, findings: Finding[]): Draft | undefined {
  const { node, text } = tree;
  const at = beginning(tree);
  if (node.kind === "text" && !node.quoted && !node.text.includes(":")) {
    findings.push(lineWithoutColon(at, { text: FIRST.exec(text)?.[0] ?? "" }));
    return undefined;
  }
  const opened = openTree(tree, options, findings);
  const read = plan.read(opened.tree, { key: "the plan", at, findings, owners });
  return read === undefined ? undefined : toDraft(read, opened, findings);
}

/** Whether something is missed only because the setting that has it could not be read. */
const followsFrom = ({ rule, message }: Finding, text: string): boolean =>
  (rule === "missing-key" && message.startsWith("a plan ")) ||
  (rule === "unknown-anchor" && text.includes(/`(&.*)`/.exec(message)?.[1] ?? "&"));
