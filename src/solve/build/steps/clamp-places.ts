/** What several hands and clamps are for in a glue-up: which go where. */
import { inches, type Length } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import { type AxisIndex, extent, indexOf, otherAxes } from "../../design/space.ts";
import { type ClampEnd, clampEnds, isFarIn } from "./clamp-ends.ts";
import { placesOfClamps, underCauls } from "./clamping.ts";
import { called, listed, numberWord, plural, series, type Work } from "./draft.ts";
import { hollowTexts } from "./hollow-seats.ts";
import type { Move } from "./moves.ts";
import { type Sentence, sentence } from "./sentence.ts";
import { MOST } from "./slopes.ts";
import { groupedBy } from "./wishes/own-key.ts";
import { calledAmong, placedAmong } from "./words/by-place.ts";

/** "three on the bottom panel (D), one on each of two rails (L)", direction by direction: where they are not all on one part. */
export function clampPlaces(work: Work, moves: readonly Move[]): readonly string[] {
  const places = placesOfClamps(work, moves);
  const cauls = [...caulTexts(work, moves), ...thinTexts(work, places)];
  const all = moves.flatMap(({ present, arriving }) => [...present, ...arriving]);
  if (new Set(places.map(({ part }) => work.line(part).mark)).size < 2)
    return [...alongTexts(work, places, all), ...cauls];
  const ways = groupedBy(places, ({ axis }) => `${axis}`);
  const told = ways.map((own) => {
    const byPart = groupedBy(own, ({ part }) => part).map((some) => ({
      part: some[0]?.part ?? "",
      count: some.length,
    }));
    const alike = groupedBy(byPart, ({ part, count }) => `${work.line(part).mark} ${count}`);
    const words = alike.map((some) => {
      const [{ part, count } = { part: "", count: 0 }] = some;
      // One rail under a caul, another that is reached.
      const apart = alike.filter(([other]) => other && work.line(other.part).mark === work.line(part).mark).length > 1;
      // One that arrives by itself is told by the step.
      const rivals = moves.some(({ arriving }) => arriving.includes(part))
        ? moves.flatMap((move) => move.arriving)
        : all;
      const others = [...new Set(rivals)].filter(
        (id) => work.line(id).mark === work.line(part).mark && some.every((each) => each.part !== id),
      );
      const on =
        some.length === 1
          ? `the ${apart ? calledAmong(work, part, all) : others.length > 0 ? placedAmong(work, part, rivals) : called(work, part)}`
          : `each of ${numberWord(some.length)} ${plural(work, part)}`;
      return `${numberWord(count)} on ${on}`;
    });
    return `${series(words)}${ways.length === 1 ? "" : ` ${ACROSS[own[0]?.axis ?? 0]}`}`;
  });
  return [`Set the clamps so: ${told.join("; ")}.`, ...cauls];
}

/** Of clamps that all press on one part: along which of the others they lie. */
function alongTexts(work: Work, places: ReturnType<typeof placesOfClamps>, ids: readonly string[]): readonly string[] {
  const lies = places.map(({ axis, at }) =>
    ids.find((id) => {
      const { body, axes, turned } = work.part(id);
      const isIn = (i: AxisIndex, k: number): boolean =>
        !less(at[k] as Length, body.low[i]) && !less(body.high[i], at[k] as Length);
      return !turned && indexOf(axes.length) === axis && otherAxes(axis).every(isIn);
    }),
  );
  const own = groupedBy(
    lies.flatMap((id) => id ?? []),
    (id) => id,
  );
  if (own.length < 2 || lies.includes(undefined) || own.every(({ length }) => length === 1)) return [];
  const told = groupedBy(own, (some) => `${work.line(some[0] as string).mark} ${some.length}`).map((alike) => {
    const [[id = ""] = [], ...more] = alike;
    const which =
      more.length === 0
        ? `the ${calledAmong(work, id, ids)}`
        : `each of ${numberWord(alike.length)} ${plural(work, id)}`;
    return `${numberWord(alike[0]?.length ?? 0)} along ${which}`;
  });
  return [`Set the clamps so: ${series(told)}, ${ACROSS[places[0]?.axis ?? 0]}.`];
}

