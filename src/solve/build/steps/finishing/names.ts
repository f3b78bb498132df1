/** What comes off and goes on again, by name. */
import type { Removable } from "../../order/index.ts";
import { listed, numberWord, pluralOf, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { bodyKind, bodyWords, movingWords, theBody } from "../words/bodies.ts";

/** So many kinds of part without a name of their own are told in a title. */
const MOST = 3;

const nameOf = ({ design }: Work, { parts }: Removable): string | null =>
  bodyWords(parts) ?? movingWords(parts, design.joints);

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
