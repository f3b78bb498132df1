import type { Finding } from "../../../findings/finding.ts";
import { noRoom } from "../../../findings/rules/no-room.ts";
import type { Draft, Face } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, equal, half, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Stock } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";
import type { Cells } from "../sizes/cells.ts";
import type { Scope } from "../sizes/evaluate.ts";
import { type AxisIndex, axisAt, faceAxis, faceOf, INDICES, isHigh, mirrorValue, opposite, triple } from "../space.ts";
import { attitudeOf, type Frame, type Stance } from "./attitude.ts";
import { chooseStance } from "./choose-stance.ts";
import type { End } from "./ends.ts";
import { type MarkedSpan, markable, marked } from "./marking.ts";
import { placeOf } from "./place-of.ts";
import { boardStatements, openCount, openStatements, placedStatements, type Reach } from "./read-placing.ts";
import { createSlants, type Slants } from "./slants.ts";
import { solveSpan } from "./span.ts";
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
  readonly slants: Slants;
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

/** The key of what an end says of its face. */
const ENDS = "ends on";

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
    const ends = slants.ends(entry);
    if (!ends) return null;
    const end = ends.find(({ axis, high }) => axis === faceAxis(face) && high === isHigh(face));
    return end ? reachOf(entry, end) : (span(entry, faceAxis(face))?.[isHigh(face) ? "high" : "low"] ?? null);
  };

  const reachOf = (entry: Entry, end: End): Length | null => {
    const face = faceOf(end.axis, end.high);
    return cells.get(`end ${entry.id} ${face}`, `${entry.id}.${face}`, end.target.at, end.reach);
  };

  /** A face as it was placed, whatever plane its end lies on: by its own statement, or by the others in its direction. */
  const pivot = (entry: Entry, face: Face): Length | null => {
    const axis = faceAxis(face);
    const said = structure(entry)?.statements[axis].filter(({ key }) => key !== ENDS);
    const role = isHigh(face) ? "high" : "low";
    const own = said?.find((statement) => statement.role === role);
    if (own) return own.value();
    if (!said || rolesOf(said).size < 2) return position(entry, face);
    return solveSpan(entry, axis, said, context)?.[role] ?? null;
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
    const ends = slants.ends(entry);
    if (ends?.some((end) => end.axis === axis)) {
      const [low, high] = [position(entry, faceOf(axis, false)), position(entry, faceOf(axis, true))];
      return low && high && subtract(high, low);
    }
    if (stance && said) {
      const exact = cells.get(
        `extent ${entry.id} ${axis}`,
        `${entry.id}.${axisAt(axis)}`,
        said.at,
        said.value,
        placeOf(entry, axis),
      );
      return exact && markable(entry, axis, stance, context.draft, exact);
    }
    const found = span(entry, axis);
    return found && subtract(found.high, found.low);
  };

  const span = (entry: Entry, axis: AxisIndex): MarkedSpan | null =>
    cells.get(
      `span ${entry.id} ${axis}`,
      `${entry.id} (${axisAt(axis)})`,
      entry.at,
      () => {
        const stance = structure(entry);
        const exact = stance && solveSpan(entry, axis, stance.statements[axis], context);
        return exact && marked(entry, axis, stance, context.draft, exact);
      },
      placeOf(entry, axis),
    );

  const leftOver = (entry: Entry, axis: AxisIndex): Length => {
    const model = original(entry);
    if (model) return leftOver(model, axis);
    const found = span(entry, axis);
    if (!found) return ZERO;
    return subtract(subtract(found.exact.high, found.exact.low), subtract(found.high, found.low));
  };

  const reach: Reach = { ...context, position, extent };
  const slants: Slants = createSlants({ ...reach, cells, print: context.print, pivot, box: (entry) => box(entry) });

  /** What a line and the planes of its ends say of a part, where nothing else does. */
  const slantStatements = (entry: Entry, placed: Statements): Statements | null => {
    const [line, ends] = [slants.line(entry), slants.ends(entry)];
    if (line === null || !ends) return null;
    return triple((axis) => {
      const statement = (role: Role, key: string, value: () => Length | null): Statement => ({
        role,
        key,
        at: entry.draft.line?.at ?? entry.at,
        value,
      });
      const along = line
        ? [
            statement("centre", "from", () => line.middle[axis]),
            ...(line.axis === axis ? [statement("extent", "to", () => line.length)] : []),
          ]
        : [];
      const said = [...placed[axis], ...along];
      const open = ends.filter((end) => end.axis === axis && !rolesOf(said).has(end.high ? "high" : "low"));
      const more = rolesOf(said).size < 2 ? open : [];
      return [
        ...said,
        ...more.map((end) => ({
          ...statement(end.high ? "high" : "low", ENDS, () => reachOf(entry, end)),
          at: end.target.at,
        })),
      ];
    });
  };

  const structure = (entry: Entry): Stance | null =>
    cells.get(`structure ${entry.id}`, entry.id, entry.at, () => {
      const square = placedStatements(entry, reach);
      if (entry.draft.space) return square && room(entry, square);
      const stock = context.stockOf(entry);
      const placed = square && slantStatements(entry, square);
      if (!stock || !placed) return null;
      const board = boardStatements(entry, stock, reach);
      const even = stock.width !== null && equal(stock.width, stock.thickness);
      const open = openCount(entry.draft);
      const attitude = attitudeOf(entry.draft, placed, board, even, open);
      const stance = chooseStance(entry, attitude, fillOpen, context);
      return stance && fillOpen(entry, stance);
    });

  /** A space has no attitude: each direction needs its two statements. */
  const room = (entry: Entry, placed: Statements): Stance | null => {
    const stance = fillOpen(entry, { frame: { thickness: 2, width: 1, length: 0 }, statements: placed });
    const lacking = stance.statements.some((statements) => rolesOf(statements).size < 2);
    return lacking ? chooseStance(entry, { kind: "too little", stance }, fillOpen, context) : stance;
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
    const flat = INDICES.find((axis) => compare(...(faces[axis] as [Length, Length])) >= 0);
    if (flat !== undefined && entry.draft.endsOn) {
      const room = subtract(...([faces[flat]?.[1], faces[flat]?.[0]] as [Length, Length]));
      report(
        noRoom(entry.at, {
          name: entry.id,
          direction: axisAt(flat),
          room: context.print(room),
          made: entry.draft.made !== undefined,
        }),
      );
      return null;
    }
    return { low: [x[0], y[0], z[0]], high: [x[1], y[1], z[1]] };
  };

  return { position, extent, frame, leftOver, box, slants };
}
