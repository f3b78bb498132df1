/** What several hands and clamps are for in a glue-up: which go where. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { enclosing, faceOf, INDICES } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import { placesOfClamps } from "./clamping.ts";
import { called, numberWord, plural, series, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** "three on the bottom panel (D), one on each of two rails (L)", direction by direction: where they are not all on one part. */
export function clampPlaces(work: Work, moves: readonly Move[]): readonly string[] {
  const places = placesOfClamps(work, moves);
  if (new Set(places.map(({ part }) => work.line(part).mark)).size < 2) return [];
  const ways = groupedBy(places, ({ axis }) => `${axis}`);
  const told = ways.map((own) => {
    const byPart = groupedBy(own, ({ part }) => part).map((some) => ({
      part: some[0]?.part ?? "",
      count: some.length,
    }));
    const alike = groupedBy(byPart, ({ part, count }) => `${work.line(part).mark} ${count}`);
    const words = alike.map((some) => {
      const [{ part, count } = { part: "", count: 0 }] = some;
      const on =
        some.length === 1 ? `the ${called(work, part)}` : `each of ${numberWord(some.length)} ${plural(work, part)}`;
      return `${numberWord(count)} on ${on}`;
    });
    return `${series(words)}${ways.length === 1 ? "" : ` ${ACROSS[own[0]?.axis ?? 0]}`}`;
  });
  return [`Set the clamps so: ${told.join("; ")}.`];
}

const ACROSS = ["from left to right", "from front to back", "from top to bottom"] as const;

/** What clamps press on where it lies behind the outside of the whole: a block there stands past that, and reaches it. */
export function setBackTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const ids = [...new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]))];
  const parts = ids.map(work.part).filter(({ turned }) => !turned);
  const [one, ...more] = parts.map(({ body }) => body);
  if (!one) return [];
  const whole = more.reduce(enclosing, one);
  const found = placesOfClamps(work, moves).flatMap(({ axis, at }) =>
    [false, true].flatMap((high) => {
      const out = ({ body }: Part): Length =>
        high ? subtract(whole.high[axis], body.high[axis]) : subtract(body.low[axis], whole.low[axis]);
      const others = INDICES.filter((i) => i !== axis);
      const there = parts.filter(({ body }) =>
        others.every((i, k) => !less(at[k] as Length, body.low[i]) && !less(body.high[i], at[k] as Length)),
      );
      const [outer] = there.toSorted((a, b) => compare(out(a), out(b)));
      return outer && less(LEAST, out(outer)) ? [{ part: outer.id, side: faceOf(axis, high), back: out(outer) }] : [];
    }),
  );
  return groupedBy(found, ({ part, side }) => `${part} ${side}`).flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const { units } = work.design;
    const lies = `On the ${first.side} the ${called(work, first.part)} lies ${work.print(first.back)} behind what stands out farthest`;
    if (less(FAR, first.back)) return [`${lies}: its clamps are short ones, that end on it.`];
    const thick = roundTo(add(first.back, PAST[units]), PAST[units], "up");
    return [`${lies}: put a block at least ${work.print(thick)} thick between it and each clamp that presses on it.`];
  });
}

/** No block is thicker. */
const FAR = inches(4);
/** Less is taken up by a pad; a block stands so far past what it lies behind. Common practice, no source. */
const LEAST = inches(1, 8);
const PAST = { inch: inches(1, 8), mm: millimetres(5) } as const;

/** So many dowels find their holes at once with four hands only. Common practice, no source. */
const MANY = 8;

/** A body that was built before, and goes on dowels that stand in what is there. */
export const manyDowels = (work: Work, moves: readonly Move[]): boolean => dowelsOf(work, moves) >= MANY;

const dowelsOf = (work: Work, moves: readonly Move[]): number =>
  moves
    .filter(({ arrivesBuilt }) => arrivesBuilt)
    .flatMap((move) => move.work.filter(({ joint }) => joint.method === "dowels"))
    .reduce((so, { joint }) => so + (work.plan.chosen.get(joint.id)?.fasteners.length ?? 0), 0);

/** What is not glued is not clamped: its bolts draw it. */
const drawnBy = (moves: readonly Move[]): string => {
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const bolted = joints.some(({ method }) => method === "bolts" || method === "bolts and cross dowels");
  return bolted && joints.every(({ glue }) => !glue) ? "bolts" : "clamps";
};

export const togetherTexts = (work: Work, moves: readonly Move[]): readonly string[] =>
  manyDowels(work, moves)
    ? [
        `Do it with a second person: ${dowelsOf(work, moves)} dowels have to find their holes at once. Lower it evenly, and draw it home with the ${drawnBy(moves)}, each a little by turns.`,
      ]
    : [];
