import {
  type Document,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  type YAMLError,
  type Node as YamlNode,
} from "yaml";
import type { Finding } from "../../findings/finding.ts";
import { bracketNotClosed } from "../../findings/rules/bracket-not-closed.ts";
import { quotesNotClosed } from "../../findings/rules/quotes-not-closed.ts";
import type { Places } from "../text/lines.ts";

/** A bracket or quotation mark that is opened and never closed, told where it is opened; undefined for any other error. */
export function explainOpen(error: YAMLError, document: Document.Parsed, places: Places): Finding | undefined {
  const [offset] = error.pos;
  const quote = /closing (["'])quote/.exec(error.message)?.[1];
  const closing = /^Flow (?:sequence|map) .* end with a ([\]}])$/.exec(error.message)?.[1];
  if (quote === undefined && closing === undefined) return undefined;
  const open = [...nodes(document.contents)].find(
    (node) =>
      node.range != null &&
      node.range[1] >= offset &&
      (quote === undefined
        ? isCollection(node) && node.flow === true && isMap(node) === (closing === "}")
        : isScalar(node) && node.type?.startsWith("QUOTE") === true),
  );
  const start = open?.range?.[0] ?? offset;
  const at = places(start, start + 1);
  if (quote !== undefined) return quotesNotClosed(at, { quote });
  return bracketNotClosed(at, closing === "]" ? { bracket: "[", closing } : { bracket: "{", closing: "}" });
}

/** A node and all nodes in it, in the order of the source. */
function* nodes(node: unknown): Generator<YamlNode> {
  if (!isNode(node)) return;
  yield node;
  if (!isCollection(node)) return;
  for (const item of node.items) {
    yield* nodes(isPair(item) ? item.key : item);
    if (isPair(item)) yield* nodes(item.value);
  }
}
