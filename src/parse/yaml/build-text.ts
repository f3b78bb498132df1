import type { Scalar } from "yaml";
import { hashStartsComment } from "../../findings/rules/hash-starts-comment.ts";
import type { Span } from "../../findings/span.ts";
import type { Builder } from "./builder.ts";
import type { TextNode } from "./nodes.ts";
import { scalarOffsets } from "./scalar-places.ts";

/** A scalar as text, with the place of every character in it worked out when somebody asks. */
export function buildText(builder: Builder, scalar: Scalar, at: Span, via: Span | undefined): TextNode {
  const { text, places } = builder;
  const value = String(scalar.value);
  const plain = scalar.type === "PLAIN";
  const raw = text.slice(at.start, at.end);
  let offsets: readonly number[] | undefined;
  const offset = (index: number): number => {
    if (raw === value) return at.start + index;
    offsets ??= scalarOffsets(raw, value, at.start);
    return offsets[Math.min(Math.max(index, 0), value.length)] ?? at.end;
  };
  const comment = plain ? /^[ \t]+#[\p{L}\p{N}]\S*/u.exec(text.slice(at.end, at.end + 40)) : null;
  if (comment !== null && via === undefined) {
    const end = at.end + comment[0].length;
    const start = end - comment[0].trimStart().length;
    builder.findings.push(hashStartsComment(places(start, end), { text: `${value} ${comment[0].trim()}` }));
  }
  return {
    kind: "text",
    at,
    text: value,
    quoted: !plain,
    place: (start, end) => places(offset(start), end > start ? offset(end - 1) + 1 : offset(start)),
    ...(via ? { via } : {}),
  };
}
