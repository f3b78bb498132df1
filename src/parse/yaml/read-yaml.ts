import { Composer, type Document, Lexer, Parser } from "yaml";
import { failed, type Outcome, outcome } from "../../findings/outcome.ts";
import { nestedTooDeep } from "../../findings/rules/nested-too-deep.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { yamlProblem } from "../../findings/rules/yaml-problem.ts";
import { LIMITS } from "../limits.ts";
import type { Places } from "../text/lines.ts";

type Token = ReturnType<Parser["next"]> extends Generator<infer T> ? T : never;

/** `failsafe` keeps every scalar a text, whatever `%YAML` says; duplicates are found by us, since the library is quadratic there. */
const OPTIONS = { schema: "failsafe", uniqueKeys: false, prettyErrors: false, logLevel: "silent" } as const;

/**
 * Text to YAML documents. Depth and tokens are counted while the library's lexer and parser run, which use an explicit stack;
 * its composer recurses, and must never see a deep source: it can abort the process.
 */
export function readYaml(text: string, places: Places): Outcome<readonly Document.Parsed[]> {
  try {
    const tokens: Token[] = [];
    const parser = new Parser();
    let count = 0;
    for (const lexeme of new Lexer().lex(text)) {
      for (const token of parser.next(lexeme)) tokens.push(token);
      count += 1;
      if (parser.stack.length > LIMITS.nesting.limit) {
        const at = places(parser.offset - 1, parser.offset);
        return failed([nestedTooDeep(at, { limit: LIMITS.nesting.limit })]);
      }
      if (count > LIMITS.tokens.limit)
        return failed([tooMuch(places(parser.offset, parser.offset), { count, ...LIMITS.tokens })]);
    }
    for (const token of parser.end()) tokens.push(token);
    return outcome([...new Composer(OPTIONS).compose(tokens)]);
  } catch (thrown) {
    const reason = thrown instanceof Error ? thrown.message : String(thrown);
    return failed([yamlProblem(places(0, 0), { reason })]);
  }
}
