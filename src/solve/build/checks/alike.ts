import type { Finding } from "../../../findings/finding.ts";

/** More places than these are not shown. */
const SHOWN = 3;

/** The path of a part: `cabinet.left-side`. */
const PATH = /[\p{L}\p{N}_-]+(?:\.[\p{L}\p{N}_-]+)+/gu;

/** Advice in the same words about several parts is told once, at the first, which shows where the others are. */
export function alikeOnce(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<unknown, Finding[]>();
  for (const finding of findings) {
    const { rule, severity, message, label, help } = finding;
    const key = severity === "advice" ? [rule, label, help, message.replaceAll(PATH, "…")].join("\n") : finding;
    const group = groups.get(key);
    if (group) group.push(finding);
    else groups.set(key, [finding]);
  }
  return [...groups.values()].flatMap(([first, ...others]) => {
    if (!first || others.length === 0) return first ?? [];
    const more = others.slice(0, SHOWN).map(({ at }) => ({ at, label: "the same here" }));
    return { ...first, also: [...first.also, ...more] };
  });
}
