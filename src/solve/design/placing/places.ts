import type { Finding } from "../../../findings/finding.ts";
import { attitudeDisagrees } from "../../../findings/rules/attitude-disagrees.ts";
import { noRoom } from "../../../findings/rules/no-room.ts";
import { placeMissing } from "../../../findings/rules/place-missing.ts";
import { placesDisagree } from "../../../findings/rules/places-disagree.ts";
import { whichWayGrain } from "../../../findings/rules/which-way-grain.ts";
import { whichWayRound } from "../../../findings/rules/which-way-round.ts";
import type { Draft, Face } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, equal, half, sign, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Stock } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import type { Cells } from "../sizes/cells.ts";
import type { Scope } from "../sizes/evaluate.ts";
import { type AxisIndex, axisAt, faceAxis, faceOf, INDICES, isHigh, mirrorValue, opposite } from "../space.ts";
import { type Attitude, attitudeOf, type Frame, type Stance } from "./attitude.ts";
import { fromTwo } from "./from-two.ts";
import { type MarkedSpan, markable, marked } from "./marking.ts";
import { boardStatements, openCount, openStatements, placedStatements, type Reach } from "./read-placing.ts";
import { type Role, rolesOf, type Statement, type Statements } from "./statement.ts";

/** Where every part is, worked out on demand. Null: could not be found, and the maker has been told. */
export interface Places {
  readonly position: (entry: Entry, face: Face) => Length | null;
  readonly extent: (entry: Entry, axis: AxisIndex) => Length | null;
  readonly frame: (entry: Entry) => Frame | null;
  /** What rounding took off its size in a direction: below zero where it was added. */
  readonly leftOver: (entry: Entry, axis: AxisIndex) => Length;
  /** All six faces. */
  readonly box: (entry: Entry) => Box | null;
}

