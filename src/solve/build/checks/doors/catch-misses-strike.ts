import { catchMissesStrike } from "../../../../findings/rules/catch-misses-strike.ts";
import { UNITS_PER_MM } from "../../../../units/length.ts";
import { rational } from "../../../../units/rational.ts";
import { indexOf } from "../../../design/space.ts";
import type { Checked, Rule, Verdict } from "../check.ts";
import { around } from "../standing/weight-and-feet.ts";

/** How much of a catch lies before its strike, as a share of the smaller of the two. Common practice, no source. */
const LEAST = 0.5;

interface Met {
  readonly id: string;
  /** What carries the body, and what carries the strike. */
  readonly on: string;
  readonly door: string;
  readonly share: number;
  /** What is open between the two, mm; zero or less where they lie before each other. */
  readonly apart: number;
}

/** How far the bodies of catches lie before their strikes, seen along the way that the door shuts. */
export function catchesMet({ design, hardware }: Checked): readonly Met[] {
  return hardware.flatMap(({ item, carriedBy, solid, halfOf }): readonly Met[] => {
    const body = item.kind === "catch" && hardware.find((each) => each.id === halfOf);
    const door = design.parts.find((part) => part.id === carriedBy);
    if (!body || !door) return [];
    const [a, b] = [around([body.solid]), around([solid])];
    const across = ([0, 1, 2] as const).filter((i) => i !== indexOf(door.axes.thickness));
    const shared = across.map((i) => Math.min(a.high[i], b.high[i]) - Math.max(a.low[i], b.low[i]));
    const shares = across.map((i, k) => (shared[k] ?? 0) / Math.min(a.high[i] - a.low[i], b.high[i] - b.low[i]));
    const apart = -Math.min(...shared);
    return [{ id: body.id, on: body.carriedBy, door: door.id, share: Math.min(...shares), apart }];
  });
}

export const isMet = ({ share }: Met): boolean => share >= LEAST - 1e-9;

/** A catch holds what comes before it: its strike. */
export const catchMissesStrikeRule: Rule = (checked) =>
  catchesMet(checked).map((met): Verdict => {
    const check = {
      ...{ rule: "catch-misses-strike", subject: met.id, value: Math.max(0, met.share), limit: LEAST },
      ...{ unit: "of the smaller", basis: "geometry; the share is common practice, no source" },
    };
    if (isMet(met)) return { check: { ...check, verdict: "holds" } };
    const fitting = checked.design.fittings.find(({ hardware }) => hardware.some(({ id }) => id === met.id));
    const print = (mm: number): string => checked.print(rational(Math.round(mm * UNITS_PER_MM)));
    return {
      check: { ...check, verdict: "warns" },
      ...(fitting && {
        finding: catchMissesStrike(fitting.at, {
          on: met.on,
          door: met.door,
          apart: met.apart > 0 ? print(met.apart) : null,
        }),
      }),
    };
  });
