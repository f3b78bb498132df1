/** Alike parts between the same two of a glued case are measured once: it was proved square, and cut alike they keep it so. Common practice, no source. */
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