export interface PlacesContext {
  readonly draft: Draft;
  readonly directory: Directory;
  readonly cells: Cells;
  readonly stockOf: (entry: Entry) => Stock | null;
  readonly outside: (face: Face) => Length | null;
  readonly scope: (entry: Entry) => Scope;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

export function createPlaces(context: PlacesContext): Places {
  const { cells, directory, report } = context;
  const original = (entry: Entry): Entry | null =>
    entry.mirror ? (directory.byId.get(entry.mirror.of) ?? null) : null;

  const position = (entry: Entry, face: Face): Length | null => {
    const model = original(entry);
    if (model && entry.mirror) {
      const turned = faceAxis(face) === entry.mirror.axis;
      const at = position(model, turned ? opposite(face) : face);
      if (!turned || at === null) return at;
      const about = middleOfOutside(entry.mirror.axis);
      return about && mirrorValue(at, about);
    }
    return span(entry, faceAxis(face))?.[isHigh(face) ? "high" : "low"] ?? null;
  };

  const middleOfOutside = (axis: AxisIndex): Length | null => {
    const low = context.outside(faceOf(axis, false));
    const high = context.outside(faceOf(axis, true));
    return low && high && half(add(low, high));
  };

  /** Extent in a direction: said outright, or from two other statements. */
  const extent = (entry: Entry, axis: AxisIndex): Length | null => {
    const model = original(entry);
    if (model) return extent(model, axis);
    const stance = structure(entry);
    const said = stance?.statements[axis].find((s) => s.role === "extent");
    if (stance && said) {
      const exact = cells.get(`extent ${entry.id} ${axis}`, `${entry.id}.${axisAt(axis)}`, said.at, said.value);
      return exact && markable(entry, axis, stance, context.draft, exact);
    }
    const found = span(entry, axis);
    return found && subtract(found.high, found.low);
  };

  const span = (entry: Entry, axis: AxisIndex): MarkedSpan | null =>
    cells.get(`span ${entry.id} ${axis}`, `${entry.id} (${axisAt(axis)})`, entry.at, () => {
      const stance = structure(entry);
      const exact = stance && solveSpan(entry, axis, stance.statements[axis]);
      return exact && marked(entry, axis, stance, context.draft, exact);
    });

  const leftOver = (entry: Entry, axis: AxisIndex): Length => {
    const model = original(entry);
    if (model) return leftOver(model, axis);
    const found = span(entry, axis);
    if (!found) return ZERO;
    return subtract(subtract(found.exact.high, found.exact.low), subtract(found.high, found.low));
  };

  const solveSpan = (entry: Entry, axis: AxisIndex, statements: readonly Statement[]) => {
    // Faces first, then middle, then extents; said by the maker before said by the stock.
    const known = new Map<Role, { statement: Statement; value: Length }>();
    for (const role of ["low", "high", "centre", "extent"] as const)
      for (const statement of statements.filter((s) => s.role === role)) {
        const value = statement.value();
        if (value === null) return null;
        const before = known.get(role);
        if (!before) known.set(role, { statement, value });
        else if (!equal(before.value, value))
          return disagree(entry, axis, before.statement, statement, before.value, value);
      }
    const low = known.get("low")?.value;
    const high = known.get("high")?.value;
    const size = known.get("extent")?.value;
    const centre = known.get("centre")?.value;
    const found = fromTwo(low, high, centre, size);
    if (!found) return null;
    const room = subtract(found.high, found.low);
    if (sign(room) <= 0) {
      report(noRoom(entry.at, { name: entry.id, direction: axisAt(axis), room: context.print(room) }));
      return null;
    }
    for (const [role, { statement, value }] of known) {
      const implied =
        role === "low"
          ? found.low
          : role === "high"
            ? found.high
            : role === "extent"
              ? room
              : half(add(found.low, found.high));
      if (!equal(implied, value))
        return disagree(
          entry,
          axis,
          (known.get("high") ?? known.get("low") ?? known.get("centre"))?.statement ?? statement,
          statement,
          implied,
          value,
        );
    }
    return found;
  };

  const disagree = (entry: Entry, axis: AxisIndex, a: Statement, b: Statement, first: Length, second: Length): null => {
    const difference = compare(first, second) < 0 ? subtract(second, first) : subtract(first, second);
    report(
      placesDisagree(
        b.at,
        {
          name: entry.id,
          direction: axisAt(axis),
          first: { key: a.key, value: context.print(first) },
          second: { key: b.key, value: context.print(second) },
          difference: context.print(difference),
        },
        { also: a.at.start === b.at.start ? [] : [{ at: a.at, label: "the other statement" }] },
      ),
    );
    return null;
  };

  const reach: Reach = { ...context, position, extent };

  const structure = (entry: Entry): Stance | null =>
    cells.get(`structure ${entry.id}`, entry.id, entry.at, () => {
      const placed = placedStatements(entry, reach);
      if (entry.draft.space) return placed && room(entry, placed);
      const stock = context.stockOf(entry);
      if (!stock || !placed) return null;
      const board = boardStatements(entry, stock, reach);
      const square = stock.width !== null && equal(stock.width, stock.thickness);
      const open = openCount(entry.draft);
      const attitude = attitudeOf(entry.draft, placed, board, square, open);
      const stance = choose(entry, attitude);
      return stance && fillOpen(entry, stance);
    });

  /** A space has no attitude: each direction needs its two statements. */
  const room = (entry: Entry, placed: Statements): Stance | null => {
    const stance = fillOpen(entry, { frame: { thickness: 2, width: 1, length: 0 }, statements: placed });
    const lacking = stance.statements.some((statements) => rolesOf(statements).size < 2);
    return lacking ? choose(entry, { kind: "too little", stance }) : stance;
  };

  const choose = (entry: Entry, attitude: Attitude): Stance | null => {
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
      return solveSpan(entry, axis, filled.statements[axis]);
    });
    const [one, other] = extents;
    if (!one || !other) return null;
    const order = compare(subtract(one.high, one.low), subtract(other.high, other.low));
    if (order === 0) {
      report(whichWayGrain(entry.at, { name: entry.id, first: axisAt(a), second: axisAt(b) }));
      return null;
    }
    return order > 0 ? first : second;
  };

  /** Gives statements that name no direction to the directions that lack one. */
  const fillOpen = (entry: Entry, stance: Stance): Stance => {
    const fill = (axis: AxisIndex): readonly Statement[] => {
      const roles = rolesOf(stance.statements[axis]);
      const lacks = roles.size === 1 && roles.has("extent");
      return lacks ? [...stance.statements[axis], ...openStatements(entry, axis, reach)] : stance.statements[axis];
    };
    return { frame: stance.frame, statements: [fill(0), fill(1), fill(2)] };
  };

  const frame = (entry: Entry): Frame | null => {
    const model = original(entry);
    return model ? frame(model) : (structure(entry)?.frame ?? null);
  };

  const box = (entry: Entry): Box | null => {
    const faces = INDICES.map((axis) => [position(entry, faceOf(axis, false)), position(entry, faceOf(axis, true))]);
    if (faces.flat().some((value) => value === null)) return null;
    const [x, y, z] = faces as [[Length, Length], [Length, Length], [Length, Length]];
    return { low: [x[0], y[0], z[0]], high: [x[1], y[1], z[1]] };
  };

  return { position, extent, frame, leftOver, box };
}
