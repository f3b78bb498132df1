/** Bodies that are built alike: how many, and what goes into each. */
import type { Length } from "../../../../units/length.ts";
import { equal, max, min, subtract } from "../../../../units/rational.ts";
import type { Copies } from "../copies.ts";
import { numberWord, series, type Work } from "../draft.ts";
import type { Unit } from "../moves.ts";
import { bodyWords } from "./bodies.ts";

/** How many are made; and of those that differ in height, what goes into each. */
export function copiesText(work: Work, { all, unit }: Copies): readonly string[] {
  if (all.length === 1) return [];
  const marks = ({ parts }: Unit): string => series([...new Set(parts.map((id) => work.line(id).mark))].sort());
  const make = `Make ${numberWord(all.length)} of these.`;
  if (all.every((each) => marks(each) === marks(unit))) return [make];
  const high = ({ parts }: Unit): Length => {
    const bodies = parts.map((id) => work.part(id).body);
    return subtract(bodies.map((body) => body.high[2]).reduce(max), bodies.map((body) => body.low[2]).reduce(min));
  };
  const differ = !all.every((each) => equal(high(each), high(unit)));
  return [
    `${make} They go together alike${differ ? " and differ in height" : ""}; take for each:`,
    ...all.map((each) => `– ${bodyWords(each.parts) ?? each.name}: ${marks(each)}.`),
  ];
}
