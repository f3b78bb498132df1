/** What is said of one kind of cut of one part. */

import { less } from "../../../../units/rational.ts";
import { axisOf, enclosing, faceOf, middle } from "../../../design/space.ts";
import type { Direction, Face, Part } from "../../../design.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { sideWord } from "../words/measured.ts";
import type { Sign } from "./sign.ts";

export interface One {
  readonly part: Part;
  readonly what: Sign["what"];
  /** "inwards": so do others like it, each from its side. */
  readonly looks: Face | "inwards" | null;
  /** Nearer to the top edge, at the back edge. */
  readonly lies: readonly { readonly how: "at" | "nearer to"; readonly face: Face; readonly word: string }[];
}

export const faceAt = (way: Direction): Face => faceOf(axisOf(way), way[axisOf(way)] > 0);

export const sameWhat = ({ what: { one, more, some, across } }: Pick<Sign, "what">): string =>
  `${one}${more}${some ? " of more" : ""}${across === undefined ? "" : ` than ${across}`}`;

/** Part by part. */
export function onesOf(
  work: { readonly line: (id: string) => { readonly mark: string } },
  signs: readonly Sign[],
): readonly One[] {
  const facing = new Set(
    groupedBy(
      signs.filter(({ how }) => how === "looks"),
      (sign) => `${work.line(sign.part.id).mark} ${sameWhat(sign)}`,
    ).flatMap((own) => (isFacing(own) ? own : [])),
  );
  return groupedBy(signs, (sign) => `${sign.part.id} ${sameWhat(sign)}`).map((some) => {
    const [{ part, what }] = some as [Sign];
    const looks = some.find(({ how }) => how === "looks");
    const lies = some.flatMap(({ how, way }): One["lies"] =>
      how === "looks"
        ? []
        : [
            {
              how: how === "lies" ? "at" : "nearer to",
              face: faceAt(way),
              word: sideWord(part, axisOf(way)),
            },
          ],
    );
    return { part, what, looks: looks ? (facing.has(looks) ? "inwards" : faceAt(looks.way)) : null, lies };
  });
}

/** Whether some of a kind look at each other, from two sides. */
function isFacing(signs: readonly Sign[]): boolean {
  const [first] = signs;
  if (!first || new Set(signs.map(({ way }) => faceAt(way))).size !== 2) return false;
  const axis = axisOf(first.way);
  const whole = middle(signs.map(({ part }) => part.body).reduce(enclosing), axis);
  return signs.every(
    ({ part: { body }, way }) =>
      axisOf(way) === axis && (way[axis] > 0 ? less(body.high[axis], whole) : less(whole, body.low[axis])),
  );
}
