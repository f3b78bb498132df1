/** Where the maker wants no finish, as far as it is open when the finish goes on. */
import type { Design, Feature, Hole, Part } from "../../design.ts";
import { series } from "../steps/draft.ts";

interface There {
  readonly parts: readonly Pick<Part, "id" | "features">[];
  readonly joints: Design["joints"];
  readonly holes: readonly Hole[];
  /** Ids of the pins that are in by then; absent: none. */
  readonly pinned?: ReadonlySet<string>;
  /** What is glued is together by then. */
  readonly glued: boolean;
}

const isOpen = ({ for: id }: Feature, { joints, glued }: There): boolean =>
  !glued || joints.every((joint) => joint.id !== id || !joint.glue);
const cut =
  (kind: Feature["kind"]) =>
  (there: There): boolean =>
    there.parts.some(({ features }) => features.some((each) => each.kind === kind && isOpen(each, there)));
const bored =
  (kind: Hole["kind"]) =>
  ({ parts, holes, pinned }: There): boolean =>
    holes.some(
      (hole) => hole.kind === kind && pinned?.has(hole.for ?? "") !== true && parts.some(({ id }) => id === hole.part),
    );

/** Words that mean something that is known to be there or not; any other is the maker's own, and stays. */
const KNOWN: readonly (readonly [words: RegExp, there: (there: There) => boolean])[] = [
  [/^(?:the )?tenons?$/iu, cut("tenon")],
  [/^(?:the )?mortises?$/iu, cut("mortise")],
  [/^(?:the )?grooves?$/iu, cut("groove")],
  [/^(?:the )?pin holes?$/iu, bored("pin")],
];

/** "tenons and mortises" as they are in parts; null where nothing is left of it. */
export function keptOff(text: string, there: There): string | null {
  const all = text.split(/,\s*(?:and\s+)?|\s+and\s+/u);
  const left = all.filter((words) => KNOWN.every(([known, isThere]) => !known.test(words) || isThere(there)));
  return left.length === all.length ? text : left.length > 0 ? series(left) : null;
}
