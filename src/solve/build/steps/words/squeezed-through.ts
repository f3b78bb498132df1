/** Glue comes through where two mortises meet, and hardens in the one whose tenon comes later. */

import { millimetres } from "../../../../units/length.ts";
import { less } from "../../../../units/rational.ts";
import { mateOf } from "../../../design/mate.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { INDICES, roomAlong } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { called, capital, pluralOf, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import type { BoxFeature } from "./boxes.ts";
import { subjects } from "./cuts-of.ts";

/** Less wood than this between two mortises has broken out. Common practice, no source. */
const WALL = millimetres(1);

/** `joints`: those of a step; `there`: ids of all that is together after it. */
export function squeezedTexts(work: Work, joints: readonly Joint[], there: readonly string[]): readonly string[] {
  const now = new Set(joints.flatMap(({ id, glue }) => (glue ? [id] : [])));
  const open = there.map(work.part).flatMap((part) => {
    const mortises = part.turned ? [] : part.features.filter(isMortise);
    const filled = mortises.filter((each) => now.has(each.for ?? ""));
    return mortises.flatMap((each) => {
      const mate = mateOf(work.design, part.id, each.for);
      return mate !== null && !there.includes(mate) && filled.some((other) => meet(each, other))
        ? [{ part, mate }]
        : [];
    });
  });
  if (open.length === 0) return [];
  const cuts = groupedBy(open, ({ part, mate }) => `${part.id} ${work.line(mate).mark}`).map((own) => {
    const [{ part, mate }] = own as [(typeof open)[number]];
    const more = ` for the ${called(work, mate)}`;
    return { part, what: { one: "mortise", many: pluralOf("mortise"), count: own.length, more } };
  });
  const { text, many } = subjects(work, cuts, there);
  const [them, meets] = many ? ["them", "meet"] : ["it", "meets"];
  return [
    `${capital(text)} ${meets} what is glued now, and glue comes through: wipe it out of ${them} at once with a rag on a stick. Hard glue there keeps the next tenon from going home.`,
  ];
}

const isMortise = (feature: Part["features"][number]): feature is BoxFeature =>
  feature.kind === "mortise" && "size" in feature && isSquare(feature);

function meet(one: BoxFeature, other: BoxFeature): boolean {
  const [a, b] = [featureBox(one), featureBox(other)];
  return INDICES.every((axis) => less(roomAlong(a, b, axis), WALL));
}
