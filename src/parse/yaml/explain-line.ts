import type { Finding } from "../../findings/finding.ts";
import { indentation } from "../../findings/rules/indentation.ts";
import { lineWithoutColon } from "../../findings/rules/line-without-colon.ts";
import { spaceAfterColon } from "../../findings/rules/space-after-colon.ts";
import { textWithColon } from "../../findings/rules/text-with-colon.ts";
import type { Places } from "../text/lines.ts";
import { COLON_WITHOUT_SPACE } from "./loose-word.ts";

/**
 * What is wrong with the line at `start`, where the YAML library saw a key that it could not take: a blank missing behind the colon,
 * two colons, no colon, or a line further in than it may be.
 */
export function explainLine(
  code: "MULTILINE_IMPLICIT_KEY" | "BLOCK_AS_IMPLICIT_KEY" | "MISSING_COLON",
  start: number,
  text: string,
  places: Places,
): Finding {
  const begin = text.lastIndexOf("\n", start - 1) + 1;
  const found = text.indexOf("\n", start);
  const end = found < 0 ? text.length : found;
  const from = start + (/^[ \t-]*/.exec(text.slice(start, end))?.[0].length ?? 0);
  const rest = text.slice(from, end).trimEnd();
  const here = places(from, from + rest.length);
  const glued = COLON_WITHOUT_SPACE.exec(rest);
  if (glued !== null) return spaceAfterColon(here, { key: glued[1] ?? "", value: glued[2] ?? "" });
  const key = /^\s*(?:-\s+)?([^:\n]+):\s+$/.exec(text.slice(begin, from))?.[1];
  if (key !== undefined && /:(?:\s|$)/.test(rest)) return textWithColon(here, { key, text: rest.replaceAll('"', "'") });
  if (key !== undefined) {
    // The value ended on its line; what stands further in below it belongs to nothing.
    const below = end + 1;
    const line = /^[^\n]*/.exec(text.slice(below))?.[0] ?? "";
    const lead = line.length - line.trimStart().length;
    return indentation(places(below + lead, below + line.trimEnd().length), {});
  }
  return code === "BLOCK_AS_IMPLICIT_KEY" ? indentation(here, {}) : lineWithoutColon(here, { text: rest });
}
