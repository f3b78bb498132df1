/** Wood on the bench, not yet what the piece holds: each kind lies flat, its length to the right, side by side with the others. */
import { type Movement, move } from "../../../geometry/index.ts";
import { solidBox } from "../../../geometry/solid.ts";
import { movePoint } from "../../../geometry/transform.ts";
import type { Solid, Vec } from "../../../geometry/types.ts";
import { minus, plus, times } from "../../../geometry/vec.ts";
import { partAfter } from "../../../solve/build/part-after.ts";
import type { Blank, Build, CutLine, Step } from "../../../solve/build.ts";
import { makingOf } from "../../../solve/design/making/plain.ts";
import { onBench } from "../../../solve/design/turning.ts";
import { type Length, toNumber, ZERO } from "../../../units/index.ts";
import type { Marked } from "../labels.ts";
import { lying, sideWord } from "../part/lying.ts";
import { bandedIn, type Done } from "./banded.ts";
import { edgesCut, turnedTo, type Ways } from "./edge-cuts.ts";
import { notYetParted } from "./not-yet-parted.ts";

export interface Laid {
  readonly items: readonly Marked[];
  /** What the step takes off edges of an item, and the normals of those that it bands. */
  readonly done?: readonly Done[];
  /** Pencil lines on top of them. */
  readonly pencil: readonly (readonly [Vec, Vec])[];
}

/** What is alike: one of it, how many there are, and how they lie to each other. */
interface Kind {
  readonly key: string;
  readonly mark: string;
  readonly count: number;
  readonly solid: Solid;
  /** Boards and layers that are glued to one; 1 × 1 for what lies apart. */
  readonly boards: number;
  readonly layers: number;
  readonly done?: Omit<Done, "id">;
}

/** So many pieces are drawn one by one; of more only one of each kind, but for so many where the picture is no more than so many times as wide by that. */
const FEW = 12;
const MOST = 20;
const WIDER = 1.5;
/** Between pieces alike, and between kinds, as shares of the longest. */
const CLOSE = 0.02;
const APART = 0.06;

export function laidOnBench(build: Build, step: Step): Laid {
  const kinds = kindsOf(build, step);
  const all = kinds.reduce((sum, { count }) => sum + count, 0);
  const longest = Math.max(1, ...kinds.map(({ solid }) => sizeOf(solid)[0]));
  const laid = (drawn: (kind: Kind) => number) =>
    inColumns(
      kinds.map((kind) => stackOf(kind, drawn(kind), CLOSE * longest)).toSorted((a, b) => b.size[0] - a.size[0]),
      APART * longest,
    );
  const each = laid(({ count }) => (all <= MOST ? count : 1));
  if (all <= FEW || all > MOST) return each.laid;
  const one = laid(() => 1);
  return each.size <= WIDER * one.size ? each.laid : one.laid;
}

function kindsOf(build: Build, step: Step): readonly Kind[] {
  const lines = build.cutList.filter(({ parts }) => parts.some((id) => step.shows.fresh.includes(id)));
  switch (step.shows.as) {
    case "sawn":
      return alike(blanksIn(build, step, lines).map(blankKind));
    case "glued":
      return lines.flatMap((line) => slabKind(build, line));
    case "worked":
      return lines.flatMap((line) => workedKind(build, line, step.number));
    default:
      return lines.flatMap((line) => {
        const whole = notYetParted(build, step, line);
        if (whole.length > 0) return alike(whole.map(blankKind));
        return {
          ...single(`${line.mark} in its size`, line.mark, boxOf(line)),
          count: line.parts.length,
          ...bandedIn(build, step, line),
        };
      });
  }
}

/** What the step saws; where no action tells, what its parts are made from. */
function blanksIn({ blanks }: Build, { actions }: Step, lines: readonly CutLine[]): readonly Blank[] {
  const made = new Set(actions.flatMap((action) => (action.do === "make" ? action.blanks : [])));
  const parts = new Set(lines.flatMap((line) => line.parts));
  return blanks.filter(({ id, part, alsoParts = [] }) =>
    made.size > 0 ? made.has(id) : [part, ...alsoParts].some((each) => parts.has(each)),
  );
}

const single = (key: string, mark: string, solid: Solid): Kind => ({
  key,
  mark,
  count: 1,
  solid,
  boards: 1,
  layers: 1,
});

const blankKind = (blank: Blank): Kind =>
  single(
    [blank.mark, ...[blank.length, blank.width, blank.thickness].map(toNumber)].join(" "),
    blank.mark,
    boxOf(blank),
  );

function alike(kinds: readonly Kind[]): readonly Kind[] {
  const counted = new Map<string, Kind>();
  for (const kind of kinds) counted.set(kind.key, { ...kind, count: (counted.get(kind.key)?.count ?? 0) + 1 });
  return [...counted.values()];
}

/** The first of a line that is glued up; its others go together alike. */
function slabKind({ blanks, parts }: Build, { mark, parts: [first = ""] }: CutLine): readonly Kind[] {
  const [part, blank] = [parts.find(({ id }) => id === first), blanks.find((each) => each.part === first)];
  if (!part || !blank) return [];
  const { boards, layers } = makingOf(part);
  const solid = boxOf({ ...blank, width: blank.jointed ?? blank.width });
  return [{ ...single(`${mark} glued up`, mark, solid), boards, layers }];
}

