import { shelfAtAHinge } from "../../../findings/rules/shelf-at-a-hinge.ts";
import type { Solid } from "../../../geometry/index.ts";
import { inches, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import type { Hardware, Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";

/** Between a hinge and the front edge of what lies behind it: a screwdriver. Common practice, no source. */
const BEHIND = toNumber(inches(1, 4));
/** Nearer than this they touch. */
const HAIR = 0.01 * UNITS_PER_MM;

/** What lies flat behind a door keeps above or below its hinges. */
export const shelfAtAHingeRule: Rule = (checked) => {
  const { design, hardware, motions } = checked;
  const joints = new Set(design.joints.filter(({ kind }) => kind === "hinged").map(({ id }) => id));
  const hinges = hardware.filter(({ joint }) => joint !== null && joints.has(joint));
  return design.parts.flatMap((part): readonly Verdict[] => {
    const isShelf =
      part.axes.thickness === "up" && !part.turned && !motions.some(({ moves }) => moves.includes(part.id));
    const near = isShelf
      ? hinges.filter(({ carriedBy, solid }) => carriedBy !== part.id && isNear(solid, part.solid))
      : [];
    return near.length === 0 ? [] : [verdictOf(part, near, checked)];
  });
};

/** Over or under each other, were they at one height. */
const isNear = (hinge: Solid, shelf: Solid): boolean =>
  ([0, 1] as const).every((axis) => {
    const more = axis === 1 ? BEHIND : -HAIR;
    return shelf.low[axis] < hinge.high[axis] + more && hinge.low[axis] < shelf.high[axis] + more;
  });

function verdictOf(part: Part, hinges: readonly Hardware[], { print }: Checked): Verdict {
  const { low, high } = part.solid;
  /** Above 0: so much room between them; below: so much too near. */
  const room = ({ solid }: Hardware): number => Math.max(low[2] - solid.high[2], solid.low[2] - high[2]);
  const nearest = hinges.reduce((so, each) => (room(each) < room(so) ? each : so));
  const value = room(nearest);
  const check = {
    ...{ rule: "shelf-at-a-hinge", subject: part.id, value: value / UNITS_PER_MM, limit: 0, unit: "mm" },
    basis: "geometry",
  };
  if (value > -HAIR) return { check: { ...check, verdict: "holds" } };
  const at = hinges.filter((each) => each.joint === nearest.joint && room(each) <= -HAIR);
  const tell = (length: number): string => print(rational(Math.ceil(length)));
  const finding = shelfAtAHinge(part.at, {
    ...{ shelf: part.id, hinge: `a ${nearest.item.kind} on ${nearest.carriedBy}` },
    raise: tell(Math.max(...at.map(({ solid }) => solid.high[2])) - low[2]),
    lower: tell(high[2] - Math.min(...at.map(({ solid }) => solid.low[2]))),
  });
  return { check: { ...check, verdict: "fails" }, finding };
}
