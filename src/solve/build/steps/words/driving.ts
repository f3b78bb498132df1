import { compare, equal } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES } from "../../../design/space.ts";
import type { Direction, Fastener, FastenerKind, Hole } from "../../../design.ts";
import { sitsAt } from "../../drilling/sits-at.ts";
import { stopOf } from "../../drilling/stop.ts";
import type { Drive } from "../../order/index.ts";
import { capital, listed, numberWord, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { apartText } from "./apart.ts";
import { takesText } from "./buttons.ts";
import { closeTexts } from "./close.ts";
import { coveredTexts } from "./covered-heads.ts";
import { leadText } from "./lead-holes.ts";
import { leanTexts } from "./lean.ts";

/** Fasteners that are sold by the same words, and with the same things. */
export const counted = (fasteners: readonly Fastener[]): readonly { item: string; list: readonly Fastener[] }[] => {
  const items = new Map<string, Fastener[]>();
  for (const fastener of fasteners) {
    const key = [fastener.item, ...(fastener.with ?? [])].join("\n");
    items.set(key, [...(items.get(key) ?? []), fastener]);
  }
  return [...items.values()].map((list) => ({ item: list[0]?.item ?? "", list }));
};

/** "4 wood screws #8 × 2 1/2 in, countersunk head" */
export const countText = (item: string, n: number): string => (n === 1 ? `1 ${item}` : `${n} ${several(item)}`);

const NOUNS =
  /^(?:(?:wood|pocket|lag) screw|(?:wood )?plug|nail|brad|staple|dowel|cross dowel|shelf pin|bolt|nut|peg|spline|loose tenon|biscuit|key|washer|wooden button|metal table-top clip|figure-eight fastener)/;
/** "washers 1/2 in wide": the name of a thing as sold, for more than one. */
const several = (item: string): string => item.replace(NOUNS, "$&s");

const VERBS: Readonly<Partial<Record<FastenerKind, string>>> = { bolt: "push in", "lag screw": "turn in" };

/** How the fasteners of a step are driven: pilots first, then how many of each, from where, through what into what. `there`: ids of what stands together by then. */
export function driveTexts(
  work: Work,
  drives: readonly Drive[],
  up: Direction,
  there: readonly string[] = [],
): readonly Sentence[] {
  return counted(drives.map(({ fastener }) => fastener)).flatMap(({ item, list }) => {
    const first = list[0] as Fastener;
    const own = drives.filter(({ fastener }) => list.includes(fastener));
    const passed = [...new Set(list.flatMap((f) => f.through))];
    const into = listed(work, [...new Set(list.map((f) => f.into))]);
    const sides =
      first.head.seat === "pocket" ? "the pockets" : series([...new Set(list.map((fastener) => sideOf(fastener, up)))]);
    const joints = [...new Set(list.map((f) => f.joint))];
    const each = list.length / joints.length;
    const even = joints.every((joint) => list.filter((f) => f.joint === joint).length === each);
    const share = joints.length > 1 && even ? `, ${numberWord(each)} in each joint` : "";
    const pilot = work.plan.holes.some((hole) => !hole.atBench && list.some((f) => f.id === hole.for));
    const through = passed.length > 0 ? ` through ${listed(work, passed)}` : "";
    const at = heldAt(work, list);
    const verb = VERBS[first.kind] ?? "drive";
    return [
      ...(pilot ? pilotTexts(work, list) : []),
      ...leadText(work, list),
      sentence(
        `${capital(verb)} ${countText(item, list.length)} from ${sides},${through} into ${into}${at}${share}${apartText(work, list, there)}.`,
        { drives: "fasteners", counts: true },
      ),
      ...leanTexts(work, list),
      ...coveredTexts(work, own, there),
      ...closeTexts(work, own, there),
      ...(first.with ? [takesText(work, list) ?? withText(first, list.length)] : []),
      ...(first.with?.some((item) => item.startsWith("cross dowel")) ? [turnedIn(list.length)] : []),
    ];
  });
}

/** " at two long aprons (C)": where the buttons or clips sit that hold what is screwed, of which there may be several kinds. */
function heldAt(work: Work, list: readonly Fastener[]): string {
  if (list.some(({ through, with: own = [] }) => through.length > 0 || own.length === 0)) return "";
  const ids = list.flatMap((one) => sitsAt(work.design.joints, one));
  return ids.length === 0 ? "" : ` at ${listed(work, [...new Set(ids)])}`;
}

/** A sentence for each bit: hard and soft wood take pilots of their own. */
function pilotTexts(work: Work, list: readonly Fastener[]): readonly Sentence[] {
  const holes = work.plan.holes.filter((hole) => !hole.atBench && list.some((f) => f.id === hole.for));
  return groupedBy(holes, ({ stages: [stage] }) => work.drill((stage as Stage).diameter)).map((own) =>
    pilotText(
      work,
      list.filter(({ id }) => own.some((hole) => hole.for === id)),
      own,
    ),
  );
}

type Stage = Hole["stages"][number];

/** Through the holes of a part the stop is set from where the bit goes in, not from where the pilot begins. */
function pilotText(work: Work, list: readonly Fastener[], holes: readonly Hole[]): Sentence {
  const { print, drill } = work;
  const into = listed(work, [...new Set(list.map((f) => f.into))]);
  const [
    {
      stages: [stage],
    },
  ] = holes as [Hole];
  const { diameter, depth } = stage as Stage;
  const { through, with: [own = "holes"] = [] } = list[0] as Fastener;
  const ways =
    through.length === 0 ? `of the ${several(own).replace(/s? [\d#].*$/, "s")}${heldAt(work, list)}` : "that are there";
  const stops = holes.map((hole) => stopOf(hole, work.plan, null)).toSorted(compare);
  const told = [...new Set(stops.map(print))].join(" or ");
  const most = stops.every((stop) => equal(stop, depth)) ? "" : `: set the stop ${told} from the tip of the bit`;
  return sentence(
    `Through the holes ${ways}, drill ${drill(diameter)} pilot holes ${print(depth)} deep into ${into}${most}.`,
    { drives: "holes" },
  );
}

/** What goes with each: "Each takes 2 washers 1 in wide and 1 nut M8." */
function withText({ with: more = [] }: Fastener, n: number): string {
  const items = [...new Set(more)].map((item) => countText(item, more.filter((other) => other === item).length));
  return `${n === 1 ? "It takes" : "Each takes"} ${series(items)}.`;
}

/** A bolt that is only pushed in holds nothing. */
const turnedIn = (n: number): string =>
  `Turn ${n === 1 ? "it into the cross dowel" : "each into its cross dowel"} by hand, a screwdriver in the slot, then with a wrench until the joint is closed and no further. When everything stands, look that it is square, and tighten every bolt once more.`;

/** Where a head is driven from: as the work lies on the bench, else by the side of the finished piece. */
export function sideOf({ direction }: Fastener, up: Direction): string {
  const upwards = INDICES.reduce<number>((so, i) => so + direction[i] * up[i], 0);
  if (Math.abs(upwards) > 0.7) return upwards < 0 ? "above" : "below";
  const size = (i: AxisIndex): number => Math.abs(direction[i]);
  const axis = INDICES.reduce<AxisIndex>((best, i) => (size(i) > size(best) ? i : best), 0);
  const face = faceOf(axis, direction[axis] < 0);
  return `the ${face}`;
}
