/** Which wishes for a step of its own could not be kept. */
import type { Finding } from "../../../../findings/finding.ts";
import { noOwnStep } from "../../../../findings/rules/no-own-step.ts";
import type { Verb } from "../../../../parse/draft.ts";
import type { Action } from "../../../build.ts";
import type { Subject } from "../../../design/model/wish.ts";
import type { StepDraft, Work } from "../draft.ts";
import { shown, stepsAbout } from "./about.ts";
import { cutsOf, partsIn } from "./own-key.ts";

/** What could not be taken apart, with the parts that are in the way. */
export const notApart = (work: Work, drafts: readonly StepDraft[]): readonly Finding[] =>
  (work.design.wishes ?? []).flatMap((wish): readonly Finding[] => {
    if (wish.kind !== "own step") return [];
    const about = stepsAbout(work, drafts, wish.what).flatMap((i) => drafts[i] ?? []);
    const others = [...new Set(about.flatMap((draft) => othersIn(work, draft, wish.what)))];
    return others.length > 0 ? [noOwnStep(wish.at, { what: wish.what.said, parts: others })] : [];
  });

/** Parts that the same work is done on in the same step. */
function othersIn(work: Work, draft: StepDraft, subject: Subject): readonly string[] {
  const { parts, verb = "join" } = subject;
  if (parts === null) return [];
  const cuts = cutsOf(subject) !== null;
  const done = draft.actions.flatMap((action): readonly string[] => {
    if (cuts) return action.do === "machine" ? [action.part] : [];
    return partsOf(work, action, verb);
  });
  const shownOnly = (verb === "glue" && draft.kind === "glue-up") || (verb === "plane" && draft.kind === "mill");
  return [...done, ...(shownOnly && draft.actions.length === 0 ? shown(work, draft) : [])].filter(
    (id) => !parts.includes(id),
  );
}

function partsOf(work: Work, action: Action, verb: Verb): readonly string[] {
  switch (action.do) {
    case "make":
      return verb === "cut" ? work.blanks.filter(({ id }) => action.blanks.includes(id)).flatMap(partsIn) : [];
    case "band":
      return verb === "band" ? [action.part] : [];
    case "finish":
      return verb === "finish" ? action.parts : [];
    case "fit":
      return verb === "fit" ? action.to : [];
    default:
      return [];
  }
}
