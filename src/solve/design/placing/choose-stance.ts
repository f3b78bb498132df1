import { attitudeDisagrees } from "../../../findings/rules/attitude-disagrees.ts";
import { placeMissing } from "../../../findings/rules/place-missing.ts";
import { whichWayGrain } from "../../../findings/rules/which-way-grain.ts";
import { whichWayRound } from "../../../findings/rules/which-way-round.ts";
import { compare, subtract } from "../../../units/rational.ts";
import type { Entry } from "../expand/entry.ts";
import { axisAt, faceOf, INDICES } from "../space.ts";
import type { Attitude, Stance } from "./attitude.ts";
import { type SpanContext, solveSpan } from "./span.ts";
import { rolesOf } from "./statement.ts";

/** The one way in which a part can lie; null where there is none or more than one, which is told. `fillOpen` settles what names no direction. */
export function chooseStance(
  entry: Entry,
  attitude: Attitude,
  fillOpen: (entry: Entry, stance: Stance) => Stance,
  context: SpanContext,
): Stance | null {
  const { report } = context;
  if (attitude.kind === "too little") {
    // A statement that means nothing is told first: put right, it may be what is missing.
    // (A row's place needs the part's own extent, which is what is being looked for.)
    const told = attitude.stance.statements.flat().filter(({ key }) => key !== "spread");
    const values = told.map((statement) => statement.value());
    if (values.includes(null)) return null;
    const lacking = INDICES.filter((axis) => rolesOf(attitude.stance.statements[axis]).size < 2);
    report(
      placeMissing(entry.at, {
        name: entry.id,
        missing: lacking.map((axis) => ({
          direction: axisAt(axis),
          low: faceOf(axis, false),
          high: faceOf(axis, true),
          known: attitude.stance.statements[axis].map((s) => s.key),
        })),
      }),
    );
    return null;
  }
  if (attitude.kind === "impossible") {
    const { attitude: as, facing, grain } = entry.draft;
    const words = [as && "as", facing && "facing", grain && "grain"].filter((word) => word !== undefined);
    report(attitudeDisagrees((grain ?? facing ?? as)?.at ?? entry.at, { name: entry.id, words }));
    return null;
  }
  if (attitude.kind === "open") {
    report(whichWayRound(entry.at, { name: entry.id }));
    return null;
  }
  const [first, second] = attitude.stances;
  if (!second) return first;
  // The longer extent is the length. Both stances have the same statements in both directions.
  const [a, b] = [first.frame.length, second.frame.length];
  const extents = ([a, b] as const).map((axis) => {
    const filled = fillOpen(entry, first);
    return solveSpan(entry, axis, filled.statements[axis], context);
  });
  const [one, other] = extents;
  if (!one || !other) return null;
  const order = compare(subtract(one.high, one.low), subtract(other.high, other.low));
  if (order === 0) {
    report(whichWayGrain(entry.at, { name: entry.id, first: axisAt(a), second: axisAt(b) }));
    return null;
  }
  return order > 0 ? first : second;
}
