/** Halves of slides stay where they were set while the piece is finished: what carries them stays bare there. */
import type { Hardware } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** What a screw in a slot holds is not found again once it is out. */
export function staysOn(work: Work, { joint: id }: Hardware): boolean {
  return work.design.joints.find((each) => each.id === id)?.method === "slides";
}
