import { jointWantsSquare } from "../../../findings/rules/joint-wants-square.ts";
import { notInThisVersion } from "../../../findings/rules/not-in-this-version.ts";
import type { JointDraft } from "../../../parse/draft.ts";
import { ZERO } from "../../../units/rational.ts";
import { cutHousing, growHousing, type Housing } from "./housing.ts";
import { cutLap } from "./lap.ts";
import { type PairContext, pairsOf } from "./pairs.ts";
import { cutTenon } from "./tenon.ts";
import { type Bench, HOUSINGS, type JoineryContext, type Joining, type Jointed } from "./work.ts";

/**
 * Cuts every joint of the piece. Housings first lengthen their parts, all of them, so that each room is cut for the part as it will be;
 * tenons and mortises next, so that a groove that runs through takes its share of the tenon; rooms and laps last.
 */
export function cutJoints(
  drafts: readonly JointDraft[],
  bench: Bench,
  context: JoineryContext,
  pairContext: PairContext,
): readonly Jointed[] {
  const joinings = drafts
    .flatMap((draft) => pairsOf(draft, pairContext))
    .map((pair, i): Joining => ({ ...pair, id: `j${i + 1}` }))
    .filter((joining) => !wantsSquare(joining, context));
  for (const draft of drafts)
    if (draft.tenon?.ends?.value === "mitred")
      context.report(notInThisVersion(draft.tenon.ends.at, { what: "mitred ends of tenons" }, { severity: "error" }));
  const housings = new Map<Joining, Housing>();
  for (const joining of joinings)
    if (HOUSINGS.includes(joining.draft.with.value)) {
      const housing = growHousing(joining, bench, context);
      if (housing) housings.set(joining, housing);
    }
  const done = new Map<Joining, Jointed>();
  const note = (joining: Joining, jointed: Jointed | null): void => {
    if (jointed) done.set(joining, jointed);
  };
  for (const joining of joinings)
    if (joining.draft.with.value === "mortise and tenon") note(joining, cutTenon(joining, bench, context));
  for (const joining of joinings) {
    const housing = housings.get(joining);
    if (housing) note(joining, cutHousing(housing, bench, context));
    else if (joining.draft.with.value === "half lap") note(joining, cutLap(joining, bench, context));
    else if (!HOUSINGS.includes(joining.draft.with.value) && joining.draft.with.value !== "mortise and tenon")
      note(joining, { joining, insertion: null, gap: ZERO });
  }
  return joinings.flatMap((joining) => done.get(joining) ?? []);
}

/** A method that cuts both parts square, for parts that are not: told, and true. */
function wantsSquare({ draft, join, to, touch }: Joining, context: JoineryContext): boolean {
  const { value: method, at } = draft.with;
  const cuts = HOUSINGS.includes(method) || method === "mortise and tenon" || method === "half lap";
  if (touch.kind !== "slanting" || !cuts) return false;
  context.report(jointWantsSquare(at, { join: join.id, to: to.id, method }));
  return true;
}