/** How what is too far in for the jaws is pressed. Common practice, no source. */
function caulTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const under = underCauls(work, moves);
  const all = moves.flatMap(({ present, arriving }) => [...present, ...arriving]);
  return groupedBy(under, ({ beyond }) => beyond).map((own) => {
    const what = series(own.map(({ part }) => `the ${calledAmong(work, part, all)}`));
    const card = "about 1 1/2 in (40 mm) thick, with strips of card under their middles so that they press there first";
    return own[0]?.beyond === "middle"
      ? `No jaws reach the middle of the joints of ${what}: lay stiff cauls along them under the clamps on either side, ${card}.`
      : `No jaws reach ${what}: lay stiff cauls along ${own.length === 1 ? "it" : "each"} from edge to edge of the work, one on either side, ${card}, and set the clamps on their ends.`;
  });
}

/** Between the clamps what is thin lies off: under a stiff caul it is pressed all along. Common practice, no source. */
const THIN = inches(3, 8);

function thinTexts(work: Work, places: ReturnType<typeof placesOfClamps>): readonly string[] {
  const ids = [...new Set(places.map(({ part }) => part))].filter((id) => {
    const own = places.filter(({ part }) => part === id);
    const { body, turned } = work.part(id);
    return !turned && own.length > 1 && own.every(({ axis }) => !less(THIN, extent(body, axis)));
  });
  return ids.length === 0
    ? []
    : [
        `Thin wood lies off between the clamps: lay a stiff straight caul as long as ${ids.length === 1 ? `the ${called(work, ids[0] as string)} on it` : `each of ${listed(work, ids)} on it`}, about 3/4 in (20 mm) thick and with tape over the glue line, and set the clamps on that.`,
      ];
}

const ACROSS = ["from left to right", "from front to back", "from top to bottom"] as const;

/** What clamps press on where that lies far in, beside something that stands out past it, or has a bare tenon on it; alike parts together. */
export function setBackTexts(work: Work, moves: readonly Move[]): readonly Sentence[] {
  const places = placesOfClamps(work, moves).map((place) => ({ place, ends: clampEnds(work, moves, place) }));
  const ends = places.flatMap((each) => each.ends);
  const wedged = groupedBy(
    ends.filter(({ slope }) => slope !== null),
    ({ slope }) => `${slope?.degrees} ${slope?.towards}`,
  ).flatMap((own) => wedgeText(work, own));
  const square = ends.filter(({ slope }) => slope === null);
  const blocks = groupedBy(
    square.filter(({ block }) => block !== null),
    ({ part, tenon, beside, block }) =>
      [
        work.line(part).mark,
        tenon && work.print(tenon),
        beside && work.print(beside.by),
        block && work.print(block),
      ].join(),
  ).flatMap((own) => blockTexts(work, own));
  const clear = groupedBy(
    square.filter(({ block, beside }) => block === null && beside !== null),
    ({ part, beside }) => `${work.line(part).mark} ${work.line(beside?.part ?? part).mark}`,
  ).map((own) => {
    const past = [...new Set(own.flatMap(({ beside }) => (beside ? [beside.part] : [])))];
    return `Set the clamps ${onSides(work, own)} clear of ${listed(work, past)}, which ${past.length === 1 ? "stands" : "stand"} out past ${unique(own).length === 1 ? "it" : "them"}.`;
  });
  return [...reachTexts(work, places), ...blocks, ...clear, ...wedged, ...hollowTexts(work, places)];
}

const unique = (own: readonly ClampEnd[]): readonly string[] => [...new Set(own.map(({ part }) => part))];

