import type { Finding } from "../../../findings/finding.ts";
import { betweenMarks } from "../../../findings/rules/between-marks.ts";
import type { Span } from "../../../findings/span.ts";
import type { Draft, Formula, NodeDraft } from "../../../parse/draft.ts";
import { inches, type Length, millimetres, UNITS_PER_INCH, UNITS_PER_MM } from "../../../units/length.ts";
import { add, divide, floor, multiply, type Rational, rational } from "../../../units/rational.ts";

interface Said {
  readonly at: Span;
  readonly value: Formula;
  /** A size to which a part is cut. */
  readonly cut?: boolean;
}

/** No rule has finer marks; what lies on them may follow from how thick a sheet is. */
const FINEST = { inch: inches(1, 64), mm: millimetres(1, 10) };

/** Sizes and places that were written as a measure between two marks of the tape: the outside's, named ones, and those of parts and openings. */
export function aboutMarks(draft: Draft): readonly Finding[] {
  const unit = rational(draft.units === "inch" ? UNITS_PER_INCH : UNITS_PER_MM);
  const nodes = draft.piece.flatMap(all);
  // What an assembly writes points to the name of a setting, and not to its value.
  const keys = new Set(nodes.map(({ at }) => markOf(at)));
  const places = nodes.flatMap((node): readonly Said[] =>
    node.kind === "part"
      ? node.placing.flatMap((place) =>
          place.word === "extent" || place.word === "face" || (place.word === "board" && place.size !== "thickness")
            ? [{ ...place, cut: !node.space && place.word !== "face" }]
            : [],
        )
      : [],
  );
  // A named size without a unit may be a share or a count.
  const named = [...draft.sizes.values()].filter(({ value }) => value.kind !== "number");
  const sizes = [...Object.values(draft.outside), ...named, ...places]
    .flatMap(measuresIn)
    .filter(({ at }) => !keys.has(markOf(at)));
  const seen = new Set<string>();
  return sizes.flatMap(({ at, value, cut = false }) => {
    const size = lengthOf(value, unit);
    if (size === null || seen.has(markOf(at))) return [];
    seen.add(markOf(at));
    const step = draft.precision.value;
    if ([step, draft.fits?.value, cut ? null : FINEST[draft.units]].some((each) => each && isMultiple(size, each)))
      return [];
    const below = multiply(rational(floor(divide(size, step))), step);
    return [betweenMarks(at, { size, below, above: add(below, step), units: draft.units })];
  });
}

const isMultiple = (size: Length, step: Length): boolean => divide(size, step).d === 1n;

const markOf = ({ file, start, end }: Span): string => `${file ?? ""} ${start} ${end}`;

const all = (node: NodeDraft): readonly NodeDraft[] =>
  node.kind === "group" ? [node, ...node.children.flatMap(all)] : [node];

/** The measures of a size or place: the whole of it, or those that are added up in it. What is multiplied or divided is none. */
function measuresIn({ value, cut }: Said): readonly Said[] {
  const of = (part: Formula): readonly Said[] => measuresIn({ at: part.at, value: part });
  if (value.kind === "number" || value.kind === "measure") return [{ at: value.at, value, ...(cut && { cut }) }];
  if (value.kind === "negate") return of(value.of);
  if (value.kind === "operation")
    return value.operator === "+" || value.operator === "-" ? [...of(value.left), ...of(value.right)] : [];
  return value.kind === "call" && (value.name === "min" || value.name === "max") ? value.of.flatMap(of) : [];
}

const lengthOf = (value: Formula, unit: Rational): Length | null =>
  value.kind === "measure" ? value.value : value.kind === "number" ? multiply(value.value, unit) : null;
