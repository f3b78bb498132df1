import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const seatNotChecked = rule<{
  /** Of what lies flat and is sat on, or was named. */
  readonly parts: readonly string[];
}>({
  name: "seat-not-checked",
  severity: "advice",
  message: (a) =>
    a.parts.length === 0
      ? "nothing in this piece lies flat to sit on: whether it carries those who sit is not checked"
      : `whether ${a.parts.join(", ")} bends under those who sit is not checked`,
  label: () => "not checked",
  help: (a) =>
    a.parts.length === 0
      ? "name what they sit on: `used for: { seats: …, on: … }`"
      : `join it to what carries it, at both ends, and make it of a stock whose stiffness is known; or name what else they sit on: \`used for: { seats: …, on: … }\`. Else try it with more weight than will sit on it before anybody does`,
  explain: `A seat is checked as a board between what it lies on or is joined to, and that as beams down to the floor. Where nothing that holds the seat is
known, or nothing of how stiff it is, there is nothing to work out. That a plan has no finding about its seat then says nothing of what it carries.`,
  wrong: stepExample(["joints:", "used for: { seats: 1, each weighs: 200 lb, on: left-leg }\njoints:"]),
  right: stepExample(["joints:", "used for: { seats: 1, each weighs: 200 lb, on: tread }\njoints:"]),
  basis: "common practice, no source",
});
