/** Promise 3: what is added is one new part or a whole unit, and at the end all is one body. */
import type { Model } from "./model.ts";
import { type Body, bodyOf, type Moment, type Replay, together } from "./moments.ts";
import { type Violations, violation } from "./violation.ts";

export function* bodies({ record }: Model, { moments, end }: Replay): Violations {
  for (const moment of moments) yield* moves(moment);
  const rest = record.parts.filter((part) => !end[0]?.has(part.id)).map((part) => part.id);
  if (end.length !== 1 || rest.length > 0)
    yield violation("all ends in one body", rest.join(" "), `there are ${end.length} bodies at the end`);
}

function* moves({ action, bodies, step }: Moment): Violations {
  const where = `step ${step.number}`;
  if (action.do === "remove") {
    const body = bodyOf(bodies, action.from[0]);
    const leaves = [...action.parts, ...action.from].every((part) => body?.has(part));
    if (!leaves || action.from.some((part) => action.parts.includes(part)))
      yield violation("whole bodies move", where, "takes off what is not there");
  }
  if (action.do !== "add") return;
  const { parts, to } = action;
  const staying = bodyOf(bodies, to[0]);
  if (parts.some((part) => staying?.has(part)))
    yield violation("part is added once", where, `adds ${parts.join(" ")}, which is there already`);
  if (!isUnit(bodies, parts)) yield violation("whole bodies move", where, `${parts.join(" ")} is not a unit by itself`);
  if (to.length > 0 && (staying === undefined || !together(bodies, to)))
    yield violation("whole bodies move", where, `${to.join(" ")} is not one body that is there`);
  if (to.length === 0 && parts.some((part) => bodyOf(bodies, part) !== undefined))
    yield violation("part is added once", where, `starts a body with ${parts.join(" ")}, which is in one`);
}

/** One part that is in no body yet, or all the parts of one body. */
function isUnit(bodies: readonly Body[], parts: readonly string[]): boolean {
  const body = bodyOf(bodies, parts[0]);
  if (body === undefined) return parts.length === 1;
  return new Set(parts).size === body.size && parts.every((part) => body.has(part));
}
