/** Promise 7: the cuts of a layout, made in their order, give its placements; nothing is bought below its bound. */

import type { Layout, Rectangle } from "./bought.ts";
import { type Model, near, pairsOf } from "./model.ts";
import { type Room, replays, roomOf, sameRoom, within } from "./sawing.ts";
import { type Violation, type Violations, violation } from "./violation.ts";

export function* layouts(model: Model): Violations {
  for (const [i, layout] of model.record.layouts.entries()) {
    const name = `${layout.stock} ${i + 1}`;
    const outcomes = starts(layout).map((start) => [...sawn(layout, start, name)]);
    // The record does not say at which edges the squaring cut was made: the reading with the fewest faults counts.
    yield* outcomes.sort((a, b) => a.length - b.length)[0] ?? [];
    for (const [a, b] of pairsOf(layout.placements))
      if (overlap(a, b)) yield violation("placements do not overlap", name, `${a.blank} lies on ${b.blank}`);
    yield* ofItsStock(model, layout, name);
  }
  yield* proofs(model);
}

/** The sheet as it is bought, or squared at one long and one short edge. */
function starts({ width, length, squaring }: Layout): Room[] {
  const squared = [0, squaring].flatMap((x) =>
    [0, squaring].map((y) => ({ x0: x, y0: y, x1: width - squaring + x, y1: length - squaring + y })),
  );
  return [{ x0: 0, y0: 0, x1: width, y1: length }, ...squared];
}

function* sawn(layout: Layout, start: Room, name: string): Violations {
  const faults: Violation[] = [];
  const pieces = replays(layout, start, (check, message) => faults.push(violation(check, name, message)));
  yield* faults;
  const free = [...pieces];
  for (const placement of layout.placements) {
    const found = free.findIndex((piece) => sameRoom(piece, roomOf(placement)));
    if (found < 0) yield violation("cuts give the placements", name, `no piece is left where ${placement.blank} lies`);
    else free.splice(found, 1);
  }
  for (const offcut of layout.offcuts)
    if (!free.some((piece) => within(roomOf(offcut), piece)))
      yield violation("offcuts are left over", name, `nothing is left at ${offcut.x}, ${offcut.y}`);
  const usable = starts(layout).slice(1);
  if (!usable.some((room) => layout.placements.every((placement) => within(roomOf(placement), room))))
    yield violation("placements lie inside", name, "a placement reaches over the sheet or its squaring cut");
}

function overlap(a: Rectangle, b: Rectangle): boolean {
  const [p, q] = [roomOf(a), roomOf(b)];
  const deep = Math.min(Math.min(p.x1, q.x1) - Math.max(p.x0, q.x0), Math.min(p.y1, q.y1) - Math.max(p.y0, q.y0));
  return deep > 0.01;
}

function* ofItsStock({ record }: Model, layout: Layout, name: string): Violations {
  for (const { blank: id, turned } of layout.placements) {
    const blank = record.blanks.find((candidate) => candidate.id === id);
    if (blank === undefined) continue;
    if ((blank.grain === "length" && turned) || (blank.grain === "width" && !turned))
      yield violation("grain is obeyed", name, `${id} lies across the grain`);
    // Stocks that are bought as the same boards have one proof together.
    const shared = record.layoutProof.some(
      ({ stocks }) => stocks.includes(blank.stock) && stocks.includes(layout.stock),
    );
    if ((blank.stock !== layout.stock && !shared) || !near(blank.thickness, layout.thickness))
      yield violation("stock is the blank's", name, `${id} is of ${blank.stock}, ${blank.thickness} mm thick`);
  }
}

function* proofs({ record }: Model): Violations {
  const bought = record.layouts.filter((layout) => layout.source === "buy");
  for (const proof of record.layoutProof) {
    const laid = bought.filter((layout) => proof.stocks.includes(layout.stock));
    const { count, countBound, cost, costBound, optimal } = proof;
    const reached = cost === null ? count === countBound : cost === costBound;
    if (laid.length !== count || count < countBound || (optimal && !reached))
      yield violation(
        "count is not below its bound",
        proof.stocks.join(" "),
        `${laid.length} laid out, ${count} counted, bound ${countBound}${optimal ? ", called the least" : ""}`,
      );
    // In cents, so that nothing is lost in sums.
    const sum = laid.reduce((so, { price }) => so + Math.round(100 * (price ?? Number.NaN)), 0);
    if (cost !== null && (Math.round(100 * cost) !== sum || costBound === null || cost < costBound))
      yield violation("count is not below its bound", proof.stocks.join(" "), `costs ${cost}, bound ${costBound}`);
  }
  for (const stock of new Set(record.layouts.map((layout) => layout.stock)))
    if (record.layoutProof.filter((proof) => proof.stocks.includes(stock)).length !== 1)
      yield violation("count is not below its bound", stock, "does not have one proof");
}
