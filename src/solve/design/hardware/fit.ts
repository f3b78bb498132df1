import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import type { FittingDraft, Formula } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, less, multiply, rational } from "../../../units/rational.ts";
import type { Fitting, Part, Point, Wall } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import {
  type AxisIndex,
  axisAt,
  extent,
  faceAxis,
  facePosition,
  indexOf,
  isHigh,
  middle,
  otherAxes,
  triple,
  withAxis,
} from "../space.ts";
import { atStuds } from "./at-studs.ts";
import type { FitterContext } from "./fitter.ts";
import { FITTERS } from "./fitters.ts";
import type { Items } from "./items.ts";

export interface FittingsContext extends FitterContext {
  readonly directory: Directory;
  readonly items: Items;
  readonly wall: Wall;
  readonly measure: (formula: Formula) => Length | null;
  /** A whole number of at least 1. */
  readonly count: (formula: Formula) => number | null;
  readonly part: (id: string) => Part | undefined;
}

/** Every fitting of the plan: as many as it says for each part that it names. */
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
  const count = draft.count ? context.count(draft.count) : 1;
  if (!item || !fitter || count === null) return [];
  const against = draft.against ? (named(draft.against)[0] ?? null) : null;
  // A name that is not found has been told.
  if (draft.against && !against) return [];
  const through = draft.through?.flatMap(named) ?? [];
  return parts.flatMap((part): readonly Fitting[] => {
    const face = draft.face?.value ?? (typeof fitter.face === "string" ? fitter.face : fitter.face(part, against));
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
    const run = runOf(draft, part, axis);
    const into =
      item.kind === "wall screw" ? atStuds(place as Point, run, part, context.wall, draft.count ? count : null) : null;
    const spots = into ?? row(place as Point, count, run, part);
    return spots.flatMap((at): readonly Fitting[] => {
      const number = (counts.get(`${part.id} ${item.name}`) ?? 0) + 1;
      counts.set(`${part.id} ${item.name}`, number);
      const id = `${part.id}.${item.name.replace(/ /g, "-")}.${number}`;
      const sign = isHigh(face) ? 1 : -1;
      const made = fitter.fit({ id, draft, item, part, against, through, axis, sign, run, at, body }, context);
      return made ? [{ id, at: draft.at, part: part.id, face, through: through.map((each) => each.id), ...made }] : [];
    });
  });
}

/** The direction that the plan says, or the longer one of the face. */
function runOf({ along }: FittingDraft, { body }: Part, axis: AxisIndex): AxisIndex {
  const [a, b] = otherAxes(axis);
  const said = along && indexOf(along.value);
  if (said !== undefined && said !== axis) return said;
  return less(extent(body, a), extent(body, b)) ? b : a;
}

/** Several share the length of the face equally: each stands in the middle of its share. */
function row(at: Point, count: number, run: AxisIndex, { body }: Part): readonly Point[] {
  if (count === 1) return [at];
  const long = extent(body, run);
  return Array.from({ length: count }, (_, i) =>
    withAxis(at, run, add(body.low[run], multiply(long, rational(2 * i + 1, 2 * count)))),
  );
}
