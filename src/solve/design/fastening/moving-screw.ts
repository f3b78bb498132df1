import { fastenerNeedsRoom } from "../../../findings/rules/fastener-needs-room.ts";
import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, max, min, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole, Still } from "../../design.ts";
import { indexOf, unit } from "../space.ts";
import { drivenScrew, passage } from "./driven-screw.ts";
import { washerFor } from "./hardware.ts";
import { depthAt, runAt } from "./line.ts";
import { allowance, fromLine, isHeld, slackAlong } from "./movement.ts";
import { placesOf } from "./places-of.ts";
import { usualRow } from "./row.ts";
import { lengthFor, sizeFor } from "./screw-size.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";
import { onWideContact } from "./wide-rows.ts";

/**
 * Round-headed screws with washers in slots or wide holes of the headed part, so that the other may move across its grain. The slot is
 * as long as the shank's hole and the movement either way; where the wood is held the hole is round and fits.
 */
export function movingScrews(
  hole: "slot" | "oversized",
  site: Site,
  moved: RowShift,
  context: FasteningContext,
): readonly Arrangement[] {
  const { draft, head, hold, axis, sign, still } = site;
  const said = options(draft);
  const inch = context.units === "inch";
  const row = usualRow(inch);
  if (moved.sunk && said.counterbore) return [];
  const counterbore = said.counterbore ? context.measure(said.counterbore) : moved.sunk ? SINK[context.units] : ZERO;
  const plan = {
    spacing: inch ? inches(8) : millimetres(200),
    clear: CLEAR[moved.sunk ? "sunk" : "proud"][context.units],
  };
  const single = still && placesOf(site, moved, context, { ...row, ...plan, odd: wantsOdd(still) });
  if (!single || !still || counterbore === null) return [];
  const places = onWideContact(single, site, still, context);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (passed.interrupted || passed.depth.n === 0n) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "screw", cut: "cut" }));
      return [];
    }
    const wood = subtract(passed.depth, counterbore);
    if (moved.sunk && less(wood, half(passed.depth))) return [];
    const most = inch ? inches(3, 2) : millimetres(40);
    if (less(most, wood)) {
      report(
        site,
        context,
        `${context.print(wood)} thick under the head, and a ${WORDS[hole]} goes through ${context.print(most)} at most`,
      );
      return [];
    }
    const size = sizeFor(site, wood, context);
    const held = isHeld(still, site, places, number);
    const room = held ? ZERO : roomAsked(hole, site, fromLine(still, at), size?.clearance ?? ZERO, context);
    if (!size || room === null) return [];
    const wide = add(size.clearance, multiply(room, rational(2)));
    const washer = washerFor(hole === "slot" || held ? size.clearance : wide, context);
    const through = add(wood, washer.thick);
    const length = lengthFor(site, size, through, depthAt(hold.solid, at, axis, sign), context);
    if (!length) return [];
    const bound = bounds(site, still, at);
    const margin = MARGIN[moved.sunk ? "sunk" : "proud"][context.units];
    const reach = counterbore.n > 0n ? add(half(washer.diameter), room) : half(wide);
    if (less(bound, add(reach, margin))) {
      report(
        site,
        context,
        `only ${context.print(add(bound, bound))} wide across the grain of ${hold.id}, and the ${WORDS[hole]} needs ${context.print(multiply(add(reach, margin), rational(2)))}`,
      );
      return [];
    }
    const screw = drivenScrew(
      site,
      {
        ...{ number, at, size, length, through, room: depthAt(hold.solid, at, axis, sign) },
        head: "round",
        seat: counterbore.n > 0n ? "sunk" : "proud",
        ...{ with: [`${washer.item}, hole for ${size.name}`], headDiameter: washer.diameter },
        ...(!held && { slack: slackAlong(indexOf(still.across), room) }),
      },
      context,
    );
    const sink =
      counterbore.n > 0n ? [{ diameter: add(washer.diameter, multiply(room, rational(2))), depth: counterbore }] : [];
    const bored = (diameter: Length) => [...sink, { diameter, depth: passed.depth }];
    fasteners.push(screw.fastener);
    holes.push(
      passage(
        site,
        { number, at },
        passed.depth,
        held
          ? { kind: "clearance", stages: bored(size.clearance) }
          : hole === "slot"
            ? {
                kind: "slot",
                stages: bored(size.clearance),
                slot: { along: unit(indexOf(still.across), 1), length: wide },
              }
            : { kind: "oversized", stages: bored(wide) },
      ),
      screw.pilot,
    );
  }
  return [{ fasteners, holes }];
}

/** Wood on both sides of a row, and that left beside a slot or its counterbore (common practice, no source). */
const CLEAR = {
  proud: { inch: inches(3, 8), mm: millimetres(10) },
  sunk: { inch: inches(1, 2), mm: millimetres(12) },
} as const;
const MARGIN = {
  proud: { inch: inches(1, 8), mm: millimetres(3) },
  sunk: { inch: inches(1, 16), mm: millimetres(2) },
} as const;
/** What lets in a round head and its washer (common practice, no source). */
const SINK = { inch: inches(1, 4), mm: millimetres(6) } as const;

const WORDS = { slot: "slot", oversized: "oversized hole" } as const;

/** A row across the grain that is held in its middle needs a screw there. */
const wantsOdd = (still: Still): Still["across"] | null => (still.side === "middle" ? still.across : null);

/** The movement either way: as asked for, or by the distance from the held line. An oversized hole is bored with a bit that exists. */
function roomAsked(
  hole: "slot" | "oversized",
  { draft, hold }: Site,
  distance: Length,
  clearance: Length,
  context: FasteningContext,
): Length | null {
  const said = hole === "slot" ? options(draft).slot : options(draft).oversized;
  const usual = allowance(distance, context.units, context.movesBy(hold.id));
  if (!said) {
    if (hole === "slot") return usual;
    const step = context.units === "inch" ? inches(1, 16) : millimetres(1);
    return half(subtract(roundTo(add(clearance, add(usual, usual)), step, "up"), clearance));
  }
  const wide = context.measure(said);
  return wide && max(ZERO, half(subtract(wide, clearance)));
}

/** From a place to the nearer side of the headed part, across the grain of the other. */
function bounds({ head }: Site, still: Still, at: Fastener["head"]["at"]): Length {
  const i = indexOf(still.across);
  return min(subtract(at[i], head.body.low[i]), subtract(head.body.high[i], at[i]));
}

const report = ({ draft, head }: Site, context: FasteningContext, why: string): void =>
  context.report(
    fastenerNeedsRoom(draft.at, {
      part: head.id,
      what: "a screw that lets wood move",
      why,
      remedy: "let a thinner rail or cleat take the screw, give it a `counterbore`, or use buttons or clips",
    }),
  );
