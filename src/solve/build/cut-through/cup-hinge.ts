/** A cup hinge cut across: how far the door covers what it hangs on, where the cup sits and how deep. */
import { type Length, TOLERANCE } from "../../../units/length.ts";
import { absolute, add, half, less, multiply, rational, subtract, toNumber } from "../../../units/rational.ts";
import type { Build, BuiltJoint } from "../../build.ts";
import { acrossGap } from "../../design/joinery/touch.ts";
import { type AxisIndex, axisOf, thirdAxis, triple, unit } from "../../design/space.ts";
import type { Direction, Point } from "../../design.ts";
import type { CutThrough, Sized } from "../model/cut-through.ts";

type Of = Pick<Build, "parts" | "hardware" | "holes">;

/** Of a joint with cup hinges the first hinge; null for other hinges. */
export function cupHingeCut({ parts, hardware, holes }: Of, joint: BuiltJoint): CutThrough | null {
  const [hung, hold] = joint.parts.map((id) => parts.find((part) => part.id === id));
  const own = hardware.filter((each) => each.joint === joint.id);
  const cup = holes.find(({ kind, for: id }) => kind === "cup" && own.some((each) => each.id === id));
  const flange = own.find(({ id }) => id === cup?.for);
  const pin = joint.arrangements[0]?.motion?.poses.at(-1)?.rotate.about[1];
  const [stage] = cup?.stages ?? [];
  if (!hung || !hold || !cup || !flange || !pin || !stage || hung.turned || hold.turned) return null;
  const [along, deep] = [axisOf(pin), axisOf(cup.direction)];
  if (along === deep) return null;
  const across = thirdAxis(along, deep);
  const { body } = hung;
  const isLow = less(subtract(cup.at[across], body.low[across]), subtract(body.high[across], cup.at[across]));
  const edge = (isLow ? body.low : body.high)[across];
  const inner = (isLow ? hold.body.high : hold.body.low)[across];
  const inwards = unit(across, isLow ? 1 : -1);
  const at = (u: Length, v: Length): Point => triple((i): Length => (i === along ? cup.at[i] : i === across ? u : v));
  const front = (cup.direction[deep] > 0 ? body.high : body.low)[deep];
  const back = cup.at[deep];
  const rim = (sign: 1 | -1): Length => add(cup.at[across], multiply(rational(sign), half(stage.diameter)));
  const near = rim(isLow ? -1 : 1);
  const bottom = add(back, multiply(rational(cup.direction[deep]), stage.depth));
  const level = (says: string, [from, to]: readonly [Point, Point], off: Direction, axis: AxisIndex): Sized => ({
    says,
    size: absolute(subtract(to[axis], from[axis])),
    spans: [{ from, to, off }],
  });
  const touch = acrossGap(body, hold.body);
  const covers = touch.kind === "faces" && touch.axis === deep;
  const rows = [
    ...(covers
      ? [level(`how far ${hung.mark} covers ${hold.mark}`, [at(edge, front), at(inner, back)], cup.direction, across)]
      : touch.kind === "faces" && toNumber(touch.gap) > TOLERANCE
        ? [
            level(
              "the gap",
              [at((isLow ? hold.body.high : hold.body.low)[across], back), at(edge, back)],
              cup.direction,
              across,
            ),
          ]
        : []),
    {
      ...level(`from the edge of ${hung.mark} to the cup`, [at(edge, front), at(near, bottom)], cup.direction, across),
      isPlace: true as const,
    },
    level("how deep the cup is bored", [at(rim(isLow ? 1 : -1), back), at(rim(isLow ? 1 : -1), bottom)], inwards, deep),
  ];
  const halves = own.filter(({ id, halfOf }) => id === flange.id || id === flange.halfOf || halfOf === flange.id);
  return {
    what: "a cup hinge",
    ...{ axis: along, at: cup.at[along], parts: joint.parts, hardware: halves.map(({ id }) => id), bores: [] },
    rods: [{ from: cup.at, to: at(cup.at[across], bottom), diameter: stage.diameter, name: "cup" }],
    ...{ rounds: [], sizes: rows },
  };
}
