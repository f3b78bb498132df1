import { shorten } from "./shorten.ts";
import type { Span } from "./span.ts";

export type Severity = "error" | "warning" | "advice";

/** Something to tell the maker. Data only: `print/` turns it into text. */
export interface Finding {
  /** Name in the catalogue, such as `unknown-key`. */
  readonly rule: string;
  readonly severity: Severity;
  /** The smallest text that shows it. */
  readonly at: Span;
  /** Beside the pointer, at most 40 characters. */
  readonly label: string;
  /** What is wrong. Stands alone, gives no advice. */
  readonly message: string;
  readonly why?: string;
  /** What to write or do, in the imperative. */
  readonly help?: string;
  /** Other places that belong to it. */
  readonly also: readonly { readonly at: Span; readonly label: string }[];
  /** The thicknesses at which it is so, where it is not so at that for which the plan is drawn: "11/16 in or less". The message says them too. */
  readonly where?: readonly { readonly stock: string; readonly measures: string }[];
  /** An edit that mends it. */
  readonly fix?: { readonly at: Span; readonly insert: string };
  /** The options under which alone it appears, by choice, several of one joined by "or"; absent: under those asked for. */
  readonly when?: ReadonlyMap<string, string>;
}

/** "when wood is painted and back is plywood"; undefined for a finding under the options asked for. */
export const whenOf = ({ when }: Finding): string | undefined =>
  when && `when ${[...when].map(([choice, option]) => `${choice} is ${option}`).join(" and ")}`;

/** One entry of the catalogue: the words of a finding, its explanation, and an example either way. */
export interface RuleText<A> {
  readonly name: string;
  readonly severity: Severity;
  readonly message: (args: A) => string;
  readonly label?: (args: A) => string;
  readonly why?: (args: A) => string | undefined;
  readonly help?: (args: A) => string | undefined;
  /** Markdown: what it is about, why it matters, what to do. */
  readonly explain: string;
  /** A complete source that gives this finding, and one that does not. Both are compiled in the tests. */
  readonly wrong: string;
  readonly right: string;
  /** Settings (`--set`) with which `wrong` is compiled, where the mistake is one of them. */
  readonly wrongSettings?: readonly (readonly [string, string])[];
  /** Thicknesses (`--measured`) with which `wrong` is compiled, where the mistake is one of them. */
  readonly wrongMeasured?: readonly (readonly [string, string])[];
  /** Where the rule comes from: "the language", a published source, or "common practice, no source". */
  readonly basis: string;
}

export interface Rule<A> extends RuleText<A> {
  (at: Span, args: A, more?: Pick<Partial<Finding>, "also" | "fix" | "severity">): Finding;
}

/** Makes a catalogue entry callable: `unknownKey(span, { key: "grian" })` is a finding. */
export function rule<A>(text: RuleText<A>): Rule<A> {
  const make = (at: Span, args: A, more: Pick<Partial<Finding>, "also" | "fix" | "severity"> = {}): Finding => {
    const why = text.why?.(args);
    const help = text.help?.(args);
    return {
      rule: text.name,
      severity: more.severity ?? text.severity,
      at,
      label: shorten(text.label?.(args) ?? "", 40),
      message: text.message(args),
      ...(why === undefined ? {} : { why }),
      ...(help === undefined ? {} : { help }),
      also: more.also ?? [],
      ...(more.fix === undefined ? {} : { fix: more.fix }),
    };
  };
  const { name, ...rest } = text;
  Object.defineProperty(make, "name", { value: name });
  return Object.assign(make, rest) as unknown as Rule<A>;
}
