import { expect, test } from "vitest";
import { orderOfWork } from "../../../src/solve/build/order/index.ts";
import { reach } from "../../../src/solve/build/reach/index.ts";
import type { Design, Direction, Fastener, Joint } from "../../../src/solve/design.ts";
import { arrangement, type Box, fastener, joint, part, piece, type Triple } from "./pieces.ts";
import { faults, hangs } from "./replay.ts";

/** A cube of 3 × 3 × 3 cells, 60 mm each, shared out among a few parts that grow cell by cell: a small puzzle. */
const SIDE = 3;
const CELL = 60;
type Cell = Triple;
const WAYS: readonly Direction[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];
const step = (a: Cell, way: Direction): Cell => [a[0] + way[0], a[1] + way[1], a[2] + way[2]];
const key = (a: Cell): string => a.join();
const inCube = (a: Cell): boolean => a.every((x) => x >= 0 && x < SIDE);

/** Numerical Recipes' quick generator: the same puzzles in every run. */
function dice(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

function puzzle(seed: number): { readonly design: Design; readonly owners: ReadonlyMap<string, number> } {
  const roll = dice(seed);
  const [count, growth] = [3 + roll(4), 30 + roll(200)];
  const cells: Cell[] = [];
  for (let x = 0; x < SIDE; x++) for (let y = 0; y < SIDE; y++) for (let z = 0; z < SIDE; z++) cells.push([x, y, z]);
  const owners = new Map<string, number>();
  for (let owner = 0; owner < count; owner++) {
    const free = cells.filter((cell) => !owners.has(key(cell)));
    owners.set(key(free[roll(free.length)] as Cell), owner);
  }
  for (let tries = 0; tries < growth; tries++) {
    const cell = cells[roll(cells.length)] as Cell;
    const next = step(cell, WAYS[roll(6)] as Direction);
    const owner = owners.get(key(cell));
    if (owner !== undefined && inCube(next) && !owners.has(key(next))) owners.set(key(next), owner);
  }
  const own = (owner: number) => cells.filter((cell) => owners.get(key(cell)) === owner);
  const boxOf = (cell: Cell): Box => [
    [cell[0] * CELL, cell[1] * CELL, cell[2] * CELL],
    [(cell[0] + 1) * CELL, (cell[1] + 1) * CELL, (cell[2] + 1) * CELL],
  ];
  const parts = Array.from({ length: count }, (_, i) => part(`p${i}`, own(i).map(boxOf)));

  const joints: Joint[] = [];
  for (let a = 0; a < count; a++)
    for (let b = a + 1; b < count; b++) {
      const touching = own(a).flatMap((cell) =>
        WAYS.filter((way) => owners.get(key(step(cell, way))) === b).map((way) => ({ cell, way })),
      );
      const at = touching[roll(touching.length)];
      // Now and then a pair that touches stays without a joint.
      if (!at || roll(8) === 0) continue;
      joints.push(
        joint(`p${a}`, `p${b}`, roll(3) > 0 ? {} : { method: "screws", arrangements: [screw(a, b, at.cell, at.way)] }),
      );
    }
  return { design: piece(parts, joints), owners };
}

/** From the far face of a cell through its middle into the next. */
const screw = (a: number, b: number, cell: Cell, way: Direction) =>
  arrangement(
    fastener({
      id: `s${a}${b}`,
      at: cell.map((x, i) => (x + 0.5) * CELL - ((way[i] ?? 0) * CELL) / 2) as unknown as Triple,
      direction: way,
      through: `p${a}`,
      into: `p${b}`,
      length: 80,
    }),
  );

/** By looking at every way to divide every body in two. */
function possible({ design, owners }: ReturnType<typeof puzzle>): boolean {
  const known = new Map<string, boolean>();
  const { toolFor } = reach();
  const id = (owner: number) => `p${owner}`;
  const free = (moving: readonly number[], staying: readonly number[], way: Direction): boolean =>
    [...owners].every(([from, owner]) => {
      if (!moving.includes(owner)) return true;
      let cell = from.split(",").map(Number) as unknown as Cell;
      while (inCube(cell)) {
        if (staying.includes(owners.get(key(cell)) ?? -1)) return false;
        cell = step(cell, way);
      }
      return true;
    });
  const driven = (fasteners: readonly Fastener[], body: readonly number[]): boolean =>
    fasteners.every(
      (f) =>
        toolFor(
          f,
          design.parts.filter((p) => body.some((owner) => id(owner) === p.id)),
        ) !== null,
    );
  const solve = (body: readonly number[]): boolean => {
    if (body.length === 1) return true;
    const found = known.get(body.join());
    if (found !== undefined) return found;
    const halves = Array.from({ length: 2 ** body.length - 2 }, (_, bits) => {
      const moving = body.filter((_owner, i) => ((bits + 1) >> i) & 1);
      return { moving, staying: body.filter((owner) => !moving.includes(owner)) };
    });
    const answer = halves.some(({ moving, staying }) => {
      if (![moving, staying].every((half) => hangs(half.map(id), design.joints))) return false;
      if (!WAYS.some((way) => free(moving, staying, way))) return false;
      const crossing = design.joints.filter(
        ({ parts }) =>
          parts.some((p) => moving.some((o) => id(o) === p)) && parts.some((p) => staying.some((o) => id(o) === p)),
      );
      const fasteners = crossing.flatMap(({ arrangements }) => arrangements.flatMap((a) => a.fasteners));
      return driven(fasteners, body) && solve(moving) && solve(staying);
    });
    known.set(body.join(), answer);
    return answer;
  };
  const all = design.parts.map((_, i) => i);
  return hangs(all.map(id), design.joints) && solve(all);
}

test("an order is found exactly where a search of every subset finds one, and the order can be carried out", () => {
  let [yes, no] = [0, 0];
  for (let seed = 1; seed <= 150; seed++) {
    const made = puzzle(seed);
    const { value } = orderOfWork(made.design);
    expect([seed, value !== undefined]).toEqual([seed, possible(made)]);
    if (value) expect([seed, faults(made.design, value)]).toEqual([seed, []]);
    if (value) yes += 1;
    else no += 1;
  }
  expect(Math.min(yes, no)).toBeGreaterThan(30);
});
