import { thinWall } from "../../../findings/rules/thin-wall.ts";
import { distance } from "../../../geometry/index.ts";
import { inches, millimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import { mateOf } from "../../design/mate.ts";
import { onBench } from "../../design/turning.ts";
import type { Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { roomOf } from "./rooms.ts";

const CUTS: readonly string[] = ["dado", "groove", "notch"];

/** Between a mortise and what is cut from another side there stays wood that does not break out: 1/8 in (3 mm). */
export const thinWallRule: Rule = ({ design, print }) => {
  const least = design.units === "inch" ? inches(1, 8) : millimetres(3);
  return design.parts.flatMap((part): readonly Verdict[] => {
    const walls = wallsOf(part);
    const [thinnest] = walls.toSorted((a, b) => a.wood - b.wood);
    if (!thinnest) return [];
    const value = thinnest.wood / UNITS_PER_MM;
    const limit = toNumber(least) / UNITS_PER_MM;
    const check = {
      rule: "thin-wall",
      subject: part.id,
      value,
      limit,
      unit: "mm",
      basis: "common practice, no source",
    };
    if (value >= limit - 0.01) return [{ check: { ...check, verdict: "holds" } }];
    const finding = thinWall(part.at, {
      ...{ part: part.id, cut: thinnest.cut, wood: print(rational(Math.round(thinnest.wood))), least: print(least) },
      ...{
        tenon: mateOf(design, part.id, thinnest.mortise) ?? "nothing",
        other: mateOf(design, part.id, thinnest.other) ?? "nothing",
      },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};

interface Wall {
  readonly wood: number;
  readonly cut: string;
  /** The joints that they are for. */
  readonly mortise: string | null;
  readonly other: string | null;
}

/** A groove that runs through a mortise from the same side is the usual thing: its panel and the tenon lie in one line. */
function wallsOf(part: Part): readonly Wall[] {
  const { features } = onBench(part);
  const rooms = features.flatMap((feature) => {
    if (feature.kind !== "mortise" && !CUTS.includes(feature.kind)) return [];
    const room = "into" in feature ? roomOf(feature, part.body) : null;
    return room && "into" in feature ? [{ feature, room }] : [];
  });
  const mortises = rooms.filter(({ feature }) => feature.kind === "mortise");
  return mortises.flatMap(({ feature: mortise, room }) =>
    rooms.flatMap(({ feature: other, room: cut }): readonly Wall[] => {
      const aside = other.kind !== "mortise" && other.into.some((c, i) => c !== mortise.into[i]);
      if (!aside || other.for === mortise.for) return [];
      return [{ wood: distance(room, cut), cut: other.kind, mortise: mortise.for, other: other.for }];
    }),
  );
}
