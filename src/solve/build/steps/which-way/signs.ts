/** What of a part can be told of its side: where a cut or a hole looks, at which edge it lies, which end it is nearer to. */
import { compare, equal } from "../../../../units/rational.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { mateOf } from "../../../design/mate.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { standsOut } from "../../../design/shapes/kinds.ts";
import { axisOf, enclosing, extent, faceOf, INDICES, indexOf, normalOf, unit } from "../../../design/space.ts";
import type { Direction, Part } from "../../../design.ts";
import { called, pluralOf, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import type { BoxFeature } from "../words/boxes.ts";
import { nameOf } from "../words/cut-names.ts";
import { holeSigns } from "./hole-signs.ts";
import { isHigher, type Sign } from "./sign.ts";
import { isEased } from "./traits.ts";

const RANK: readonly Sign["how"][] = ["looks", "lies", "flush", "nearer", "nearest"];

/** Cuts that are made along an edge. */
const AT_EDGES: ReadonlySet<string> = new Set(["rabbet"]);
/** That there are more on one side is told only where nothing else tells as much. */
const rank = ({ how, what }: Sign): number =>
  what.across !== undefined ? RANK.length : RANK.indexOf(how) - (how === "lies" && AT_EDGES.has(what.one) ? 0.5 : 0);

/** The plainest first. `filled`: ids of joints whose cuts are filled when the step is done; `driven`: of those whose holes are filled when it begins. */
export function signsOf(
  work: Work,
  part: Part,
  { filled, driven }: { readonly [key in "filled" | "driven"]: ReadonlySet<string> },
): readonly Sign[] {
  const all = [
    ...cutSigns(work, part, filled),
    ...easedSigns(part),
    ...holeSigns(work, part, driven),
    ...bandSigns(part),
    ...flushSigns(work, part, filled),
  ];
  return all.toSorted((a, b) => rank(a) - rank(b));
}

const isOpen = (feature: Part["features"][number]): feature is BoxFeature =>
  "size" in feature && isSquare(feature) && !standsOut(feature) && feature.kind !== "notch";

/** Of cuts that are still open: what is filled is not seen. */
export function cutSigns(work: Work, part: Part, filled: ReadonlySet<string>): readonly Sign[] {
  const boxes = part.features.filter(isOpen);
  const open = boxes.filter((each) => !filled.has(each.for ?? "") && !("inPlace" in each));
  const markOf = (each: BoxFeature): string => {
    const mate = mateOf(work.design, part.id, each.for);
    return mate === null ? "" : work.line(mate).mark;
  };
  return groupedBy(open, (each) => `${each.kind} ${markOf(each)} ${each.into.join()}`).flatMap((group) => {
    const [first] = group as [BoxFeature];
    const mate = mateOf(work.design, part.id, first.for);
    const { one, many } = nameOf(work, part, first);
    // A name of its own tells its purpose.
    const alone = one !== first.kind || boxes.filter(({ kind }) => kind === first.kind).length === group.length;
    if (!alone && mate === null) return [];
    const more = alone || mate === null ? "" : ` for the ${called(work, mate)}`;
    return boxSigns(part, group, { one, many, count: group.length, more });
  });
}

function boxSigns(part: Part, group: readonly BoxFeature[], what: Sign["what"]): readonly Sign[] {
  const [{ into }] = group as [BoxFeature];
  const box = group.map(featureBox).reduce(enclosing);
  const deep = axisOf(into);
  const through = compare(extent(box, deep), extent(part.body, deep)) >= 0;
  const looks: Sign = { part, what, how: "looks", way: unit(deep, into[deep] > 0 ? -1 : 1) };
  return [
    ...(through ? [] : [looks]),
    ...INDICES.flatMap((axis): readonly Sign[] => {
      const high = axis === deep ? null : isHigher(part.body, [box], axis);
      if (high === null) return [];
      const side = high ? "high" : "low";
      const how = equal(box[side][axis], part.body[side][axis]) ? "lies" : "nearer";
      return [{ part, what, how, way: unit(axis, high ? 1 : -1) }];
    }),
  ];
}

/** Of a part that is banded along one edge only. */
function bandSigns(part: Part): readonly Sign[] {
  const [band, ...more] = makingOf(part).banding;
  const [one, many] = ["banded edge", pluralOf("banded edge")];
  return band && more.length === 0
    ? [{ part, what: { one, many, count: 1, more: "" }, how: "looks", way: normalOf(band.edge) }]
    : [];
}

/** Of a part that its tenons hold: the edge that is flush with what they go into. */
function flushSigns(work: Work, part: Part, filled: ReadonlySet<string>): readonly Sign[] {
  const axis = indexOf(part.axes.width);
  const own = part.features.filter((each) => filled.has(each.for ?? ""));
  if (own.length === 0 || !own.every(standsOut)) return [];
  const edges = [false, true].map((high) => ({
    high,
    mates: flushMates(work, part, unit(axis, high ? 1 : -1), filled),
  }));
  const one = edges.filter(({ mates }) => mates.length > 0);
  // Flush at both edges it is as wide as they are: that tells nothing.
  return one.length !== 1
    ? []
    : one.map(({ high, mates }): Sign => {
        const word = `${faceOf(axis, high)} edge`;
        return {
          part,
          what: { one: word, many: pluralOf(word), count: 1, more: "" },
          how: "flush",
          with: mates,
          way: unit(axis, high ? 1 : -1),
        };
      });
}

/** Ids of what the tenons of a part go into that ends on one side where it does. */
function flushMates(
  { design, part: partOf }: Work,
  part: Part,
  way: Direction,
  joints: ReadonlySet<string>,
): readonly string[] {
  const axis = axisOf(way);
  const side = way[axis] > 0 ? "high" : "low";
  const mates = design.joints.flatMap(({ id, parts: [a, b] }) =>
    !joints.has(id) ? [] : a === part.id ? [b] : b === part.id ? [a] : [],
  );
  return [...new Set(mates)].filter((id) => equal(partOf(id).body[side][axis], part.body[side][axis]));
}

/** Of small chamfers, the sides on which all of them lie; where they run round on more sides, those on which there are more than on the side across. */
function easedSigns(part: Part): readonly Sign[] {
  const all = part.features.filter((each) => isEased(part.body, each));
  const names = { one: "chamfer", many: "chamfers", more: "" };
  return INDICES.flatMap((axis): readonly Sign[] => {
    const [low, high] = [-1, 1].map((sign) => all.filter(({ normal }) => normal[axis] * sign > 0).length) as [
      number,
      number,
    ];
    if (low === high) return [];
    const [way, count] = [unit(axis, high > low ? 1 : -1), Math.max(low, high)];
    if (count < all.length) return [{ part, what: { ...names, count, across: Math.min(low, high) }, how: "lies", way }];
    const how = axis === indexOf(part.axes.thickness) ? "looks" : "lies";
    return [{ part, what: { ...names, count }, how, way }];
  });
}
