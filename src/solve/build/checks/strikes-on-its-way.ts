import { strikesOnItsWay } from "../../../findings/rules/strikes-on-its-way.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import { tellLength } from "../../../units/tell-length.ts";
import type { Rule, Verdict } from "./check.ts";

/** What opens goes all of its way, everything open that it needs. */
export const strikesOnItsWayRule: Rule = ({ design, motions }) =>
  motions.flatMap((motion): readonly Verdict[] => {
    const { strikes, kind, name, range, joints } = motion;
    const slides = kind === "slide";
    const [scale, unit] = slides ? [UNITS_PER_MM, "mm"] : [1, "degrees"];
    const check = {
      ...{ rule: "strikes-on-its-way", subject: name, unit, basis: "geometry: every pose tried" },
      ...{ value: (strikes ? strikes.at : range) / scale, limit: range / scale },
    };
    const at = design.joints.find(({ id }) => joints.includes(id))?.at;
    if (!strikes || !at) return [{ check: { ...check, verdict: "holds" } }];
    const told = slides ? tellLength(rational(Math.round(strikes.at)), design.units) : `${Math.floor(strikes.at)}°`;
    const finding = strikesOnItsWay(at, {
      ...{ name, kind: slides ? "slide" : "swing", moving: strikes.moving, other: strikes.other },
      after: strikes.at > 0 ? told : null,
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
