/** Fingers and dovetails are not cut by numbers twice: the first part is, and the second is marked from it (common practice, no source). */
import type { Method } from "../../../parse/draft.ts";
import { listed, type StepDraft, type Work } from "./draft.ts";

const INTERLOCKED: readonly Method[] = ["box joint", "dovetail"];

/** Steps in the order of work. */
export function interlocked(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const own = new Map(
    work.design.joints.flatMap((joint) => (INTERLOCKED.includes(joint.method) ? [[joint.id, joint] as const] : [])),
  );
  const first = new Map<string, number>();
  return drafts.map((draft, i) => {
    const cut = cutIn(work, draft, own);
    for (const { joint } of cut) if (!first.has(joint)) first.set(joint, i);
    const marked = cut.filter(({ joint }) => (first.get(joint) ?? i) < i);
    const from = marked.flatMap(({ joint, part }) => own.get(joint)?.parts.filter((id) => id !== part) ?? []);
    const leads = cut.length > marked.length;
    if (cut.length === 0) return draft;
    return {
      ...draft,
      text: [...draft.text, ...(leads ? [LEADS] : []), ...(marked.length > 0 ? [markedText(work, from)] : [])],
    };
  });
}

const LEADS =
  "What goes between these is marked from them later: saw them square, on the waste side of each line, so that the line stays, chop from both faces to the middle, and write one letter on each corner.";

const markedText = (work: Work, from: readonly string[]): string =>
  `The numbers here are as drawn: mark these from ${listed(work, [...new Set(from)])}. Stand each end on the one that it meets, flush at the edges, and draw round what is cut there with a knife. Saw in the waste beside the lines, chop out, and pare until the corner goes together by light blows of the hand. Try each corner by itself, and give both its parts the same letter. With a jig on the saw that cuts both alike, try it on two offcuts instead.`;

interface Cut {
  readonly joint: string;
  readonly part: string;
}

/** What of such joints a step cuts. */
const cutIn = (work: Work, { actions }: StepDraft, own: ReadonlyMap<string, unknown>): readonly Cut[] => {
  const cuts = actions.flatMap((action) =>
    action.do !== "machine"
      ? []
      : action.features.flatMap((i): readonly Cut[] => {
          const feature = work.part(action.part).features[i];
          const joint = feature && "for" in feature ? feature.for : null;
          return joint !== null && own.has(joint) ? [{ joint, part: action.part }] : [];
        }),
  );
  return [...new Map(cuts.map((cut) => [`${cut.joint} ${cut.part}`, cut])).values()];
};
