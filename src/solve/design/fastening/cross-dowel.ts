import { crossDowelNeedsRoom } from "../../../findings/rules/cross-dowel-needs-room.ts";
import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import type { Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, min, negate, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole, Point } from "../../design.ts";
import { faceAxis, faceOf, isHigh, middle, normalOf, shift, thirdAxis, unit, withAxis } from "../space.ts";
import { boltAt, boltHole, boltRow, boltWith, sinkFor } from "./bolt.ts";
import { boltLengthFor, boltSizeFor } from "./bolt-size.ts";
import { passage } from "./driven-screw.ts";
import type { BoltSize } from "./hardware.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Bolts through one part into the end of another, each into a cross dowel: a barrel nut that lies in a bore from the side. The bolt is the
 * shortest sold that leaves 1 1/4 in of wood between the end and the barrel; it reaches 1/16 in past the barrel, and its bore 1/2 in
 * further (common practice, no source).
 */
export function crossDowels(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const inch = context.units === "inch";
  const face = sideOf(site, context);
  const size = boltSizeFor(site, context);
  const sink = size && sinkFor(site, size, context);
  const places = placesOf(site, moved, context, boltRow(inch));
  if (!face || !places || !size || !sink) return [];
  const radius = half(size.cross.diameter);
  const past = inch ? inches(1, 16) : millimetres(2);
  const before = inch ? inches(5, 4) : millimetres(32);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (passed.interrupted || !less(sink.depth, passed.depth)) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "bolt", cut: "cut" }));
      return [];
    }
    const through = add(subtract(passed.depth, sink.depth), size.washer.thick);
    const least = [before, size.cross.diameter, past].reduce(add, through);
    const length = boltLengthFor(
      site,
      least,
      `${head.id}, ${context.print(before)} of ${hold.id} and the barrel of its nut`,
      context,
    );
    if (!length) return [];
    // The barrel's axis, from the end of the part.
    const reach = subtract(length, through);
    const centre = subtract(reach, add(radius, past));
    const bored = add(reach, inch ? inches(1, 2) : millimetres(12));
    const barrel = barrelAt(site, at, face, centre, size, context);
    const wood = depthAt(hold.solid, at, axis, sign);
    if (less(wood, bored))
      return lack(
        site,
        context,
        `the bolt's bore is ${context.print(bored)} deep, and the wood ${context.print(wood)}`,
      );
    if (!barrel) return [];
    const id = `${site.joint}.${number + 1}`;
    const nut = `cross dowel ${context.printItem(size.cross.diameter)} × ${context.printItem(barrel.long)} for a ${size.name} bolt`;
    const bolt = boltAt(site, { number, at, through, size, sunk: sink.depth.n > 0n, length }, context);
    fasteners.push({
      ...bolt,
      with: boltWith(size, context, nut, 1),
      nut: { at: barrel.mouth, direction: barrel.direction, diameter: size.cross.diameter, height: barrel.deep },
    });
    const wide = boltHole(size, inch);
    const keep = { edge: ZERO, end: ZERO, under: ZERO };
    holes.push(
      passage(site, { number, at }, passed.depth, {
        kind: "bolt",
        stages: [...sink.stages, { diameter: wide, depth: passed.depth }],
      }),
      {
        ...{
          part: hold.id,
          kind: "bolt",
          at,
          direction: unit(axis, sign),
          through: false,
          for: id,
          keep,
          atBench: true,
        },
        stages: [{ diameter: wide, depth: bored }],
      },
      {
        ...{
          part: hold.id,
          kind: "nut",
          at: barrel.mouth,
          direction: barrel.direction,
          through: false,
          for: id,
          atBench: true,
        },
        stages: [{ diameter: size.cross.diameter, depth: barrel.deep }],
        keep: { ...keep, under: barrel.under },
      },
    );
  }
  return [{ fasteners, holes }];
}

/** The broad side that the barrels go into: as said, or the one that is seen less: below, behind, or towards the middle of the piece. */
function sideOf(site: Site, context: FasteningContext): Face | null {
  const { hold, axis, draft } = site;
  const said = options(draft).side?.value;
  const cross = said ? faceAxis(said) : hold.frame.thickness;
  if (cross === axis) {
    lack(
      site,
      context,
      "the bolt goes into its broad side, and a cross dowel needs a bolt that goes into an end or an edge",
    );
    return null;
  }
  if (said) return said;
  const inside = toNumber(middle(hold.body, cross)) < context.centre[cross];
  return faceOf(cross, cross === 2 ? false : cross === 1 ? true : inside);
}

/** Where the barrel lies: its length across the bolt, its middle on the bolt's axis. Null: reported. */
function barrelAt(site: Site, at: Point, face: Face, centre: Length, size: BoltSize, context: FasteningContext) {
  const { hold, axis, sign } = site;
  const inch = context.units === "inch";
  const cross = faceAxis(face);
  const inwards = isHigh(face) ? -1 : 1;
  const crossing = shift(at, axis, sign > 0 ? centre : negate(centre));
  const skin = isHigh(face) ? hold.body.high[cross] : hold.body.low[cross];
  const toAxis = subtract(isHigh(face) ? skin : crossing[cross], isHigh(face) ? crossing[cross] : skin);
  const mouth = withAxis(crossing, cross, skin);
  const thick = depthAt(hold.solid, mouth, cross, inwards);
  const leave = inch ? inches(1, 8) : millimetres(3);
  const most = min(toAxis, subtract(subtract(thick, toAxis), leave));
  const long = size.cross.lengths.filter((each) => compare(half(each), most) <= 0).at(-1);
  const least = size.cross.lengths[0] as Length;
  if (!long) {
    lack(
      site,
      context,
      `the shortest barrel is ${context.print(least)} long, and beside the bolt there is room for ${context.print(add(most, most))}`,
    );
    return null;
  }
  const other = thirdAxis(axis, cross);
  const beside = min(subtract(crossing[other], hold.body.low[other]), subtract(hold.body.high[other], crossing[other]));
  const needs = add(half(size.cross.diameter), leave);
  if (less(beside, needs)) {
    lack(
      site,
      context,
      `its edge lies ${context.print(beside)} from the bolt, and the barrel needs ${context.print(needs)}`,
    );
    return null;
  }
  const deep = add(toAxis, half(long));
  const [x, y, z] = normalOf(face);
  return { mouth, direction: [0 - x, 0 - y, 0 - z] as const, long, deep, under: min(leave, subtract(thick, deep)) };
}

function lack({ draft, hold }: Site, context: FasteningContext, why: string): readonly Arrangement[] {
  context.report(crossDowelNeedsRoom(draft.at, { part: hold.id, why }));
  return [];
}
