/** What several hands and clamps are for in a glue-up: which go where. */
import { inches } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import { type ClampEnd, clampEnds, endsOnIt } from "./clamp-ends.ts";
import { placesOfClamps, underCauls } from "./clamping.ts";
import { called, listed, numberWord, plural, series, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";
import { calledAmong } from "./words/by-place.ts";

/** "three on the bottom panel (D), one on each of two rails (L)", direction by direction: where they are not all on one part. */
export function clampPlaces(work: Work, moves: readonly Move[]): readonly string[] {
  const places = placesOfClamps(work, moves);
  const cauls = caulTexts(work, moves);
  const all = moves.flatMap(({ present, arriving }) => [...present, ...arriving]);
  if (new Set(places.map(({ part }) => work.line(part).mark)).size < 2) return cauls;
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
      const on =
        some.length === 1
          ? `the ${apart ? calledAmong(work, part, all) : called(work, part)}`
          : `each of ${numberWord(some.length)} ${plural(work, part)}`;
      return `${numberWord(count)} on ${on}`;
    });
    return `${series(words)}${ways.length === 1 ? "" : ` ${ACROSS[own[0]?.axis ?? 0]}`}`;
  });
  return [`Set the clamps so: ${told.join("; ")}.`, ...cauls];
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

const ACROSS = ["from left to right", "from front to back", "from top to bottom"] as const;

/** What clamps press on where that lies behind the outside of the whole, or has a bare tenon on it; alike parts together. */
export function setBackTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const ends = placesOfClamps(work, moves).flatMap(({ axis, at }) => clampEnds(work, moves, axis, at));
  const told = ends.filter(({ back, tenon, slope }) => tenon !== null || slope !== null || less(LEAST, back));
  const [sloping, square] = [told.filter(({ slope }) => slope !== null), told.filter(({ slope }) => slope === null)];
  const key = ({ part, back, tenon, block }: ClampEnd): string =>
    [work.line(part).mark, work.print(back), tenon && work.print(tenon), work.print(block)].join();
  const wedged = groupedBy(sloping, ({ slope }) => `${slope?.degrees} ${slope?.towards}`).flatMap((own) =>
    wedgeText(work, own),
  );
  const setBack = groupedBy(square, key).flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const ids = [...new Set(own.map(({ part }) => part))];
    const one = ids.length === 1;
    const sides = series([...new Set(own.map(({ side }) => `the ${side}`))]);
    const on = `On ${sides} ${listed(work, ids)}`;
    if (first.tenon !== null)
      return [
        `${on} ${one ? "ends in a bare tenon" : "end in bare tenons"} ${work.print(first.tenon)} long, and nothing may press on ${one ? "it" : "those"}: put blocks at least ${work.print(first.block)} thick on the ${one ? "shoulder" : "shoulders"} beside the ${one ? "tenon, or one that is cut out over it" : "tenons, or such as are cut out over them"}.`,
      ];
    const lies = `${on} ${one ? "lies" : "lie"} ${work.print(first.back)} behind what stands out farthest`;
    const them = one ? "it" : "them";
    return endsOnIt(first)
      ? [`${lies}: the clamps that press on ${them} end there.`]
      : [
          `${lies}: put a block at least ${work.print(first.block)} thick between ${them} and each clamp that presses on ${them}.`,
        ];
  });
  return [...setBack, ...wedged];
}

/** On what slopes alike a clamp slides, but for a wedge. */
function wedgeText(work: Work, own: readonly ClampEnd[]): readonly string[] {
  const slope = own[0]?.slope;
  if (!slope) return [];
  const ids = [...new Set(own.map(({ part }) => part))];
  const sides = series([...new Set(own.map(({ side }) => `the ${side}`))]);
  return [
    `On ${sides} ${listed(work, ids)} ${ids.length === 1 ? "slopes" : "slope"} ${slope.degrees}° where clamps press, and a clamp slides on a slope: put a wedge between, sawn to ${slope.degrees}° from offcuts, its thick end towards the ${slope.towards}, and tape it on.`,
  ];
}

/** Less is taken up by a pad. Common practice, no source. */
const LEAST = inches(1, 8);

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
