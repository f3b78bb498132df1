import { jointWantsAFace } from "../../../findings/rules/joint-wants-a-face.ts";
import { jointWantsSquare } from "../../../findings/rules/joint-wants-square.ts";
import type { JointDraft } from "../../../parse/draft.ts";
import { fasteningOf } from "../fastening/methods.ts";
import { CRAFTS } from "./crafts.ts";
import { meetCuts } from "./meeting-cuts.ts";
import { mitreEnds } from "./mitred-ends.ts";
import { type PairContext, pairsOf } from "./pairs.ts";
import type { Bench, JoineryContext, Joining, Jointed } from "./work.ts";

/**
 * Cuts every joint of the piece. Each first lengthens its parts, all of them, so that each room is cut for the part as it will be and a
 * groove that runs through takes its share of the tenon; the rest is cut after that, tenons last, since they stand beside such grooves.
 */
export function cutJoints(
  drafts: readonly JointDraft[],
  bench: Bench,
  context: JoineryContext,
  pairContext: PairContext,
  /** Called when every part has its full length, before rooms are cut for them. */
  lengthened: () => void = () => undefined,
): readonly Jointed[] {
  const joinings = drafts
    .flatMap((draft) => pairsOf(draft, pairContext))
    .map((pair, i): Joining => ({ ...pair, id: `j${i + 1}` }))
    .filter((joining) => !wantsSquare(joining, context) && !wantsAFace(joining, context));
  const numbered = joinings.map((joining) => withHolds(joining, joinings));
  const begun = numbered.map((joining) => {
    const siblings = numbered.filter((other) => other.draft === joining.draft);
    return CRAFTS[joining.draft.with.value].begin(joining, bench, context, siblings);
  });
  lengthened();
  const isLast = ({ draft }: Joining): boolean => CRAFTS[draft.with.value].last ?? false;
  const finished = new Map<Joining, Jointed | null>();
  for (const last of [false, true])
    for (const [i, joining] of numbered.entries())
      if (isLast(joining) === last) finished.set(joining, begun[i]?.() ?? null);
  const jointed = numbered.flatMap((joining) => finished.get(joining) ?? []);
  meetCuts(bench.pieces.keys(), bench, context);
  mitreEnds(joinings, bench, context);
  return jointed;
}

/** What else holds the wood that a joint lets move: it moves from there. */
function withHolds(joining: Joining, all: readonly Joining[]): Joining {
  const { draft, join, to, touch } = joining;
  if (!fasteningOf(draft)?.moves || touch.kind !== "faces") return joining;
  const besides = all.filter(
    (other) =>
      other.draft !== draft &&
      other.touch.kind === "faces" &&
      other.touch.axis === touch.axis &&
      [other.join, other.to].some((part) => part === join || part === to) &&
      holdsFast(other.draft),
  );
  return besides.length > 0 ? { ...joining, besides } : joining;
}

function holdsFast(draft: JointDraft): boolean {
  const method = fasteningOf(draft);
  return method ? !method.moves && !method.apart : (draft.glue?.value ?? CRAFTS[draft.with.value].glued);
}

/** A method that cuts both parts square, for parts that are not: told, and true. */
function wantsSquare({ draft, join, to, touch }: Joining, context: JoineryContext): boolean {
  const { value: method, at } = draft.with;
  if (touch.kind !== "slanting" || !CRAFTS[method].cuts) return false;
  context.report(jointWantsSquare(at, { join: join.id, to: to.id, method }));
  return true;
}

/** A method that lets one part into a face of the other, for parts that reach into each other: told, and true. */
function wantsAFace({ draft, join, to, touch }: Joining, context: JoineryContext): boolean {
  const { value: method, at } = draft.with;
  if (touch.kind !== "overlap" || !CRAFTS[method].faces) return false;
  context.report(jointWantsAFace(at, { join: join.id, to: to.id, method }));
  return true;
}
