import type { Finding } from "../../../findings/finding.ts";
import { circle } from "../../../findings/rules/circle.ts";
import type { Span } from "../../../findings/span.ts";
import type { Axis } from "../../../parse/draft.ts";

/** Values that are worked out when first asked for, once, in whatever order they need each other. */
export interface Cells {
  /**
   * The value called `key`, computed by `compute` the first time. `label` and `at` name it for the maker.
   * Null means that it could not be worked out and that the maker has been told why.
   */
  get<T>(key: string, label: string, at: Span, compute: () => T | null, about?: About): T | null;
}

/** What a value says of the place of a thing, by the maker's name for that. */
export interface About {
  readonly thing: string;
  readonly axis: Axis;
  /** Words of the maker's by which it lies at something else, and formulas that name something. */
  readonly links: readonly Link[];
  readonly formulas: readonly Link[];
}

/** A word such as `on` or `front`, by which something takes its place from something else, and what says it. */
export interface Link {
  readonly word: string;
  readonly of: string;
  readonly at: Span;
}

interface Busy {
  readonly about: About | undefined;
  readonly key: string;
  readonly label: string;
  readonly at: Span;
}

/** Who needs whom, and in which direction where it is one: each thing once, what an assembly makes of itself left out. */
function inMakersWords(ring: readonly Busy[]): { readonly names: readonly string[]; readonly axis: Axis | null } {
  const all = ring.map(({ about, label }) => about?.thing ?? label);
  const names = all.filter((name, i) => name !== all[(i + all.length - 1) % all.length]);
  if (names.length < 2) return { names: ring.map(({ label }) => label), axis: null };
  const axes = new Set(ring.map(({ about }) => about?.axis ?? null));
  return { names, axis: axes.size === 1 ? ([...axes][0] ?? null) : null };
}

export function createCells(report: (finding: Finding) => void): Cells {
  const known = new Map<string, unknown>();
  const busy: Busy[] = [];
  return {
    get<T>(key: string, label: string, at: Span, compute: () => T | null, about?: About): T | null {
      if (known.has(key)) return known.get(key) as T | null;
      const start = busy.findIndex((b) => b.key === key);
      if (start >= 0) {
        const ring = busy.slice(start);
        // Told once, at whichever member stands first in the source, however the circle was entered.
        const first = ring.reduce((a, b) => (b.at.start < a.at.start ? b : a));
        const turned = [...ring.slice(ring.indexOf(first)), ...ring.slice(0, ring.indexOf(first))];
        const said = turned.flatMap(({ about }) => about?.links ?? []);
        const links = said.length > 0 ? said : turned.flatMap(({ about }) => about?.formulas ?? []);
        const [begins, ...others] = links.length > 0 ? links : turned;
        report(
          circle(
            begins?.at ?? first.at,
            { ...inMakersWords(turned), links },
            { also: others.map((b) => ({ at: b.at, label: "this needs it in turn" })) },
          ),
        );
        return null;
      }
      busy.push({ key, label, at, about });
      const value = compute();
      busy.pop();
      known.set(key, value);
      return value;
    },
  };
}
