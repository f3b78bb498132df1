import type { Finding } from "../findings/finding.ts";
import { failed, hasErrors, type Outcome } from "../findings/outcome.ts";
import { moreThanOneDocument } from "../findings/rules/more-than-one-document.ts";
import type { Draft } from "./draft.ts";
import { byPlace } from "./order.ts";
import { owners } from "./owners.ts";
import { plan } from "./schema/plan.ts";
import { placesOf } from "./text/lines.ts";
import { readText } from "./text/read-text.ts";
import { toDraft } from "./to-draft.ts";
import { buildTree } from "./yaml/build-tree.ts";
import { explainYaml } from "./yaml/explain-error.ts";
import { readYaml } from "./yaml/read-yaml.ts";

/** A source as it was read: the name that findings print, and its bytes. */
export interface Source {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Text to Draft. There is a value exactly when no finding is an error. Never throws. */
export function parse(source: Source): Outcome<Draft> {
  const text = readText(source.bytes);
  if (text.value === undefined) return failed(text.findings);
  const places = placesOf(text.value);
  const yaml = readYaml(text.value, places);
  if (yaml.value === undefined) return failed(yaml.findings);
  const [document, second] = yaml.value.documents;
  if (document === undefined) return failed([]);
  const findings: Finding[] = [];
  if (second !== undefined) {
    const start = second.range?.[0] ?? 0;
    findings.push(moreThanOneDocument(places(start, start + 1), {}));
  }
  const broken = explainYaml(document, text.value, places);
  if (broken.length > 0) return failed(byPlace([...findings, ...broken]));
  const tree = buildTree(document, text.value, places, findings);
  const top = places(0, Math.max(text.value.indexOf("\n"), 0));
  const read = plan.read(tree, { key: "the plan", at: top, findings, owners });
  const draft = read === undefined ? undefined : toDraft(read, findings);
  const sorted = byPlace(findings);
  return draft === undefined || hasErrors(sorted) ? failed(sorted) : { value: draft, findings: sorted };
}
