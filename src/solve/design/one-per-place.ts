import type { Finding } from "../../findings/finding.ts";

/** In the order of the source. Copies of a part repeat its mistakes: what one rule says of one place is told once. */
export function onePerPlace(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  const once = findings.filter((finding) => {
    const mark = `${finding.rule} ${finding.at.start} ${finding.at.end}`;
    if (seen.has(mark)) return false;
    seen.add(mark);
    return true;
  });
  const order = new Map(once.map((finding, i) => [finding, i]));
  return once.toSorted((a, b) => a.at.start - b.at.start || (order.get(a) ?? 0) - (order.get(b) ?? 0));
}
