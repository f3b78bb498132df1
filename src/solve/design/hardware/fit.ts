import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import type { Face, FittingDraft, Formula } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import type { Fitting, Part, Point } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import { axisAt, faceAxis, facePosition, isHigh, middle, triple } from "../space.ts";
import { fitDrawerStop } from "./drawer-stop.ts";
import type { Fitter, FitterContext } from "./fitter.ts";
import type { Items } from "./items.ts";
import { fitKnob } from "./knob.ts";

/** How each kind of hardware is fixed to a part, and the face that it is put on when nothing is said. A new one is a file here and a line in this table. */
const FITTERS: ReadonlyMap<string, { readonly fit: Fitter; readonly face: Face }> = new Map([
  ["knob", { fit: fitKnob, face: "front" }],
  ["drawer stop", { fit: fitDrawerStop, face: "front" }],
]);

export interface FittingsContext extends FitterContext {
  readonly directory: Directory;
  readonly items: Items;
  readonly measure: (formula: Formula) => Length | null;
  readonly part: (id: string) => Part | undefined;
}

/** Every fitting of the plan, one for each part that it names. */
export const finishFittings = (drafts: readonly FittingDraft[], context: FittingsContext): readonly Fitting[] => {
  const counts = new Map<string, number>();
  return drafts.flatMap((draft) => fittingsOf(draft, counts, context));
};

function fittingsOf(draft: FittingDraft, counts: Map<string, number>, context: FittingsContext): readonly Fitting[] {
  const item = context.items.find(draft.fit, [...FITTERS.keys()]);
  const named = (reference: FittingDraft["to"][number]): readonly Part[] =>
    (context.directory.find(reference) ?? []).flatMap(({ id }) => context.part(id) ?? []);
  const parts = draft.to.flatMap(named);
  const fitter = item && FITTERS.get(item.kind);
  if (!item || !fitter) return [];
  const against = draft.against ? (named(draft.against)[0] ?? null) : null;
  const through = draft.through?.flatMap(named) ?? [];
  return parts.flatMap((part): readonly Fitting[] => {
    const face = draft.face?.value ?? fitter.face;
    const { body } = part;
    if (part.turned) {
      context.report(fitsNothing(draft.at, { item: item.kind, part: part.id, because: "turned" }));
      return [];
    }
    const axis = faceAxis(face);
    const place = triple((i): Length | null => {
      const said = draft.place[axisAt(i)];
      if (i === axis) return facePosition(body, face);
      return said ? context.measure(said) : middle(body, i);
    });
    if (place.some((value) => value === null)) return [];
    const at = place as Point;
    const number = (counts.get(`${part.id} ${item.name}`) ?? 0) + 1;
    counts.set(`${part.id} ${item.name}`, number);
    const id = `${part.id}.${item.name.replace(/ /g, "-")}.${number}`;
    const sign = isHigh(face) ? 1 : -1;
    const made = fitter.fit({ id, draft, item, part, against, through, axis, sign, at, body }, context);
    return made ? [{ id, at: draft.at, part: part.id, ...made }] : [];
  });
}
