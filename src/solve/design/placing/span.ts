import type { Finding } from "../../../findings/finding.ts";
import { noRoom } from "../../../findings/rules/no-room.ts";
import { placesDisagree } from "../../../findings/rules/places-disagree.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, equal, half, multiply, rational, sign, subtract } from "../../../units/rational.ts";
import type { Entry } from "../expand/entry.ts";
import { type AxisIndex, axisAt } from "../space.ts";
import { type Role, rolesOf, STOCK_WIDTH, type Statement } from "./statement.ts";

export interface Span {
  readonly low: Length;
  readonly high: Length;
}

export interface SpanContext {
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

/**
 * Where a part lies in a direction, from all that is said of it there; null when that failed or disagrees, which is told. How wide its
 * boards are counts where nothing else says how wide it is: narrower is ripped, wider is glued up.
 */
export function solveSpan(
  entry: Entry,
  axis: AxisIndex,
  statements: readonly Statement[],
  context: SpanContext,
): Span | null {
  const said = statements.filter(({ key }) => key !== STOCK_WIDTH);
  const enough = said.some(({ role }) => role === "extent") || rolesOf(said).size >= 2;
  return spanOf(entry, axis, enough ? said : statements, context);
}

function spanOf(entry: Entry, axis: AxisIndex, statements: readonly Statement[], context: SpanContext): Span | null {
  // Faces first, then middle, then extents; said by the maker before said by the stock.
  const known = new Map<Role, { statement: Statement; value: Length }>();
  for (const role of ["low", "high", "centre", "extent"] as const)
    for (const statement of statements.filter((s) => s.role === role)) {
      const value = statement.value();
      if (value === null) return null;
      const before = known.get(role);
      if (!before) known.set(role, { statement, value });
      else if (!equal(before.value, value))
        return disagree(entry, axis, context, before.statement, statement, before.value, value);
    }
  const low = known.get("low")?.value;
  const high = known.get("high")?.value;
  const size = known.get("extent")?.value;
  const centre = known.get("centre")?.value;
  const found = fromTwo(low, high, centre, size);
  if (!found) return null;
  const room = subtract(found.high, found.low);
  if (sign(room) <= 0) {
    context.report(
      noRoom(entry.at, {
        name: entry.id,
        direction: axisAt(axis),
        room: context.print(room),
        made: entry.draft.made !== undefined,
      }),
    );
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
        context,
        (known.get("high") ?? known.get("low") ?? known.get("centre"))?.statement ?? statement,
        statement,
        implied,
        value,
      );
  }
  return found;
}

function disagree(
  entry: Entry,
  axis: AxisIndex,
  context: SpanContext,
  a: Statement,
  b: Statement,
  first: Length,
  second: Length,
): null {
  const difference = compare(first, second) < 0 ? subtract(second, first) : subtract(first, second);
  context.report(
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
}

/** Low and high from any two of low, high, middle and extent. */
function fromTwo(low?: Length, high?: Length, centre?: Length, size?: Length): { low: Length; high: Length } | null {
  if (low && high) return { low, high };
  if (low && size) return { low, high: add(low, size) };
  if (high && size) return { low: subtract(high, size), high };
  if (centre && size) return { low: subtract(centre, half(size)), high: add(centre, half(size)) };
  const two = rational(2);
  if (low && centre) return { low, high: subtract(multiply(centre, two), low) };
  if (high && centre) return { low: subtract(multiply(centre, two), high), high };
  return null;
}
