/** Which lid support to buy: the side that it is for, and what it has to hold. Common practice, no source. */

import { inches, millimetres, toMillimetres, UNITS_PER_MM } from "../../../../units/length.ts";
import { add, half, less, rational, subtract, ZERO } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { enclosing, extent } from "../../../design/space.ts";
import { apartOf } from "../../checks/standing/lid-arm.ts";
import { sayWeight } from "../../cut-list/weight.ts";
import { pluralOf, series, type Work } from "../draft.ts";

const KIND = "lid support";
const GRAVITY = 9.81;
/** Newton metres in an inch-pound. */
const INCH_POUND = 0.112985;

/** Empty where there is none. */
export function lidSupportTexts(work: Work): readonly string[] {
  const { plan, design, motions } = work;
  const halves = plan.hardware.filter(({ item, halfOf }) => item.kind === KIND && halfOf !== undefined);
  const supports = plan.hardware.filter(({ item, halfOf }) => item.kind === KIND && halfOf === undefined);
  const [first] = supports;
  if (!first) return [];
  const lids = [
    ...new Map(
      halves.map(({ carriedBy }) => {
        const moves = motions.find((each) => each.kind !== "slide" && each.moves.includes(carriedBy))?.moves;
        const ids = moves ?? [carriedBy];
        return [ids.join(), design.parts.filter(({ id }) => ids.includes(id))] as const;
      }),
    ).values(),
  ];
  const several = supports.length > 1;
  const sides = new Set(halves.map((half) => sideOf(work, half.carriedBy, half.at[0])));
  const hand =
    sides.size === 1
      ? `for the ${[...sides].join("")} end of a lid, seen from the front`
      : "of each hand, one for the left end of a lid and one for the right, seen from the front";
  const holds =
    first.item.words.get("holds") === "every angle"
      ? "It must hold the lid wherever it is let go, by friction or by a spring, and not only prop it when it stands open"
      : "It holds the lid when it stands open, and nowhere between: keep a hand on the lid";
  const told = lids.map((parts) => {
    const kg = parts.reduce((so, { id }) => so + work.mass(id), 0);
    const box = parts.map(({ body }) => body).reduce(enclosing);
    const force = (kg * GRAVITY * toMillimetres(extent(box, 1))) / 2000;
    const turning =
      design.units === "inch" ? `${Math.ceil(force / INCH_POUND)} inch-pounds` : `${force.toFixed(1)} N m`;
    return `weighs about ${sayWeight(kg, design.units)} and is ${work.print(extent(box, 1))} from back to front: where a maker tells turning force, half of that depth times the weight, that is ${turning}`;
  });
  return [
    `Many ${pluralOf(KIND)} are made for one side: take ${several ? "such" : "one"} ${hand}, or what serves both. ${holds}. The lid ${series(told)}${several ? ", for all of them together" : ""}.${armText(work)}`,
  ];
}

/** Rounded to the safe side. */
const STEP = { inch: inches(1, 16), mm: millimetres(1) } as const;

/** What of its arm must fold and reach, for one that is not the plan's. Empty where nothing swings. */
function armText({ plan, design, motions, print }: Work): string {
  const arms = plan.hardware.flatMap((plate) => {
    const body = plan.hardware.find(({ id }) => id === plate.halfOf);
    const motion = motions.find(({ kind, moves }) => kind !== "slide" && moves.includes(plate.carriedBy));
    return plate.item.kind === KIND && body && motion ? [apartOf(body, plate, motion)] : [];
  });
  if (arms.length === 0) return "";
  const say = (mm: number, to: "up" | "down"): string =>
    print(roundTo(rational(Math.round(mm * UNITS_PER_MM)), STEP[design.units], to));
  const near = say(Math.min(...arms.map((arm) => arm.near)), "down");
  const far = say(Math.max(...arms.map((arm) => arm.far)), "up");
  return ` Its arm has to fold until the middles of its two halves are ${near} apart, and to reach until they are ${far} apart: shift both halves of another one along until it does both, and bore for it only then.`;
}

/** Under a lid that lies off what it closes: how far the upper end comes above that. */
export function standsOverTexts({ plan, part, print }: Pick<Work, "plan" | "part" | "print">): readonly string[] {
  const own = plan.hardware.filter(({ item, halfOf }) => item.kind === KIND && halfOf === undefined);
  const over = own.flatMap(({ item, carriedBy, at }) => {
    const by = subtract(add(at[2], half(item.measures.get("high") ?? ZERO)), part(carriedBy).body.high[2]);
    return less(ZERO, by) ? [print(by)] : [];
  });
  const [first] = over;
  return first && new Set(over).size === 1 && over.length === own.length
    ? [`${own.length === 1 ? "Its upper end stands" : "Their upper ends stand"} ${first} above the edge.`]
    : [];
}

/** On which half of what it is fixed to it lies. */
function sideOf(work: Work, id: string, at: Parameters<typeof less>[0]): "left" | "right" {
  const moves = work.motions.find((each) => each.moves.includes(id))?.moves ?? [id];
  const { low, high } = work.design.parts
    .filter((part) => moves.includes(part.id))
    .map(({ body }) => body)
    .reduce(enclosing);
  return less(add(at, at), add(low[0], high[0])) ? "left" : "right";
}
