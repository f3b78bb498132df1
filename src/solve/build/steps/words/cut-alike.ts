/** Alike parts between the same two of a glued case are measured once: it was proved square, and cut alike they keep it so. Common practice, no source. */
import { compare, equal } from "../../../../units/rational.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Design, Pair, Part } from "../../../design.ts";
import { LOOSE } from "../../order/links.ts";
import { rowAxis } from "./row-axis.ts";

/** Whether both hold each other at two ends, glued to the same two others or more. */
export const isGluedCase = ({ joints }: Pick<Design, "joints">, [low, high]: Pair): boolean => {
  const gluedTo = (id: string): ReadonlySet<string> =>
    new Set(
      joints
        .filter(({ kind, glue, parts }) => glue && !LOOSE.includes(kind) && parts.includes(id))
        .flatMap(({ parts }) => parts.filter((other) => other !== id)),
    );
  const above = gluedTo(high);
  return [...gluedTo(low)].filter((id) => above.has(id)).length > 1;
};

/** Whether each lies against the one before, as the boards of a back do: what is true of the outermost is true of all. */
export function isRow(parts: readonly Part[]): boolean {
  const axis = rowAxis(parts.map(({ solid }) => solid.low));
  const row = parts.map(({ body }) => body).toSorted((a, b) => compare(a.low[axis], b.low[axis]));
  return row.slice(1).every((box, i) => equal(box.low[axis], (row[i] as Part["body"]).high[axis]));
}

/** "where the lowest and where the highest of them goes", by the direction in which they follow each other. */
export function outermost(parts: readonly Part[]): string {
  const [first, last] = OUTER[rowAxis(parts.map(({ solid }) => solid.low))];
  return `where the ${first} and where the ${last} of them goes`;
}

const OUTER: Readonly<Record<AxisIndex, readonly [string, string]>> = {
  0: ["leftmost", "rightmost"],
  1: ["foremost", "hindmost"],
  2: ["lowest", "highest"],
};
