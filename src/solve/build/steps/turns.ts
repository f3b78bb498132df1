/** The work never lies otherwise than the reader knows: whatever comes between two steps of joining may have turned it. */
import { type AxisIndex, faceOf, INDICES, sameDirection } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import type { StepDraft } from "./draft.ts";
import { laidFor, laying, NOTHING, stillOn } from "./laid-for.ts";
import { overText, STANDING } from "./lying.ts";
import { type Sentence, tells, wordsOf } from "./sentence.ts";
import { afterAction, type Bodies } from "./touched.ts";

/**
 * Steps in the order of work: where one finds the largest body in hand lying otherwise than it is told of, that is turned first.
 * `onPins`: parts that only lie on their pins, with what is fixed to them: as long as the work lies they lie against its back, and are not
 * shown. `lifting`: the cautions for what is turned.
 */
export function withTurns(
  drafts: readonly StepDraft[],
  onPins: ReadonlySet<string>,
  lifting: (ids: readonly string[]) => readonly string[],
): readonly StepDraft[] {
  let bodies: Bodies = [];
  const lies = new Map<string, Direction>();
  // By part, what its body was laid on in a step before the one that is told of that.
  const blocks = new Map<string, readonly Sentence[]>();
  // What was taken off its pins, until the work stands again.
  const fallen = new Set<string>();
  return drafts.map((draft, i) => {
    const { measures, shows, actions } = draft;
    // What begins on a body that was built before begins as that lies.
    const begins = shows.present.length === 0 && (draft.kind === "join" || draft.kind === "glue-up");
    const whole = draft.kind === "finish" || begins;
    const own = measures ?? (shows.as ? [] : whole ? [...shows.present, ...shows.fresh] : shows.present);
    const [body] = bodies.filter((each) => own.some((id) => each.has(id))).toSorted((a, b) => b.size - a.size);
    const before = body && body.size > 1 ? lies.get([...body][0] ?? "") : undefined;
    // What is fastened from below comes off as it lies on it.
    const onHead = before?.[2] === -1 ? draft.onHead : undefined;
    // What stands or stands on its head is measured as it does; what is tried in its place as it lies when it is put there.
    const measured = draft.kind === "fit" && before?.[2] !== 0 && (!draft.tried || draft.up[2] === 0);
    // What is only measured in work that was laid down is measured as that stands.
    const stood = draft.kind === "fit" && before?.[2] === 0 && !draft.tried && draft.up[2] === -1;
    const up = before && (onHead || measured) ? before : stood ? STANDING : draft.up;
    // A door that was taken off is taken up: "the work" would be the piece.
    const inHand = draft.kind === "fit" && bodies.some((each) => each.size > (body?.size ?? 0));
    const on = [...(body ?? [])].flatMap((id) => blocks.get(id) ?? []);
    bodies = actions.reduce(afterAction, bodies);
    const seen = new Set([...own, ...(shows.as ? [] : shows.fresh)]);
    for (const each of bodies)
      if ([...seen].some((id) => each.has(id)))
        for (const id of each) {
          lies.set(id, up);
          if (!before || !sameDirection(before, up)) blocks.delete(id);
        }
    if (!before) return draft;
    const falls = up[2] !== 1 && before[2] === 1 && own.some((id) => onPins.has(id)) ? [FALLS] : [];
    for (const id of body ?? []) if (falls.length > 0 && onPins.has(id)) fallen.add(id);
    const lain = up[2] === 1 ? [...(body ?? [])].filter((id) => fallen.has(id)) : [];
    for (const id of lain) fallen.delete(id);
    const back = lain.length > 0 ? [ON_AGAIN] : [];
    const present = shows.present.filter((id) => !fallen.has(id));
    const drawn = present.length < shows.present.length ? { ...draft, shows: { ...shows, present } } : draft;
    if (onHead) {
      const [rest] = bodies.filter((each) => own.some((id) => each.has(id))).toSorted((a, b) => b.size - a.size);
      return { ...drawn, up, text: onHead, cautions: [...new Set([...lifting([...(rest ?? [])]), ...draft.cautions])] };
    }
    const text = draft.text.map((each) => {
      const over = tells(each, "over");
      return over ? overText(over, before) : each;
    });
    if (sameDirection(before, up)) return stillOn(on, lyingSo({ ...drawn, up, text }));
    const withIt = text.some((each) => tells(each, "over"));
    const turns = withIt || inHand || text.some((each) => tells(each, "turns")) ? [] : [turnText(before, up)];
    const laid = turns.length > 0 && up[2] !== 1 ? laidFor(drafts.slice(i + 1), own, draft, up) : NOTHING;
    for (const id of body ?? []) if (laid.on.length > 0) blocks.set(id, laid.on);
    // What is clamped on is turned over too.
    const over = withIt ? bodies.find((each) => own.some((id) => each.has(id))) : body;
    const heavy = lifting([...(over ?? [])]);
    const others =
      heavy.length > 0 ? draft.cautions.filter((each) => !draft.lifts?.turned.includes(each)) : draft.cautions;
    return {
      ...{ ...drawn, up },
      ...(heavy.length > 0 && { hands: 2, cautions: [...new Set([...heavy, ...others])] }),
      text: [...laid.first, ...falls, ...turns, ...laid.on.map(laying), ...afterTurn(text, back)],
    };
  });
}

/** Behind the sentence that turns the work, or in front of all where that was said before them. */
function afterTurn(text: readonly Sentence[], more: readonly Sentence[]): readonly Sentence[] {
  const at = text.findIndex((each) => tells(each, "turns") || tells(each, "over")) + 1;
  return [...text.slice(0, at), ...more, ...text.slice(at)];
}

/** It lies already as it must: nothing is turned, and not lifted for that. */
function lyingSo(draft: StepDraft): StepDraft {
  const { lifts, proof } = draft;
  const seen = draft.text.flatMap((each) => (wordsOf(each) === proof?.turned ? (proof.lying ?? []) : [each]));
  const text = seen.filter((each) => tells(each, "turns") !== "so");
  if (!lifts || text.length === seen.length) return { ...draft, text };
  return {
    ...draft,
    text,
    cautions: [...lifts.lying, ...draft.cautions.filter((each) => !lifts.turned.includes(each))],
  };
}

/** In the words of the step before: what stands there is laid down. */
const FALLS =
  "What lies loose on pins falls when the work is laid down: lay it against the back first, and set it on its pins again when the work stands.";

const ON_AGAIN = "Set what was laid against the back on its pins again.";

function turnText(before: Direction, up: Direction): string {
  if (up[2] === 1) return before[2] === 0 ? "Stand the work up." : "Turn the work the right way up.";
  if (up[2] === -1) return "Turn the work upside down.";
  const axis = INDICES.find((i: AxisIndex) => up[i] !== 0) ?? 0;
  return `Lay the work down, its ${faceOf(axis, up[axis] > 0)} side up.`;
}
