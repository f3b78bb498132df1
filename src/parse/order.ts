import type { Finding } from "../findings/finding.ts";

/** In the order of the source, what was told twice told once. */
export function byPlace(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  const once = findings.filter((finding) => {
    const mark = `${finding.at.start} ${finding.rule} ${finding.message}`;
    if (seen.has(mark)) return false;
    seen.add(mark);
    return true;
  });
  const order = new Map(once.map((finding, index) => [finding, index]));
  return once.sort((a, b) => a.at.start - b.at.start || (order.get(a) ?? 0) - (order.get(b) ?? 0));
}
