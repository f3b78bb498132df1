import { seatBends } from "../../../findings/rules/seat-bends.ts";
import { seatNotChecked } from "../../../findings/rules/seat-not-checked.ts";
import type { Span } from "../../../findings/span.ts";
import { millimetres } from "../../../units/length.ts";
import { indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { battensUnder } from "./wood/battens.ts";
import { GRAVITY, middleSag, secondMoment } from "./wood/beam.ts";
import { bodyOf } from "./wood/body.ts";
import { thicker } from "./wood/remedies.ts";
import { isFlat } from "./wood/shelf.ts";
import { type Beam, beamsUnder } from "./wood/weight.ts";

/** What is felt, as a share of the span. Common practice, no source. */
const FELT = 1 / 360;
const KILOGRAMS_PER_POUND = 0.45359237;

/** The seat and what carries it bend no further than is felt when everybody sits. */
export const seatBendsRule: Rule = (checked) => {
  const { seats } = checked.design;
  if (seats === undefined) return [];
  const force = seats.count * seats.eachWeighs * GRAVITY;
  const seat = seatOf(checked);
  const beams = beamsUnder(seat, force, checked.design);
  const known = seat.filter((board) => beams.some(({ part }) => part === board) && stiffnessOf(board, checked));
  const verdicts = beams.flatMap((beam) => judge(beam, checked));
  return 2 * area(known) >= area(seat) && seat.length > 0 ? verdicts : [...verdicts, unchecked(seats.at, seat)];
};

const stiffnessOf = ({ stock }: Part, { design }: Checked) =>
  design.stock.find(({ name }) => name === stock)?.stiffness;

const area = (boards: readonly Part[]): number =>
  boards.reduce((so, board) => so + [0, 1].reduce((by, i) => by * lengthOf(board, i as 0 | 1), 1), 0);
const lengthOf = (part: Part, axis: 0 | 1 | 2): number => bodyOf(part, axis)[1] - bodyOf(part, axis)[0];

/** Of most of the seat nothing is known: that nothing was found then says nothing. */
function unchecked(at: Span, seat: readonly Part[]): Verdict {
  const check = {
    ...{ rule: "seat-not-checked", subject: seat[0]?.id ?? "piece", value: 0, limit: 1, unit: "seats" },
    basis: "common practice, no source",
  };
  return { check: { ...check, verdict: "warns" }, finding: seatNotChecked(at, { parts: seat.map(({ id }) => id) }) };
}

/** What they sit on: what the plan says, else whatever lies flat and highest. */
export function seatOf({ design }: Pick<Checked, "design">): readonly Part[] {
  const named = design.seats?.on;
  if (named) return design.parts.filter(({ id }) => named.includes(id));
  const flat = design.parts.filter(isFlat);
  const top = Math.max(...flat.map((part) => bodyOf(part, 2)[1]));
  return flat.filter((part) => top - bodyOf(part, 2)[1] < 1);
}

function judge({ part, along, span, strips }: Beam, { design, print }: Checked): readonly Verdict[] {
  const stock = design.stock.find(({ name }) => name === part.stock);
  const reach = span.to - span.from;
  if (stock?.stiffness === undefined || reach <= 0) return [];
  const [broad, high] = [lengthOf(part, along === 0 ? 1 : 0), lengthOf(part, 2)];
  const modulus = 1000 * (along === indexOf(part.axes.length) ? stock.stiffness.along : stock.stiffness.across);
  const stiffened = isFlat(part) ? battensUnder(part, along, span, design) : 0;
  const own = strips.map(({ from, to, force }) => ({ from: from - span.from, to: to - span.from, force }));
  const sag = middleSag(own, reach, modulus * secondMoment(broad, high) + stiffened);
  const limit = FELT * reach;
  const check = {
    rule: "seat-bends",
    subject: part.id,
    value: sag,
    limit,
    unit: "mm",
    basis: `simple beam; stiffness: ${stock.stiffness.basis}; limit: a 360th of the span, common practice, no source`,
  };
  if (sag <= limit) return [{ check: { ...check, verdict: "holds" } }];
  const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
  const finding = seatBends(part.at, {
    part: part.id,
    sag: tell(sag),
    span: tell(reach),
    limit: tell(limit),
    people: peopleOf(design),
    remedies: [
      ...(isFlat(part)
        ? thicker(high, sag / limit, design.units, print)
        : taller(high, sag / limit, { design, print })),
      "hold it up in the middle",
    ],
  });
  return [{ check: { ...check, verdict: "warns" }, finding }];
}

const taller = (high: number, times: number, { design, print }: Pick<Checked, "design" | "print">): readonly string[] =>
  thicker(high, times, design.units, print).map((words) => words.replace(/thick$/, "wide"));

function peopleOf({ seats, units }: Checked["design"]): string {
  const { count, eachWeighs } = seats ?? { count: 0, eachWeighs: 0 };
  const weight = units === "mm" ? `${Math.round(eachWeighs)} kg` : `${Math.round(eachWeighs / KILOGRAMS_PER_POUND)} lb`;
  return count === 1 ? `one person of ${weight}` : `${count} people of ${weight} each`;
}
