import type { Finding } from "../../findings/finding.ts";
import { bareWordInBraces } from "../../findings/rules/bare-word-in-braces.ts";
import { commaInBraces } from "../../findings/rules/comma-in-braces.ts";
import { decimalComma } from "../../findings/rules/decimal-comma.ts";
import { spaceAfterColon } from "../../findings/rules/space-after-colon.ts";
import type { Builder } from "./builder.ts";
import type { Entry, TextNode } from "./nodes.ts";

/** `a:12`, but not `12:30` or an address. */
export const COLON_WITHOUT_SPACE = /^([\p{L}][\p{L}\p{N} -]*):(?!\/\/)(\S.*)$/u;

/** What stands behind the colon, up to the next `b:12` of a line below that was read as one with it. */
export const gluedValue = (text: string): string => text.replace(/\s+[\p{L}]\S*:\S.*$/u, "");

/** A word between commas in braces with no colon behind it: what the maker most likely meant. */
export function looseWord(builder: Builder, word: TextNode, before: Entry | undefined): Finding {
  const glued = COLON_WITHOUT_SPACE.exec(word.text);
  if (glued !== null) return spaceAfterColon(word.at, { key: glued[1] ?? "", value: glued[2] ?? "" });
  if (before?.value.kind !== "text" || before.value.quoted) return bareWordInBraces(word.at, { word: word.text });
  const at = builder.places(before.value.at.start, word.at.end);
  const text = before.value.text;
  if (/\d$/.test(text) && /^\d/.test(word.text)) return decimalComma(at, { text: `${text},${word.text}` });
  return commaInBraces(at, { key: before.key.text, text: `${text}, ${word.text}` });
}