function workedKind(build: Build, { mark, parts: ids }: CutLine, number: number): readonly Kind[] {
  const part = build.parts.find(({ id }) => ids.includes(id));
  if (!part) return [];
  const after = partAfter(build, part, number);
  const edges = edgesCut(build, part, number);
  const { face } = lying(after, build.holes);
  const ways = edges.length === 0 ? face : turnedTo(edges, onBench(after).solid, face);
  const way = movementOf(ways);
  const says = `${capital(sideWord(ways.towards))} side up, ${sideWord(times(ways.up, -1))} side at the lower left`;
  return [
    {
      ...single(`${mark} ${number}`, mark, move(onBench(after).solid, way)),
      count: ids.length,
      ...(edges.length > 0 && {
        done: {
          edges: edges.map(({ from, to }) => ({ from: movePoint(from, way), to: movePoint(to, way) })),
          banded: [],
          says,
        },
      }),
    },
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const boxOf = ({ length, width, thickness }: Readonly<Record<"length" | "width" | "thickness", Length>>): Solid =>
  solidBox([ZERO, ZERO, ZERO], [length, width, thickness]);

/** As in the drawing of the part: the side with most work in it up. */
function movementOf({ right, up, towards }: Ways): Movement {
  const ways = [right, up, towards] as const;
  const from = ways.map((way) => way.findIndex((c) => Math.abs(c) > 0.5)) as unknown as Movement["from"];
  const sign = ways.map((way) => Math.sign(way.find((c) => Math.abs(c) > 0.5) ?? 1)) as unknown as Movement["sign"];
  return { from, sign, shift: [ZERO, ZERO, ZERO] };
}

const sizeOf = ({ low, high }: Solid): Vec => minus(high, low);

/** Some of a kind, with their low corner at the origin. */
interface Stack extends Laid {
  readonly size: Vec;
}

function stackOf({ key, mark, count, solid, boards, layers, done }: Kind, drawn: number, gap: number): Stack {
  const [long, wide, high] = sizeOf(solid);
  const places =
    boards * layers > 1
      ? range(layers).flatMap((k) => range(boards).map((j): Vec => [0, j * wide, k * high]))
      : range(drawn).map((j): Vec => [0, j * (wide + gap), 0]);
  const across = Math.max(boards * wide, drawn * wide + (drawn - 1) * gap);
  const label = count > 1 ? `${mark} × ${count}` : mark;
  return {
    size: [long, across, layers * high],
    items: places.map((at, i) => ({
      id: `${key} ${i}`,
      mark: i === places.length - 1 ? label : "",
      solid,
      shift: minus(at, solid.low),
    })),
    pencil: boards > 1 ? triangle([long, across, layers * high]) : [],
    done: done ? places.map((_, i) => ({ id: `${key} ${i}`, ...done })) : [],
  };
}

const range = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);

/** The cabinetmaker's triangle over all the boards: its foot along the first, its tip on the last. */
function triangle([long, across, high]: Vec): Laid["pencil"] {
  const half = Math.min(0.18 * long, 0.5 * across);
  const [left, right, tip]: readonly [Vec, Vec, Vec] = [
    [long / 2 - half, 0.08 * across, high],
    [long / 2 + half, 0.08 * across, high],
    [long / 2, 0.92 * across, high],
  ];
  return [
    [left, right],
    [right, tip],
    [tip, left],
  ];
}

/** The longest first, from the front to the back, in so many columns as make the picture smallest. */
function inColumns(stacks: readonly Stack[], gap: number): { readonly size: number; readonly laid: Laid } {
  let best: { readonly size: number; readonly laid: Laid } | null = null;
  let most = -gap;
  for (const { size } of stacks) {
    most += size[1] + gap;
    const tried = columnsOf(stacks, most, gap);
    if (!best || tried.size < best.size - 1e-6) best = tried;
  }
  return best ?? { size: 0, laid: { items: [], pencil: [] } };
}

/** Columns no deeper than `most`, where a stack goes in at all. */
function columnsOf(
  stacks: readonly Stack[],
  most: number,
  gap: number,
): { readonly size: number; readonly laid: Laid } {
  let [x, y, wide, deep] = [0, 0, 0, 0];
  const placed = stacks.map((stack) => {
    if (y > 0 && y + stack.size[1] > most + 1e-6) [x, y, wide] = [x + wide + gap, 0, 0];
    const at: Vec = [x, y, 0];
    wide = Math.max(wide, stack.size[0]);
    deep = Math.max(deep, y + stack.size[1]);
    y += stack.size[1] + gap;
    return moved(stack, at);
  });
  return {
    size: x + wide + deep,
    laid: {
      items: placed.flatMap(({ items }) => items),
      pencil: placed.flatMap(({ pencil }) => pencil),
      done: stacks.flatMap(({ done = [] }) => done),
    },
  };
}

const moved = ({ items, pencil }: Laid, by: Vec): Laid => ({
  items: items.map((item) => ({ ...item, shift: plus(item.shift ?? [0, 0, 0], by) })),
  pencil: pencil.map(([from, to]) => [plus(from, by), plus(to, by)]),
});
