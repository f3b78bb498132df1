import { lidSupportOutOfReach } from "../../../findings/rules/lid-support-out-of-reach.ts";
import { toMillimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import { tellLength } from "../../../units/tell-length.ts";
import type { BuiltMotion } from "../../build.ts";
import { rangeOf } from "../../design/hardware/items.ts";
import type { Design, Hardware } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { type Apart, apartOf } from "./standing/lid-arm.ts";
import { pinOf } from "./standing/pin.ts";
import { around } from "./standing/weight-and-feet.ts";

/** Millimetres: in which steps places are tried, and how far doubles are off. */
const STEP = { inch: 25.4 / 4, mm: 5 } as const;
const TRIES = 200;
const ROUNDING = 0.01;

/** The arm of a lid support is long enough where the lid stands open, and folds up as short as it has to be. */
export const lidSupportOutOfReachRule: Rule = ({ design, hardware, motions }) =>
  hardware.flatMap((plate): readonly Verdict[] => {
    const body = hardware.find(({ id }) => id === plate.halfOf);
    const motion = motions.find(({ kind, moves }) => kind !== "slide" && moves.includes(plate.carriedBy));
    if (plate.item.kind !== "lid support" || !body || !motion) return [];
    const { low, high } = rangeOf(plate.item, "reach");
    const [least, most] = [toMillimetres(low), toMillimetres(high)];
    const does = ({ near, far }: Apart): boolean => near >= least - ROUNDING && far <= most + ROUNDING;
    const apart = apartOf(body, plate, motion);
    const check = {
      ...{ rule: "lid-support-out-of-reach", subject: body.id, unit: "mm", basis: "geometry: every pose tried" },
      ...(apart.near < least - ROUNDING ? { value: apart.near, limit: least } : { value: apart.far, limit: most }),
    };
    if (does(apart)) return [{ check: { ...check, verdict: "holds" } }];
    const lid = design.parts.find(({ id }) => id === plate.carriedBy);
    const at = design.fittings.find(({ id }) => id === body.id)?.at ?? lid?.at;
    if (!at || !lid) return [];
    const tell = (mm: number): string => tellLength(rational(Math.round(mm * UNITS_PER_MM)), design.units);
    const by = farEnough(body, plate, motion, design, does);
    const finding = lidSupportOutOfReach(at, {
      ...{ support: body.item.name, lid: lid.id, shut: tell(apart.near), open: tell(apart.far) },
      ...{ degrees: Math.round(apart.at), reach: `${tell(least)} to ${tell(most)}` },
      move: by === null ? null : { by: tell(Math.abs(by)), to: by > 0 ? "hinge" : "edge" },
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });

/** How far nearer to the hinge it does, or farther from it, whichever is less: as long as both halves stay on what they are fixed to. */
function farEnough(
  body: Hardware,
  plate: Hardware,
  motion: BuiltMotion,
  { parts, units }: Design,
  does: (apart: Apart) => boolean,
): number | null {
  const { at, across: level } = pinOf(motion);
  const way = Math.sign(at[level] - toMillimetres(body.at[level]));
  const stays = ({ carriedBy, solid }: Hardware, by: number): boolean => {
    const part = parts.find(({ id }) => id === carriedBy);
    if (!part) return false;
    const [own, on] = [around([solid]), around([part.solid])];
    return own.low[level] + by * way >= on.low[level] && own.high[level] + by * way <= on.high[level];
  };
  const tries = Array.from({ length: TRIES }, (_, i) => (i + 1) * STEP[units]).flatMap((by) => [by, -by]);
  return tries.find((by) => stays(body, by) && stays(plate, by) && does(apartOf(body, plate, motion, by))) ?? null;
}
