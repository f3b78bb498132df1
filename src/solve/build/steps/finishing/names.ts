/** What comes off and goes on again, by name. */
import type { Removable } from "../../order/index.ts";
import { hangsOn } from "../../order/links.ts";
import { listed, numberWord, pluralOf, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { bodyKind, theBody } from "../words/bodies.ts";
import { movingName } from "../words/moving.ts";
import { glazedLastOf } from "./glazed-last.ts";

/** So many kinds of part without a name of their own are told in a title. */
const MOST = 3;

const nameOf = (work: Work, { parts }: Removable): string | null => movingName(work, parts);

/** What a title says of them. */
export const inTitle = (work: Work, bodies: readonly Removable[], names: string): string => {
  const nameless = bodies.filter((body) => nameOf(work, body) === null).flatMap(({ parts }) => parts);
  return new Set(nameless.map((id) => work.line(id).mark)).size > MOST ? "what moves" : names;
};

/** "the left door, the five drawers and four loose shelves (D)": what has no name of its own is told by its parts, and those that are alike together. */
export function namesOf(work: Work, bodies: readonly Removable[]): string {
  const named = bodies.filter((body) => nameOf(work, body) !== null);
  const others = bodies.flatMap((body) => (nameOf(work, body) === null ? body.parts : []));
  const own = groupedBy(named, (body) => bodyKind(body.parts) ?? nameOf(work, body) ?? "").map((group) => {
    const [body] = group as readonly [Removable];
    const kind = bodyKind(body.parts);
    if (group.length > 1 && kind !== null) return `the ${numberWord(group.length)} ${pluralOf(kind)}`;
    return theBody(nameOf(work, body) ?? "");
  });
  return series([...own, ...(others.length > 0 ? [listed(work, others)] : [])]);
}

/** "What lies apart belongs to it: the two drawers and the top board (B).", of some parts that are sanded or coated as the piece. */
export function apartText(work: Work, parts: readonly string[]): readonly string[] {
  const own = new Set(parts);
  const bodies = work.plan.removable.toReversed().filter((body) => body.parts.some((id) => own.has(id)));
  const beads = [...glazedLastOf(work)].filter((id) => own.has(id));
  // What the piece is hung on waits for its wall.
  const cleats = [...new Set(work.design.joints.filter(hangsOn).map(({ parts: [, on] }) => on))].filter((id) =>
    own.has(id),
  );
  const names = [
    ...(bodies.length > 0 ? [namesOf(work, bodies)] : []),
    ...(beads.length > 0 ? [listed(work, beads)] : []),
    ...(cleats.length > 0 ? [listed(work, cleats)] : []),
  ];
  return names.length === 0 ? [] : [`What lies apart belongs to it: ${names.join("; ")}.`];
}
