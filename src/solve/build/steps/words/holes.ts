import type { Length } from "../../../../units/length.ts";
import { markable } from "../../../../units/markable.ts";
import { add, compare, equal, half, less, subtract, ZERO } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import { numberWord, pluralOf, series, type Work, withArticle } from "../draft.ts";
import { byJigText } from "./by-jig.ts";
import { fromNearer, sideWord } from "./measured.ts";

/** Holes by what they are for and how deep, with the place of each centre. */
export function boringText(work: Work, part: Part, holes: readonly Hole[]): readonly string[] {
  const groups = new Map<string, Hole[]>();
  for (const hole of holes) {
    const end = hole.kind === "pocket" ? endOf(part, hole) : "";
    const key = `${hole.kind} ${purpose(work, [hole])} ${entry(hole)} ${end} ${hole.slot ? work.print(hole.slot.length) : ""} ${hole.stages.map((s) => `${work.print(s.diameter)}|${work.print(s.depth)}`).join()}`;
    groups.set(key, [...(groups.get(key) ?? []), hole]);
  }
  const lists = [...groups.values()];
  const kin = lists.filter(([hole], i) => hole?.slot && lists.some(([other], k) => k !== i && isKin(hole, other)));
  return lists.flatMap((list) => {
    const own = kin.filter(([hole]) => isKin(list[0] as Hole, hole));
    if (own.length > 1) return own[0] === list ? slotsText(work, part, own) : [];
    return [whatText(work, part, list), ...placeTexts(work, part, list), ...byJigText(work, list)];
  });
}

/** Slots that differ in their length only, and in how wide the bore for the head is, which moves in it: the farther a screw is from where the wood is held, the longer. */
const isKin = (a: Hole, b: Hole | undefined): boolean =>
  a.slot !== undefined &&
  b?.slot !== undefined &&
  a.kind === b.kind &&
  entry(a) === entry(b) &&
  acrossWord(a.slot.along) === acrossWord(b.slot.along) &&
  a.through === b.through &&
  equal((a.stages.at(-1) as Stage).diameter, (b.stages.at(-1) as Stage).diameter) &&
  a.stages.length === b.stages.length &&
  a.stages.every(({ depth }, i) => equal(depth, (b.stages[i] as Stage).depth));

type Stage = Hole["stages"][number];

function slotsText(work: Work, part: Part, lists: readonly (readonly Hole[])[]): readonly string[] {
  const [[hole]] = lists as [[Hole]];
  const { print, drill } = work;
  const last = hole.stages.at(-1) as Stage;
  const count = lists.reduce((so, list) => so + list.length, 0);
  const depth = hole.through ? "right through" : `${print(last.depth)} deep`;
  const first = hole.stages[0] as Stage;
  const bored = hole.stages.length > 1 && !first.cone;
  const wide = ([each = hole]: readonly Hole[]): string => drill((each.stages[0] as Stage).diameter);
  const alike = lists.every((list) => wide(list) === wide([hole]));
  const heads = bored
    ? alike
      ? `, after a bore ${drill(first.diameter)} wide and ${print(first.depth)} deep for the heads`
      : `, after a bore ${print(first.depth)} deep for the heads, as wide as each asks`
    : "";
  return [
    `Cut ${numberWord(count)} slots ${drill(last.diameter)} wide from ${acrossWord((hole.slot as { along: Hole["direction"] }).along)} into the ${mouthSide(part, hole)}, ${depth}${heads}:`,
    ...lists.flatMap((list) => {
      const long = list[0]?.slot?.length;
      return placeTexts(work, part, list).map((place) =>
        long
          ? place.replace(/^– /u, `– ${print(long)} long, ${bored && !alike ? `its bore ${wide(list)} wide, ` : ""}`)
          : place,
      );
    }),
  ];
}

/** What a hole of a part on the bench is bored into: "front edge". */
export const mouthSide = (part: Part, hole: Hole): string =>
  hole.kind === "pocket" ? pocketFace(part, hole) : `${entry(hole)} ${sideWord(part, axisOf(hole.direction))}`;

/** The face that a hole is bored into. */
const entry = ({ direction }: Hole): string => faceOf(axisOf(direction), direction[axisOf(direction)] < 0);

