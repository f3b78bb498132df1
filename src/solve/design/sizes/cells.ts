import type { Finding } from "../../../findings/finding.ts";
import { circle } from "../../../findings/rules/circle.ts";
import type { Span } from "../../../findings/span.ts";

/** Values that are worked out when first asked for, once, in whatever order they need each other. */
export interface Cells {
  /**
   * The value called `key`, computed by `compute` the first time. `label` and `at` name it for the maker.
   * Null means that it could not be worked out and that the maker has been told why.
   */
  get<T>(key: string, label: string, at: Span, compute: () => T | null, link?: Link | undefined): T | null;
}

/** A word such as `on`, by which something takes its place from something else, and what says it. */
export interface Link {
  readonly word: string;
  readonly of: string;
  readonly at: Span;
}

interface Busy {
  readonly link: Link | undefined;
  readonly key: string;
  readonly label: string;
  readonly at: Span;
}

export function createCells(report: (finding: Finding) => void): Cells {
  const known = new Map<string, unknown>();
  const busy: Busy[] = [];
  return {
    get<T>(key: string, label: string, at: Span, compute: () => T | null, link?: Link): T | null {
      if (known.has(key)) return known.get(key) as T | null;
      const start = busy.findIndex((b) => b.key === key);
      if (start >= 0) {
        const ring = busy.slice(start);
        // Told once, at whichever member stands first in the source, however the circle was entered.
        const first = ring.reduce((a, b) => (b.at.start < a.at.start ? b : a));
        const turned = [...ring.slice(ring.indexOf(first)), ...ring.slice(0, ring.indexOf(first))];
        const links = turned.flatMap(({ link }) => link ?? []);
        const [begins, ...others] = links.length > 0 ? links : turned;
        report(
          circle(
            begins?.at ?? first.at,
            { names: turned.map((b) => b.label), links },
            { also: others.map((b) => ({ at: b.at, label: "this needs it in turn" })) },
          ),
        );
        return null;
      }
      busy.push({ key, label, at, link });
      const value = compute();
      busy.pop();
      known.set(key, value);
      return value;
    },
  };
}
