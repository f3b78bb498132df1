/** Which stations become a chain of dimensions, and what is written in it. */
import { compare, equal, type Length, subtract, toNumber } from "../../../units/index.ts";
import { MATTERS, type Station } from "./stations.ts";

/** One dimension of a chain; `text` is what is printed. */
export interface Span {
  readonly from: Length;
  readonly to: Length;
  readonly text: string;
}

export interface ChainRules {
  /** Points on paper for each unit. */
  readonly scale: number;
  /** Two places nearer to each other on paper cannot both have a line. */
  readonly gap: number;
  /** Which face of a thin part counts where both cannot: the low one or the high one. */
  readonly face: "low" | "high";
  readonly print: (length: Length) => string;
}

const MOST = 7;

/** The stations that a chain from `low` to `high` stops at, sorted; without its two ends. */
export function chosen(
  all: readonly Station[],
  low: Length,
  high: Length,
  { scale, gap, face }: ChainRules,
): readonly Station[] {
  const toward = face === "low" ? 1 : -1;
  // In tenths: lines of about the same length matter alike, and the face decides.
  const rank = (s: Station) => Math.round(s.weight * 10);
  const order = all
    .filter((s) => s.weight >= MATTERS)
    .sort((a, b) => rank(b) - rank(a) || toward * compare(a.at, b.at));
  const taken = [toNumber(low), toNumber(high)];
  const out: Station[] = [];
  for (const station of order) {
    const at = toNumber(station.at);
    if (at < (taken[0] ?? 0) || at > (taken[1] ?? 0)) continue;
    if (taken.some((other) => Math.abs(other - at) * scale < gap)) continue;
    taken.push(at);
    out.push(station);
  }
  while (
    spans(
      out.map((s) => s.at),
      low,
      high,
      String,
    ).length > MOST
  )
    out.pop();
  return out.sort((a, b) => compare(a.at, b.at));
}

/** The dimensions between the stops; three or more alike in a row become one, "5 × 3 1/2". */
export function spans(
  stops: readonly Length[],
  low: Length,
  high: Length,
  print: (length: Length) => string,
): readonly Span[] {
  const all = [low, ...[...stops].sort(compare), high];
  const single = all.slice(1).map((to, i) => ({ from: all[i] ?? low, to, size: subtract(to, all[i] ?? low) }));
  const out: Span[] = [];
  for (let i = 0; i < single.length; ) {
    const first = single[i];
    if (!first) break;
    let end = i + 1;
    while (end < single.length && equal(single[end]?.size ?? first.from, first.size)) end++;
    if (end - i >= 3) {
      out.push({ from: first.from, to: single[end - 1]?.to ?? first.to, text: `${end - i} × ${print(first.size)}` });
      i = end;
    } else {
      out.push({ from: first.from, to: first.to, text: print(first.size) });
      i++;
    }
  }
  return out;
}
