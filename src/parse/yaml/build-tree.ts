import { type Alias, type Document, isAlias, isMap, isScalar, isSeq, type Node as YamlNode } from "yaml";
import type { Finding } from "../../findings/finding.ts";
import { anchorCircle } from "../../findings/rules/anchor-circle.ts";
import { nestedTooDeep } from "../../findings/rules/nested-too-deep.ts";
import { textTooLong } from "../../findings/rules/text-too-long.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { unknownAnchor } from "../../findings/rules/unknown-anchor.ts";
import { yamlTag } from "../../findings/rules/yaml-tag.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import { LIMITS } from "../limits.ts";
import type { Places } from "../text/lines.ts";
import { buildMap } from "./build-map.ts";
import { buildText } from "./build-text.ts";
import type { Builder } from "./builder.ts";
import type { EmptyNode, ListNode, Node } from "./nodes.ts";

const empty = (at: Span, via: Span | undefined): EmptyNode => ({ kind: "empty", at, ...(via ? { via } : {}) });

/** The document as a tree of our own: anchors followed, merges done, every visit counted. */
export function buildTree(document: Document.Parsed, text: string, places: Places, findings: Finding[]): Node {
  const builder: Builder = {
    ...{ text, places, findings, visited: 0, full: false },
    ...{ anchors: new Map(), meant: new Map(), open: [] },
    build: (node, at, via) => buildNode(builder, node, at, via),
  };
  return builder.build(document.contents, places(0, 0), undefined);
}

/** `at` is where the node would stand if there is none. `via` is the use of the anchor that led here. */
function buildNode(builder: Builder, node: YamlNode | null, at: Span, via: Span | undefined): Node {
  if (node === null || builder.full) return empty(at, via);
  const [start = at.start, end = at.end] = node.range ?? [];
  const here = builder.places(start, end);
  builder.visited += 1;
  if (builder.visited > LIMITS.nodes.limit) {
    builder.full = true;
    builder.findings.push(tooMuch(via ?? here, { count: builder.visited, ...LIMITS.nodes }));
    return empty(here, via);
  }
  if (isAlias(node)) return buildAlias(builder, node, here, via);
  if ("tag" in node && node.tag !== undefined && via === undefined) tellTag(builder, start);
  if (node.anchor !== undefined && via === undefined) builder.anchors.set(node.anchor, node);
  builder.open.push(node);
  const built = buildContents(builder, node, here, via);
  builder.open.pop();
  return built;
}

/** The word with an exclamation mark before the value that begins at `start`, as it was written. */
function tellTag(builder: Builder, start: number): void {
  const before = builder.text.slice(Math.max(start - 200, 0), start);
  const tag = /(![^\s,[\]{}]*)\s*(?:&\S+\s*)?$/.exec(before);
  const from = start - before.length + (tag?.index ?? 0);
  const at = builder.places(from, from + (tag?.[1]?.length ?? 1));
  builder.findings.push(yamlTag(at, { tag: tag?.[1] ?? "!" }));
}

function buildContents(builder: Builder, node: YamlNode, here: Span, via: Span | undefined): Node {
  if (isMap(node)) return buildMap(builder, node, here, via);
  if (isSeq(node)) {
    const items = node.items.map((item) => builder.build(item as YamlNode | null, here, via));
    return { kind: "list", at: here, items, flow: node.flow === true, ...(via ? { via } : {}) } satisfies ListNode;
  }
  if (!isScalar(node)) return empty(here, via);
  if (node.type === "PLAIN" && node.source === "") return empty(here, via);
  const value = String(node.value);
  if (value.length > LIMITS.textLength.limit) {
    const { limit } = LIMITS.textLength;
    builder.findings.push(textTooLong(builder.places(here.start, here.start + 1), { count: value.length, limit }));
    return empty(here, via);
  }
  return buildText(builder, node, here, via);
}

/** What an alias means is settled where it first stands; the limit on nesting holds through aliases too. */
function buildAlias(builder: Builder, alias: Alias, here: Span, via: Span | undefined): Node {
  if (!builder.meant.has(alias)) builder.meant.set(alias, builder.anchors.get(alias.source));
  const target = builder.meant.get(alias);
  if (target === undefined) {
    const near = nearest(alias.source, [...builder.anchors.keys()]);
    builder.findings.push(unknownAnchor(here, { name: alias.source, near }));
    return empty(here, via);
  }
  if (builder.open.length > LIMITS.nesting.limit) {
    builder.findings.push(nestedTooDeep(here, { limit: LIMITS.nesting.limit }));
    return empty(here, via);
  }
  if (builder.open.includes(target)) {
    const [start = here.start] = target.range ?? [];
    const also = [{ at: builder.places(start, start + 1), label: "which begins here" }];
    builder.findings.push(anchorCircle(here, { name: alias.source }, { also }));
    return empty(here, via);
  }
  return builder.build(target, here, via ?? here);
}
