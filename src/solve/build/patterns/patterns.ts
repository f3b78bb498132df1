/** What is easier traced or pricked through than measured, each once for all the parts that have it. */
import type { Length } from "../../../units/length.ts";
import type { Design, Hardware, Hole } from "../../design.ts";
import type { Uses } from "../model/jig.ts";
import type { CurvePattern, HolePattern, Pattern, Side } from "../model/pattern.ts";
import { together } from "../together.ts";
import { type CurveDraft, curveOf } from "./curves.ts";
import { holesOf } from "./hardware.ts";
import { taperOf } from "./tapers.ts";

interface Given {
  readonly design: Design;
  readonly holes: readonly Hole[];
  readonly hardware: readonly Hardware[];
  readonly mark: (id: string) => string;
  readonly print: (length: Length) => string;
}

export function patternsOf(given: Given): readonly Pattern[] {
  const all: readonly (Omit<CurvePattern, "id"> | Omit<HolePattern, "id">)[] = [
    ...curvePatterns(given),
    ...holePatterns(given),
  ];
  // As they are printed: those in their true size come last, on sheets of their own.
  const inOrder = [...all].sort((a, b) => Number(a.full) - Number(b.full));
  return inOrder.map((pattern, i): Pattern => ({ ...pattern, id: `pattern ${i + 1}` }));
}

const NO_USES: Uses = { holes: [], features: [], parts: [] };
const text = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) => (typeof each === "bigint" ? `${each}n` : each));
const withOne = (all: readonly string[], one: string): readonly string[] => (all.includes(one) ? all : [...all, one]);

function curvePatterns({ design, mark, print }: Given): readonly Omit<CurvePattern, "id">[] {
  const found = new Map<string, CurveDraft & Pick<CurvePattern, "marks" | "uses">>();
  for (const part of design.parts)
    for (const [i, feature] of part.features.entries()) {
      const own = part.turned?.features[i] ?? feature;
      const drawn = own.kind === "taper" ? taperOf(part, own, print) : curveOf(design, part, own, print);
      if (drawn === null) continue;
      // Mirror images are the same pattern, turned over.
      const key = text([drawn.what, drawn.outline, drawn.width]);
      const { marks, uses, ...before } = found.get(key) ?? { ...drawn, marks: [], uses: NO_USES };
      const features = [...uses.features, `${part.id} ${i}`];
      found.set(key, { ...before, marks: withOne(marks, mark(part.id)), uses: { ...uses, features } });
    }
  return [...found.values()];
}

function holePatterns({ design, holes, hardware, mark }: Given): readonly Omit<HolePattern, "id">[] {
  const found = new Map<string, Omit<HolePattern, "id">>();
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  for (const { id, item } of hardware) {
    const own = holes.flatMap((hole, i) => (hole.for === id ? [{ hole, i }] : []));
    for (const bored of together(own, ({ hole }) => hole.part)) {
      const partId = bored[0].hole.part;
      const part = parts.get(partId);
      const drawn =
        part &&
        holesOf(
          part,
          bored.map(({ hole }) => hole),
          mark(partId),
        );
      if (!drawn) continue;
      const key = text([item.label, drawn.holes, drawn.x.edge === null, drawn.y.edge === null]);
      const before = found.get(key);
      found.set(key, {
        ...{ of: "hardware", what: item.label, kind: item.kind, ...drawn, count: (before?.count ?? 0) + 1 },
        ...{ x: sidesTogether(before?.x, drawn.x), y: sidesTogether(before?.y, drawn.y) },
        into: either(before?.into, drawn.into),
        ...{ down: before?.down ?? drawn.down, over: before?.over === true || (before ?? drawn).down !== drawn.down },
        marks: withOne(before?.marks ?? [], mark(partId)),
        uses: { ...NO_USES, holes: [...(before?.uses.holes ?? []), ...bored.map(({ i }) => i)] },
      });
    }
  }
  return [...found.values()];
}

/** Words that are told apart no more: "front edge or front face". */
const either = (before: string | undefined, word: string): string =>
  before === undefined ? word : withOne(before.split(" or "), word).join(" or ");

function sidesTogether(before: Side | undefined, side: Side): Side {
  if (before === undefined) return side;
  if (before.edge !== null && side.edge !== null) {
    const all = [...before.edge, ...side.edge];
    const sides = [...new Set(all.map((each) => each.side))];
    const marksOf = (one: string) => [...new Set(all.flatMap((each) => (each.side === one ? each.marks : [])))];
    return { edge: sides.map((one) => ({ side: one, marks: marksOf(one) })) };
  }
  if (before.edge !== null || side.edge !== null) return before;
  const known = new Set(before.first.map(text));
  return { edge: null, first: [...before.first, ...side.first.filter((each) => !known.has(text(each)))] };
}
