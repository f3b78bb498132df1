import type { Finding } from "../findings/finding.ts";
import { failed, hasErrors, type Outcome } from "../findings/outcome.ts";
import { lineWithoutColon } from "../findings/rules/line-without-colon.ts";
import { moreThanOneDocument } from "../findings/rules/more-than-one-document.ts";
import { yamlVersion } from "../findings/rules/yaml-version.ts";
import type { Draft } from "./draft.ts";
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
}

/** Text to Draft. There is a value exactly when no finding is an error. Never throws. */
export function parse(source: Source): Outcome<Draft> {
  const { value: text, findings: refused } = readText(source.bytes);
  if (text === undefined) return failed(refused);
  const places = placesOf(text);
  const { document, findings: broken, second } = recover(text, places);
  const findings: Finding[] = [...broken, ...aboutDocuments(text, second, places)];
  if (document === undefined) return failed(byPlace(findings));
  const tree = buildTree(document, text, places, findings);
  const draft = readPlan(tree, text, places, findings);
  const told = byPlace(broken.length === 0 ? findings : findings.filter((each) => !followsFrom(each, text)));
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

function readPlan(tree: Node, text: string, places: Places, findings: Finding[]): Draft | undefined {
  const first = /^[ \t]*[^\s#].*/m.exec(text);
  const begin = first?.index ?? 0;
  const at = places(begin, begin + (first?.[0].trimEnd().length ?? 0));
  if (tree.kind === "text" && !tree.quoted && !tree.text.includes(":")) {
    findings.push(lineWithoutColon(at, { text: first?.[0] ?? "" }));
    return undefined;
  }
  const read = plan.read(tree, { key: "the plan", at, findings, owners });
  return read === undefined ? undefined : toDraft(read, findings);
}

/** Whether something is missed only because the setting that has it could not be read. */
const followsFrom = ({ rule, message }: Finding, text: string): boolean =>
  (rule === "missing-key" && message.startsWith("a plan ")) ||
  (rule === "unknown-anchor" && text.includes(/`(&.*)`/.exec(message)?.[1] ?? "&"));
