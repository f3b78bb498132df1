/** What tells the sides of a part by the holes that are bored into it. */
import { absolute, equal, less, min, type Rational, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, INDICES, indexOf, middle, unit } from "../../../design/space.ts";
import type { Box, Hole, Part } from "../../../design.ts";
import { pluralOf, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { mouthSide } from "../words/holes.ts";
import { sideWord } from "../words/measured.ts";
import { isHigher, type Sign } from "./sign.ts";

/** `driven`: ids of joints whose fasteners fill their holes. */
export function holeSigns(work: Work, part: Part, driven: ReadonlySet<string>): readonly Sign[] {
  const filled = new Set([...driven].flatMap((id) => work.plan.chosen.get(id)?.fasteners.map(({ id }) => id) ?? []));
  const bored = work.plan.holes.filter(
    (hole) => hole.part === part.id && hole.atBench && !hole.spare && !filled.has(hole.for ?? ""),
  );
  return groupedBy(bored, (hole) => purpose(work, hole).join()).flatMap((kin) => {
    const [one, more] = purpose(work, kin[0] as Hole);
    const all = groupedBy(kin, (hole) => `${hole.through && hole.stages.length === 1} ${mouth(hole)}`);
    return all.flatMap((holes) => {
      const [first] = holes as [Hole];
      const into = all.length > 1 ? ` in the ${mouthSide(part, first)}` : "";
      const names = { one, many: pluralOf(one), more: `${more}${into}` };
      return [
        ...lookSigns(part, holes, names, all.length > 1),
        ...nearSigns(part, holes, names),
        ...slotSigns(part, holes, names),
      ];
    });
  });
}

type Names = Omit<Sign["what"], "count">;

/** Which face holes are bored into; of those right through, from which the wider bore goes in. */
function lookSigns(part: Part, holes: readonly Hole[], names: Names, told: boolean): readonly Sign[] {
  const [first] = holes as [Hole];
  const axis = alongOf(first);
  const plain = first.through && first.stages.length === 1;
  if (first.kind === "pocket") {
    const thin = indexOf(part.axes.thickness);
    const what = { ...names, one: "pocket hole", many: "pocket holes", count: holes.length };
    return told ? [] : [{ part, what, how: "looks", way: unit(thin, first.direction[thin] > 0 ? -1 : 1) }];
  }
  if (axis === undefined || plain || told) return [];
  const wide = { one: `wide end of the ${names.one}`, many: `wide ends of the ${names.many}`, more: names.more };
  const what = { ...(first.through ? wide : names), count: holes.length };
  return [{ part, what, how: "looks", way: unit(axis, first.direction[axis] > 0 ? -1 : 1) }];
}

function nearSigns(part: Part, holes: readonly Hole[], names: Names): readonly Sign[] {
  const [first] = holes as [Hole];
  return INDICES.flatMap((axis): readonly Sign[] => {
    const spots = holes.map(({ at }) => ({ low: at, high: at }));
    const high = axis === alongOf(first) ? null : isHigher(part.body, spots, axis);
    if (high === null) return [];
    const way = unit(axis, high ? 1 : -1);
    const half = middle(part.body, axis);
    const beyond = spots.some(({ low }) => (high ? less(low[axis], half) : less(half, low[axis])));
    const word = sideWord(part, axis);
    // A square post has faces all round: the nearest to one of them would not be the nearest to one of these.
    if (!beyond || word === "face") return [{ part, what: { ...names, count: holes.length }, how: "nearer", way }];
    const count = countNearest(part, spots, axis, high);
    return [{ part, what: { ...names, some: true, count }, how: "nearest", way }];
  });
}

function countNearest({ body }: Part, spots: readonly Box[], axis: AxisIndex, high: boolean): number {
  const side = high ? "high" : "low";
  const off = spots.map((each) => absolute(subtract(body[side][axis], each[side][axis])));
  const least = off.reduce(min);
  return off.filter((each) => equal(each, least)).length;
}

/** Among slots of several lengths, or among slots and round holes, where the round ones or the longest are. */
function slotSigns(part: Part, holes: readonly Hole[], { one, more }: Names): readonly Sign[] {
  const slots = holes.filter(({ slot }) => slot);
  if (slots.length === 0) return [];
  const [round, long] = [holes.filter(({ slot }) => !slot), longest(slots)];
  const named = (words: string): Names => ({ one: words, many: pluralOf(words), more });
  return [
    ...(round.length > 0 ? nearSigns(part, round, named(`round ${one}`)) : []),
    ...(long.length < slots.length ? nearSigns(part, long, named(`longest ${one.replace(/hole$/u, "slot")}`)) : []),
  ];
}

function longest(slots: readonly Hole[]): readonly Hole[] {
  const sizes = slots.flatMap(({ slot }) => slot?.length ?? []);
  const most = sizes.reduce((a: Rational, b) => (less(a, b) ? b : a));
  return slots.filter(({ slot }) => slot && equal(slot.length, most));
}

const alongOf = ({ direction }: Hole): AxisIndex | undefined => INDICES.find((i) => Math.abs(direction[i]) > 0.9);

const mouth = ({ kind, direction, through, stages }: Hole): string =>
  kind === "pocket"
    ? ""
    : (through && stages.length === 1
        ? direction.map((c) => Math.round(Math.abs(c)))
        : direction.map(Math.round)
      ).join();

/** "hole" and " for the side slide", "screw hole" and nothing. */
function purpose({ plan }: Work, hole: Hole): readonly [string, string] {
  const item = plan.hardware.find(({ id }) => id === hole.for)?.item.kind.replace(/ for an? .*$/u, "");
  if (item !== undefined) return ["hole", ` for the ${item}`];
  const kind = plan.fasteners.find(({ id }) => id === hole.for)?.kind;
  return [kind === undefined ? "hole" : `${/screw/u.test(kind) ? "screw" : kind} hole`, ""];
}