const axisOf = (direction: Hole["direction"]): AxisIndex =>
  INDICES.reduce<AxisIndex>((best, i) => (Math.abs(direction[i]) > Math.abs(direction[best]) ? i : best), 0);

/** " for the hinges": the hardware that is screwed into holes; nothing where their kind tells it. */
function purpose({ plan }: Work, list: readonly Hole[]): string {
  const ids = new Set(list.map((hole) => hole.for));
  const own = plan.hardware.filter(({ id }) => ids.has(id));
  const kind = own[0]?.item.kind.replace(/ for an? .*$/u, "");
  return kind === undefined ? "" : ` for the ${own.length === 1 ? kind : pluralOf(kind)}`;
}

function whatText(work: Work, part: Part, list: readonly Hole[]): string {
  const { print, drill } = work;
  const hole = list[0] as Hole;
  const [n, word] = list.length === 1 ? ["a", "hole"] : [numberWord(list.length), "holes"];
  const [first, last] = [hole.stages[0] as Hole["stages"][number], hole.stages.at(-1) as Hole["stages"][number]];
  const face = mouthSide(part, hole);
  if (hole.kind === "pocket")
    return `Bore ${n} pocket ${word} into the ${face} at the ${endOf(part, hole)}, ${drill(first.diameter)} for the head, 15° to the face, with the jig set for wood ${print(part.thickness)} thick.`;
  if (hole.kind === "recess")
    return `Bore ${n === "a" ? "a recess" : `${n} recesses`}, ${drill(first.diameter)} wide and ${print(first.depth)} deep into the ${face}${openTo(part, list)}, and in the middle of each a ${drill(last.diameter)} pilot hole, ${print(last.depth)} deep in all. Measure a disc of your fasteners first: each recess is as wide and as deep as that.`;
  // A hole that the plan itself says may be for anything.
  const pegged = hole.kind === "dowel" && work.plan.fasteners.some(({ id, kind }) => kind === "peg" && id === hole.for);
  const kind = hole.for === null ? "" : pegged ? "peg " : (KINDS[hole.kind] ?? "");
  const what = `${word}${purpose(work, list)}`;
  const depth = hole.through ? "right through" : `${print(last.depth)} deep`;
  const bore = hole.slot
    ? `Cut ${n} ${n === "a" ? "slot" : "slots"} ${drill(last.diameter)} wide and ${print(hole.slot.length)} long from ${acrossWord(hole.slot.along)} into the ${face}, ${depth}`
    : n === "a"
      ? `Bore ${withArticle(drill(last.diameter))} ${kind}${what} into the ${face}, ${depth}`
      : // The diameter stands behind: "15 3/32 in holes" would be read as one size.
        `Bore ${n} ${kind}${what}, ${drill(last.diameter)} across, into the ${face}, ${depth}`;
  if (hole.stages.length === 1) return `${bore}.`;
  return first.cone
    ? `${bore}, and countersink until ${n === "a" ? "the head lies" : "the heads lie"} flush.`
    : `${bore}; first bore ${drill(first.diameter)} wide and ${print(first.depth)} deep for the heads.`;
}

/** ", open to the front": the face of the part that recesses break out of. */
function openTo({ body }: Part, list: readonly Hole[]): string {
  const wide = half(list[0]?.stages[0]?.diameter ?? ZERO);
  const open = INDICES.flatMap((axis) => {
    if (axis === axisOf((list[0] as Hole).direction)) return [];
    return [
      ...(list.every(({ at }) => less(subtract(at[axis], wide), body.low[axis])) ? [faceOf(axis, false)] : []),
      ...(list.every(({ at }) => less(body.high[axis], add(at[axis], wide))) ? [faceOf(axis, true)] : []),
    ];
  });
  return open.length === 0 ? "" : `, open to the ${series(open)}`;
}

const KINDS: Readonly<Partial<Record<Hole["kind"], string>>> = {
  oversized: "oversized ",
  dowel: "dowel ",
  pin: "shelf pin ",
  bolt: "bolt ",
  nut: "cross dowel ",
};

