import type { Described } from "./kinds/kind.ts";
import { squash } from "./names.ts";
import { plan } from "./schema/plan.ts";

/** Every kind of settings of the language, the plan first, each once. */
export function allSettings(): readonly Described[] {
  const found = new Set<Described>();
  const waiting: Described[] = [...(plan.inside ?? [])];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (found.has(next)) continue;
    found.add(next);
    for (const key of Object.values(next.keys)) waiting.push(...(key.kind.inside ?? []));
  }
  return [...found];
}

const OWNERS = new Map<string, string[]>();
for (const { what, keys } of allSettings())
  for (const [name, { also }] of Object.entries(keys))
    for (const word of [name, ...also].map(squash)) OWNERS.set(word, [...(OWNERS.get(word) ?? []), what]);

/** What has a setting of this squashed name: "a part", "a joint". */
export const owners = (key: string): readonly string[] => [...new Set(OWNERS.get(key))];
