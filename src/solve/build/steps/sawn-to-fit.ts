/** Mitred ends that are sawn where the piece tells their place, while the part is cut to fit: no step shapes them again. */
import type { Action } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import { indexOf } from "../../design/space.ts";
import { onBench } from "../../design/turning.ts";
import type { Feature, Part } from "../../design.ts";
import { isShape } from "./cuts.ts";
import type { Work } from "./draft.ts";

/** Whether a cut is such an end. `part` as it lies on the bench. */
export const isSawnToFit = (feature: Feature, part: Part): boolean =>
  feature.kind === "mitre" &&
  "normal" in feature &&
  feature.normal[indexOf(part.axes.length)] !== 0 &&
  makingOf(part).between?.some(({ round, flush }) => round || flush) === true &&
  isShape(feature, part);

/** What the step that cuts parts to fit makes of them besides. */
export const sawnToFit = (work: Work, ids: readonly string[]): readonly Action[] =>
  ids.flatMap((id) => {
    const part = onBench(work.part(id));
    const features = part.features.flatMap((feature, i) => (isSawnToFit(feature, part) ? [i] : []));
    return features.length > 0 ? [{ do: "machine", part: id, features, holes: [] }] : [];
  });
