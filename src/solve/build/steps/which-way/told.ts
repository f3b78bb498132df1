/** What has to be told so that every body of a step comes the right way round, and nothing that its joints force. */
import type { Movement } from "../../../../geometry/transform.ts";
import { equal, less } from "../../../../units/rational.ts";
import { enclosing, INDICES, middle, unit } from "../../../design/space.ts";
import type { Box, Direction, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import type { Sign } from "./sign.ts";
import { cutSigns, signsOf } from "./signs.ts";
import { outlineOf, staysSame } from "./traits.ts";
import { halfTurnsOf, keeps } from "./turns.ts";
import { isOfPiece, type Rigid, rigidIn } from "./wrong.ts";

export interface Told {
  readonly signs: readonly Sign[];
  /** Cuts of other bodies that look the same way, by the side of which it is seen which way that is. */
  readonly as: readonly Sign[];
  /** Where parts lie, where nothing else tells the sides of the whole from each other. */
  readonly lying: readonly { readonly part: Part; readonly way: Direction }[];
}

const NOTHING: Told = { signs: [], as: [], lying: [] };

export function toldOf(work: Work, moves: readonly Move[]): Told {
  const bodies = rigidIn(work, moves);
  const there = new Set(bodies.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const within = (ids: ReadonlySet<string>): readonly string[] =>
    work.design.joints.flatMap(({ id, parts }) => (parts.every((each) => ids.has(each)) ? [id] : []));
  const filled = new Set(within(there));
  const driven = new Set(bodies.flatMap(({ parts }) => within(new Set(parts.map(({ id }) => id)))));
  const signsIn = (parts: readonly Part[]): readonly Sign[] =>
    parts.flatMap((part) => signsOf(work, part, { filled, driven }));
  const each = bodies.map(({ parts, wrong }) => (wrong.length === 0 ? [] : chosen(signsIn(parts), wrong)));
  const signs = each.flat();
  if (signs.length === 0) return NOTHING;
  const looking = bodies.flatMap(({ parts }, i) =>
    each[i]?.length === 0 && parts.length === 1 ? parts.flatMap((part) => cutSigns(work, part, filled)) : [],
  );
  const as = looking.filter(
    ({ how, way }) => how === "looks" && signs.some((sign) => sign.how === how && sign.way.join() === way.join()),
  );
  const others = bodies.flatMap(({ parts }, i) => (each[i]?.length === 0 ? signsIn(parts) : []));
  return { as, ...sidesOf(work, moves, bodies, { signs, as, others }) };
}

/** One sign that tells all that is wrong, or as few as do. */
function chosen(signs: readonly Sign[], wrong: readonly Movement[]): readonly Sign[] {
  const told = ({ way }: Sign): number => wrong.filter((turn) => !keeps([turn], way)).length;
  const [best] = signs.toSorted((a, b) => told(b) - told(a));
  if (!best || told(best) === 0) return [];
  const left = wrong.filter((turn) => keeps([turn], best.way));
  return left.length === 0 ? [best] : [best, ...chosen(signs, left)];
}

/**
 * All that is told would be true of the whole with its sides taken for others, and a part in it wrong: then it is told where one of those parts lies, or
 * what of another one looks where. Where the work was begun before, and is not told itself, its sides are known.
 */
function sidesOf(
  work: Work,
  moves: readonly Move[],
  bodies: readonly Rigid[],
  { signs, as, others }: { readonly [key in "signs" | "as" | "others"]: readonly Sign[] },
): Omit<Told, "as"> {
  const [present] = bodies;
  const all = bodies.flatMap(({ parts }) => parts);
  const known = present && !moves[0]?.starts && !signs.some(({ part }) => present.parts.includes(part));
  if (known || all.some(({ turned }) => turned)) return { signs, lying: [] };
  const whole = all.map(({ body }) => body).reduce(enclosing);
  const turns = halfTurnsOf(whole);
  const outline = all.flatMap((part) => outlineOf(part));
  const more: Sign[] = [];
  const lying: { readonly part: Part; readonly way: Direction }[] = [];
  for (const turn of turns) {
    const open = staysSame(outline, turn) && lying.every(({ way }) => keeps([turn], way));
    if (!open || !isTaken(work, bodies, [...signs, ...as, ...more], turn, turns)) continue;
    const [place] = bodies
      .flatMap(({ parts }) => (parts.length === 1 ? parts : []))
      .filter((part) => signs.some((sign) => sign.part === part))
      .flatMap((part) => waysOf(part, whole).map((way) => ({ part, way })))
      .filter(({ way }) => !keeps([turn], way));
    if (place) lying.push(place);
    else more.push(...others.filter(({ how, way }) => how === "looks" && !keeps([turn], way)).slice(0, 1));
  }
  return { signs: [...signs, ...more], lying };
}

/** Whether all signs are true of a whole that is taken for what it is when it is turned, and some of its bodies are turned wrong in it. */
function isTaken(
  work: Work,
  bodies: readonly Rigid[],
  signs: readonly Sign[],
  turn: Movement,
  all: readonly Movement[],
) {
  const options = bodies.map(({ parts, wrong }) =>
    [[], ...wrong.map((each) => [each])].filter((own) =>
      signs.every(({ part, way }) => !parts.includes(part) || keeps([...own, turn], way)),
    ),
  );
  const isRight = (turns: readonly (readonly Movement[])[], after: readonly Movement[]): boolean =>
    turns.every((own, i) => bodies[i]?.parts.every((part) => isOfPiece(work, part, [...own, ...after])));
  return oneOfEach(options).some(
    (turns) =>
      turns.some(({ length }) => length > 0) &&
      ![[], ...all.map((each) => [each])].some((after) => isRight(turns, after)),
  );
}

/** Of more than these what is told by each is enough. */
const MOST = 256;

/** Every way to take one of each list. */
function oneOfEach<T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] {
  if (lists.reduce((so, { length }) => so * length, 1) > MOST) return [];
  return lists.reduce<readonly (readonly T[])[]>(
    (so, list) => so.flatMap((some) => list.map((each) => [...some, each])),
    [[]],
  );
}

/** To which sides of the whole a part lies. */
const waysOf = ({ body }: Part, whole: Box): readonly Direction[] =>
  INDICES.flatMap((i) => {
    const [own, all] = [middle(body, i), middle(whole, i)];
    return equal(own, all) ? [] : [unit(i, less(own, all) ? -1 : 1)];
  });