/** "front to back" */
const acrossWord = (along: Hole["direction"]): string =>
  `${faceOf(axisOf(along), false)} to ${faceOf(axisOf(along), true)}`;

/** "right end": what a pocket leans to. */
const endOf = (part: Part, { direction }: Hole): string => {
  const axis = axisOf(direction);
  return `${faceOf(axis, direction[axis] > 0)} ${sideWord(part, axis)}`;
};

/** A pocket leans along the length: its face is the broad one that it starts in. */
const pocketFace = (part: Part, { direction }: Hole): string => {
  const thin = indexOf(part.axes.thickness);
  return `${faceOf(thin, direction[thin] < 0)} face`;
};

/** Centres in rows: those that share their distance along the part are told together. */
function placeTexts(work: Work, part: Part, list: readonly Hole[]): readonly string[] {
  const into = axisOf((list[0] as Hole).direction);
  const long = indexOf(part.axes.length) === into ? indexOf(part.axes.width) : indexOf(part.axes.length);
  const other = INDICES.find((i) => i !== into && i !== long) as AxisIndex;
  const marked = { print: work.place };
  const at = (hole: Hole, axis: AxisIndex): string =>
    fromNearer(marked, part, axis, hole.at[axis], hole.at[axis]) ?? "in the middle";
  const rows = new Map<string, Row>();
  for (const hole of list) {
    const key = at(hole, long);
    // A jig for pockets sets their distance from the face.
    const across = hole.kind === "pocket" ? [] : [at(hole, other)];
    const row = rows.get(key);
    if (row) row.across.push(...across);
    else rows.set(key, { along: key, place: hole.at[long], across });
  }
  // Pins are all marked from one end, on both sides: so shelves lie level.
  const isPin = list[0]?.kind === "pin";
  return inRuns([...rows.values()]).map((run) => runText(work, part, long, run, isPin));
}

interface Row {
  readonly along: string;
  readonly place: Length;
  readonly across: string[];
}

/** Three rows or more at equal distances are one run. */
const RUN = 3;

function inRuns(rows: readonly Row[]): readonly (readonly Row[])[] {
  const sorted = rows.toSorted((a, b) => compare(a.place, b.place));
  const goesOn = (run: readonly Row[], next: Row): boolean => {
    const [before, last] = run.slice(-2);
    if (run[0]?.across.join() !== next.across.join()) return false;
    return !before || !last || equal(subtract(last.place, before.place), subtract(next.place, last.place));
  };
  const runs: Row[][] = [];
  for (let i = 0; i < sorted.length; ) {
    const run = [sorted[i] as Row];
    for (let next = sorted[i + 1]; next && goesOn(run, next); next = sorted[i + run.length]) run.push(next);
    const taken = run.length >= RUN ? run : run.slice(0, 1);
    runs.push(taken);
    i += taken.length;
  }
  // In the order in which they came, where none go together.
  return runs.every((run) => run.length === 1) ? rows.map((row) => [row]) : runs;
}

function runText(work: Work, part: Part, long: AxisIndex, run: readonly Row[], isPin: boolean): string {
  const [first, second] = run;
  const across = series(first?.across ?? []);
  if (!first || !second) return across === "" ? `– ${first?.along}.` : `– ${first?.along}: ${across}.`;
  const last = run.at(-1) as Row;
  // As each row alone is: from the end that is nearer to all of them.
  const { low, high } = part.blank;
  const isHigh = !isPin && less(subtract(high[long], first.place), subtract(first.place, low[long]));
  const end = `the ${faceOf(long, isHigh)} ${sideWord(part, long)}`;
  const off = ({ place }: Row): Length => (isHigh ? subtract(high[long], place) : subtract(place, low[long]));
  const from = (row: Row): string => work.place(off(row));
  const step = subtract(second.place, first.place);
  // Between two marks of the tape it would add up to something else: they are stepped off.
  const apart = equal(markable(step, work.design.units), step) ? `, ${work.print(step)} apart` : " at even distances";
  return `– ${numberWord(run.length)} rows${apart}, from ${from(isHigh ? last : first)} to ${from(isHigh ? first : last)} from ${end}${across === "" ? "" : `: ${across}`}.`;
}
