import type { Document, YAMLError } from "yaml";
import type { Finding } from "../../findings/finding.ts";
import { dashBeforeMeasure } from "../../findings/rules/dash-before-measure.ts";
import { indentation } from "../../findings/rules/indentation.ts";
import { needsQuotes } from "../../findings/rules/needs-quotes.ts";
import { quotesCloseEarly } from "../../findings/rules/quotes-close-early.ts";
import { tabIndent } from "../../findings/rules/tab-indent.ts";
import { yamlProblem } from "../../findings/rules/yaml-problem.ts";
import { LIMITS } from "../limits.ts";
import type { Places } from "../text/lines.ts";
import { explainLine } from "./explain-line.ts";
import { explainOpen } from "./explain-open.ts";

/** Mistakes that do not hide what follows them: told even when they are not the first. */
const LOCAL: ReadonlySet<string> = new Set(["tab-indent", "space-after-colon", "text-with-colon", "needs-quotes"]);
/** Mistakes that take in all that follows. */
const SWALLOWING: ReadonlySet<string> = new Set(["quotes-not-closed", "bracket-not-closed"]);

/**
 * The YAML library's errors in words of ours: the first, and those later ones that are mistakes of their own line.
 * What cannot be named better is told as it stands.
 */
export function explainErrors(document: Document.Parsed, text: string, places: Places): readonly Finding[] {
  const found: Finding[] = [];
  const lines = new Set<number>();
  const sorted = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0]);
  for (const error of sorted.slice(0, LIMITS.syntaxFindings.limit)) {
    const finding = explain(error, document, text, places);
    if (lines.has(finding.at.line) || (found.length > 0 && !LOCAL.has(finding.rule))) continue;
    lines.add(finding.at.line);
    found.push(finding);
    if (SWALLOWING.has(finding.rule)) break;
  }
  return found;
}

function explain(error: YAMLError, document: Document.Parsed, text: string, places: Places): Finding {
  const [start, end] = error.pos;
  const here = places(start, Math.max(end, start + 1));
  const found = text.slice(start, end);
  const open = explainOpen(error, document, places);
  if (open !== undefined) return open;
  switch (error.code) {
    case "TAB_AS_INDENT":
      return tabIndent(places(start, start + 1), {});
    case "BAD_SCALAR_START":
      return needsQuotes(places(start, start + 1), { sign: found });
    case "MULTILINE_IMPLICIT_KEY":
      return dash(start, text, places) ?? explainLine(error.code, start, text, places);
    case "BLOCK_AS_IMPLICIT_KEY":
      return explainLine(error.code, start, text, places);
    case "BLOCK_IN_FLOW":
      return dash(start, text, places) ?? yamlProblem(here, COMMAS);
    case "UNEXPECTED_TOKEN":
      return dash(start, text, places) ?? unexpected(start, end, text, places);
    case "MISSING_CHAR":
      return missing(error, text, places);
    case "BAD_INDENT":
      return indentation(places(...lineAt(text, start)), {});
    default:
      return yamlProblem(here, OTHERS.get(error.code) ?? { reason: "it is not YAML" });
  }
}

const COMMAS = {
  reason: "entries in brackets are parted by commas",
  help: "write a comma, or use lines and no brackets",
};
const OTHERS: ReadonlyMap<string, { reason: string; help?: string }> = new Map([
  ["ALIAS_PROPS", { reason: "a `*name` cannot have a name of its own", help: "take one of the two out" }],
  ["BAD_ALIAS", { reason: "a name is missing", help: "write `*name`, or put the text in quotes" }],
  ["BAD_DIRECTIVE", { reason: "a line that begins with % means something else", help: "take the line out" }],
  ["BAD_DQ_ESCAPE", { reason: "a backslash in double quotes means something else", help: "use single quotes" }],
  ["BAD_PROP_ORDER", { reason: "a `&name` stands right before its value", help: "put it there" }],
  ["KEY_OVER_1024_CHARS", { reason: "the name of a setting is far too long", help: "write a shorter one" }],
  ["MULTIPLE_ANCHORS", { reason: "a value can have one `&name` only", help: "keep one of them" }],
  ["MULTIPLE_TAGS", { reason: "a value can have one word with an exclamation mark only", help: "take them out" }],
]);

/** The text of the line that holds `offset`, without the blanks before it. */
export function lineAt(text: string, offset: number): [start: number, end: number] {
  const begin = text.lastIndexOf("\n", offset - 1) + 1;
  const found = text.indexOf("\n", offset);
  const end = found < 0 ? text.length : found;
  const blanks = /^[ \t]*/.exec(text.slice(begin, end))?.[0].length ?? 0;
  return [Math.min(begin + blanks, end), end];
}

/** A dash and a blank where a value is wanted. */
function dash(start: number, text: string, places: Places): Finding | undefined {
  const from = text.charAt(start) === "-" ? start : text.lastIndexOf("-", start);
  const rest = /^-[ \t]+([^,\]}\n]*)/.exec(text.slice(Math.max(from, 0), from + 60));
  const [line] = lineAt(text, start);
  if (rest === null || from <= line) return undefined;
  return dashBeforeMeasure(places(from, from + 1), { text: (rest[1] ?? "").trim() });
}

function unexpected(start: number, end: number, text: string, places: Places): Finding {
  const [line, lineEnd] = lineAt(text, start);
  const before = text.slice(line, start);
  const quoted = /(?:^|[:,[{-]\s+)((["']).*["']\s*)$/.exec(before);
  const here = places(start, Math.max(end, start + 1));
  if (quoted !== null) {
    const all = `${quoted[1] ?? ""}${text.slice(start, lineEnd)}`.trim();
    return quotesCloseEarly(here, { text: requoted(all, quoted[2] ?? '"') });
  }
  const sign = text.charAt(start);
  if ("]}".includes(sign))
    return yamlProblem(here, { reason: `no bracket is open that ${sign} could close`, help: "take it out" });
  if (sign === ",") return yamlProblem(here, { reason: "two commas with nothing between them", help: "take one out" });
  if (start === line) return indentation(places(line, lineEnd), {});
  return yamlProblem(here, { reason: "the value has ended before this", help: "put the whole value in quotes" });
}

/** The whole text in one pair of quotes: of the other kind where it holds this one inside. */
function requoted(text: string, quote: string): string {
  const inside = text.slice(1, text.endsWith(quote) ? -1 : undefined);
  const other = quote === '"' ? "'" : '"';
  if (text.endsWith(quote) && !inside.includes(other)) return `${other}${inside}${other}`;
  return `"${text.replaceAll(quote, "").replaceAll('"', "")}"`;
}

function missing(error: YAMLError, text: string, places: Places): Finding {
  const [start] = error.pos;
  if (error.message.includes("- indicator"))
    return yamlProblem(places(...lineAt(text, start)), {
      reason: "a blank is missing behind the dash",
      help: "write `- `",
    });
  if (error.message.includes("Missing ,"))
    return yamlProblem(places(...error.pos), { reason: "a comma is missing before this", help: "write one" });
  return explainLine("MISSING_COLON", start, text, places);
}
