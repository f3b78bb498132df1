import type { Finding } from "../../findings/finding.ts";
import type { Draft } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { checkedOf, judge } from "../build/index.ts";
import type { Check } from "../build.ts";
import { type DesignOptions, design } from "../design/index.ts";
import { atThicknesses } from "../design/measured.ts";
import type { Design } from "../design.ts";

/** Thickness by the name of a stock; stock that is not named has that for which the plan is drawn. */
export type Thicknesses = ReadonlyMap<string, Length>;

/** The plan as it comes out at other thicknesses. Each is solved once. */
export interface SolvedAt {
  /** Null where it cannot be made. */
  readonly design: (thicknesses: Thicknesses) => Design | null;
  /** Of the design and of the build. */
  readonly findings: (thicknesses: Thicknesses) => readonly Finding[];
  /** None where it cannot be made. */
  readonly checks: (thicknesses: Thicknesses) => readonly Check[];
}

export function solvedAt(draft: Draft, options: DesignOptions): SolvedAt {
  const designs = remembered((at) => design(atThicknesses(draft, at), options));
  const judged = remembered((at) => {
    const { value, findings } = designs(at);
    return value ? [...findings, ...judge(value)] : findings;
  });
  return {
    design: (at) => designs(at).value ?? null,
    findings: judged,
    checks: (at) => {
      const { value } = designs(at);
      return (value && checkedOf(value)?.checks) ?? [];
    },
  };
}

function remembered<T>(make: (at: Thicknesses) => T): (at: Thicknesses) => T {
  const made = new Map<string, T>();
  return (at) => {
    const key = JSON.stringify([...at].map(([name, { n, d }]) => [name, String(n), String(d)]));
    const value = made.get(key) ?? make(at);
    made.set(key, value);
    return value;
  };
}