/** "on the left of the left side (A)". */
const onSides = (work: Work, own: readonly ClampEnd[]): string =>
  `on ${series([...new Set(own.map(({ side }) => `the ${side}`))])} of ${listed(work, unique(own))}`;

interface Clamp {
  readonly place: Pick<ReturnType<typeof placesOfClamps>[number], "part">;
  readonly ends: readonly ClampEnd[];
}

/** Which two faces are pressed, where a clamp does not reach over the whole. */
function reachTexts(work: Work, clamps: readonly Clamp[]): readonly string[] {
  const short = clamps.filter(({ ends }) => ends.some(isFarIn));
  const key = ({ ends }: Clamp): string => ends.map(({ part, side }) => `${side} ${work.line(part).mark}`).join();
  return groupedBy(short, key).map((own) => {
    const [low, high] = [0, 1].map((i) => own.flatMap(({ ends }) => ends[i] ?? []));
    const which = own.length === clamps.length ? "The jaws" : `The jaws of ${those(work, own)}`;
    return `${which} press ${onSides(work, low ?? [])} and ${onSides(work, high ?? [])}.`;
  });
}

const those = (work: Work, own: readonly Clamp[]): string =>
  `${own.length === 1 ? "the one" : "those"} on ${listed(work, [...new Set(own.map(({ place }) => place.part))])}`;

function blockTexts(work: Work, own: readonly ClampEnd[]): readonly string[] {
  const [first] = own;
  if (!first?.block) return [];
  const ids = unique(own);
  const one = ids.length === 1;
  const sides = series([...new Set(own.map(({ side }) => `the ${side}`))]);
  const on = `On ${sides} ${listed(work, ids)}`;
  const thick = work.print(first.block);
  if (first.tenon !== null)
    return [
      `${on} ${one ? "ends in a bare tenon" : "end in bare tenons"} ${work.print(first.tenon)} long, and nothing may press on ${one ? "it" : "those"}: put blocks at least ${thick} thick on the ${one ? "shoulder" : "shoulders"} beside the ${one ? "tenon, or one that is cut out over it" : "tenons, or such as are cut out over them"}.`,
    ];
  const past = [...new Set(own.flatMap(({ beside }) => (beside ? [beside.part] : [])))];
  const them = one ? "it" : "them";
  return [
    `${on} ${one ? "lies" : "lie"} ${work.print(first.beside?.by ?? first.block)} behind ${listed(work, past)}: put a block at least ${thick} thick between ${them} and each clamp that presses on ${them}.`,
  ];
}

/** On what slopes alike a clamp slides, but for a wedge. */
function wedgeText(work: Work, own: readonly ClampEnd[]): readonly Sentence[] {
  const slope = own[0]?.slope;
  if (!slope) return [];
  const ids = [...new Set(own.map(({ part }) => part))];
  const sides = series([...new Set(own.map(({ side }) => `the ${side}`))]);
  const on = `On ${sides} ${listed(work, ids)} ${ids.length === 1 ? "slopes" : "slope"} ${slope.degrees}° where clamps press, and a clamp slides on a slope:`;
  if (slope.degrees > MOST.leaning)
    return [
      sentence(
        `${on} put a block between with an edge that is sawn to the same bevel from an offcut, its thick end towards the ${slope.towards}, and stick it on with double-sided tape: there seldom is room for a clamp to hold it. Tighten the clamps on it only until the joint is shut.`,
        { uses: [{ of: "double-sided tape", holds: "blocks" }] },
      ),
    ];
  return [
    `${on} put a wedge between, sawn to ${slope.degrees}° from offcuts, its thick end towards the ${slope.towards}, and tape it on.`,
  ];
}

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
        `Do it with a second person: ${dowelsOf(work, moves)} dowels have to find their holes at once. Bring it on evenly, and draw it home with the ${drawnBy(moves)}, each a little by turns.`,
      ]
    : [];
