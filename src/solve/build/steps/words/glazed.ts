/** How a pane goes into its rabbets, and beads over it. */

import { type Length, TOLERANCE } from "../../../../units/length.ts";
import { less, subtract, toNumber } from "../../../../units/rational.ts";
import { enclosing, extent, faceOf, INDICES, indexOf, middle } from "../../../design/space.ts";
import type { Joint } from "../../../design.ts";
import { panesOf } from "../../order/glazing.ts";
import { listed, type Work } from "../draft.ts";
import { isGlazing, type Move } from "../moves.ts";
import { type Sentence, sentence } from "../sentence.ts";

interface Scene {
  readonly work: Work;
  readonly arriving: readonly string[];
  readonly moves: readonly Move[];
}

/** A pane is laid in from above; beads come over its edges, and off again. */
export function glazedText({ work, arriving, moves }: Scene, own: readonly Joint[]): Sentence {
  const held = [...new Set(own.map(({ parts: [joined] }) => joined))].filter((id) => arriving.includes(id));
  const glass = panesOf(work.design);
  const panes = held.filter((id) => glass.has(id));
  const beads = held.filter((id) => !glass.has(id));
  const over = [...new Set(own.flatMap(({ parts: [bead, pane] }) => (beads.includes(bead) ? [pane] : [])))];
  const struck = moves.some((move) => move.work.some(({ drives }) => drives.some(({ tool }) => tool === "hammer")));
  const shield = struck ? "hold cardboard over it, and slide the hammer along that" : "hold cardboard over it";
  const told = [
    ...(panes.length === 0
      ? []
      : [
          `${rabbetsUp(work, moves)}, wipe the rabbets clean, clean the glass on both faces, and lay ${listed(work, panes)} in, with the same play all round. Never press glass into its place: plane the rabbet where it is tight.`,
        ]),
    ...(beads.length === 0
      ? []
      : [
          `Lay ${listed(work, beads)} over the edges of ${listed(work, over)}. Nothing is driven or glued into glass: ${shield}. A broken pane comes out when its beads are off.`,
          ...holesText(work, moves, beads, over),
        ]),
  ].join(" ");
  return panes.length === 0 ? told : sentence(told, { turns: "and more" });
}

/** Which way round beads lie whose holes are bored nearer to one of their edges; nothing where some lie so and others the other way. */
function holesText(
  work: Work,
  moves: readonly Move[],
  beads: readonly string[],
  panes: readonly string[],
): readonly string[] {
  const [pane] = panes;
  if (!pane) return [];
  const glass = work.part(pane).body;
  const drives = moves.flatMap((move) => move.work.flatMap((each) => each.drives));
  const outwards = beads.map((id): number => {
    const { body, axes } = work.part(id);
    const own = drives.flatMap(({ fastener }) => (fastener.through.includes(id) ? [fastener] : []));
    const across = INDICES.find((i) => i !== indexOf(axes.length) && own.every(({ direction }) => direction[i] === 0));
    if (
      across === undefined ||
      own.length === 0 ||
      !work.plan.holes.some(({ part, atBench }) => atBench && part === id)
    )
      return 0;
    const off = (at: Length): number => toNumber(subtract(at, middle(body, across)));
    const [first, ...more] = own.map(({ head }) => off(head.at[across]));
    const aside = first !== undefined && more.every((each) => isSameSide(each, first)) ? first : 0;
    return Math.abs(aside) < TOLERANCE ? 0 : Math.sign(aside) * -Math.sign(off(middle(glass, across)));
  });
  const bored = outwards.filter((way) => way !== 0);
  const [way] = bored;
  if (way === undefined || bored.length < beads.length || bored.some((each) => each !== way)) return [];
  return [
    `The holes are bored nearer to one edge of each: that edge lies ${way > 0 ? "outwards, on the wood, and the other over the glass" : "inwards, over the glass, and the other on the wood"}.`,
  ];
}

const isSameSide = (a: number, b: number): boolean => Math.abs(a - b) < TOLERANCE;

/** A frame lies on its face; a piece is laid down with the side up from which the glass comes. */
function rabbetsUp(work: Work, moves: readonly Move[]): string {
  const move = moves.find(isGlazing) ?? (moves[0] as Move);
  const side = INDICES.find((i) => move.along[i] !== 0);
  return laysDown(work, moves) && side !== undefined
    ? `Lay the piece on a blanket with its ${faceOf(side, (move.along[side] as number) < 0)} side up`
    : "Lay the frame on its face";
}

/** Whether what glass goes into is more than a frame: deeper than any of its parts is thick. */
export function laysDown(work: Work, moves: readonly Move[]): boolean {
  const [first] = moves as readonly [Move];
  if (!moves.every(isGlazing)) return false;
  const bodies = first.present.map((id) => work.part(id).body);
  const whole = bodies.reduce(enclosing);
  const side = INDICES.find((i) => first.along[i] !== 0);
  return side !== undefined && bodies.every((body) => less(extent(body, side), extent(whole, side)));
}
