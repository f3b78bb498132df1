import { doesNotGoThroughTheDoor } from "../../../findings/rules/does-not-go-through-the-door.ts";
import { millimetres } from "../../../units/length.ts";
import { movedAsOne } from "../moved-as-one.ts";
import type { Rule, Verdict } from "./check.ts";

/** A usual doorway, and what is lost on fingers. Common practice, no source. */
const [WIDE, HIGH, FINGERS] = [29 * 25.4, 78 * 25.4, 25.4];

/** Whether sizes over everything, mm, go through it straight. */
export function goesThrough(over: readonly number[]): boolean {
  const [least = 0, next = 0] = over.toSorted((a, b) => a - b);
  return least <= WIDE - FINGERS && next <= HIGH - FINGERS;
}

/** Whatever cannot be taken apart goes through a doorway, lying or standing. */
export const doesNotGoThroughTheDoorRule: Rule = ({ design, print }) => {
  const { parts } = design;
  return movedAsOne(design).flatMap(({ parts: body, sizes: over }): readonly Verdict[] => {
    const [first] = body;
    if (!first) return [];
    const sizes = over.toSorted((a, b) => a - b);
    const [least, next] = sizes as [number, number, number];
    const check = {
      rule: "does-not-go-through-the-door",
      subject: body.length === parts.length ? "piece" : first.id,
      value: next > HIGH - FINGERS ? next : least,
      limit: next > HIGH - FINGERS ? HIGH - FINGERS : WIDE - FINGERS,
      unit: "mm",
      basis: "a doorway of 29 × 78 in, common practice, no source",
    };
    if (goesThrough(over)) return [{ check: { ...check, verdict: "holds" } }];
    const tell = (mm: number): string => print(millimetres(Math.round(mm * 100), 100));
    const finding = doesNotGoThroughTheDoor(first.at, {
      what: body.length === parts.length ? "the piece" : `what is joined to ${first.id}`,
      sizes: sizes.map(tell).join(" × "),
      door: `${tell(WIDE)} × ${tell(HIGH)}`,
      most: tell(WIDE - FINGERS),
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
