import type { Outcome } from "../../findings/outcome.ts";
import type { Build } from "../build.ts";

/** What a copy of a plan is counted by, each with a number or a few words: what is sold, driven and cut. */
export type Facts = ReadonlyMap<string, string>;

/** Of a plan that cannot be built: that, and why. */
export const REFUSED = "this plan";

export function factsOf({ value, findings }: Outcome<Build>): Facts {
  if (!value) {
    const rules = findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule);
    return new Map([[REFUSED, `cannot be built (${[...new Set(rules)].sort().join(", ")})`]]);
  }
  const counts = new Map<string, number>();
  const count = (name: string, by: number): unknown => counts.set(name, (counts.get(name) ?? 0) + by);
  for (const { stock, parts } of value.cutList) count(`parts of ${stock}`, parts.length);
  for (const { item } of value.fasteners) count(item, 1);
  for (const { section, item, quantity, unit } of value.purchases)
    if (section !== "fasteners") count(`to buy: ${item} (${unit})`, quantity);
  return new Map([...counts].map(([name, number]) => [name, String(number)]));
}
