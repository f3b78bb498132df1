import type { Finding } from "../../../findings/finding.ts";
import { betweenMarks } from "../../../findings/rules/between-marks.ts";
import type { Span } from "../../../findings/span.ts";
import type { Draft, Formula, NodeDraft } from "../../../parse/draft.ts";
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "../../../units/length.ts";
import { add, divide, floor, multiply, type Rational, rational } from "../../../units/rational.ts";

interface Said {
  readonly at: Span;
  readonly value: Formula;
}

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
            ? [place]
            : [],
        )
      : [],
  );
  const written = places.filter(({ at }) => !keys.has(markOf(at)));
  const sizes = [...Object.values(draft.outside), ...draft.sizes.values(), ...written];
  const seen = new Set<string>();
  return sizes.flatMap(({ at, value }) => {
    const size = lengthOf(value, unit);
    if (size === null || seen.has(markOf(at))) return [];
    seen.add(markOf(at));
    if ([draft.precision, draft.fits].some((step) => step && divide(size, step.value).d === 1n)) return [];
    const step = draft.precision.value;
    const below = multiply(rational(floor(divide(size, step))), step);
    return [betweenMarks(at, { size, below, above: add(below, step), units: draft.units })];
  });
}

const markOf = ({ file, start, end }: Span): string => `${file ?? ""} ${start} ${end}`;

const all = (node: NodeDraft): readonly NodeDraft[] =>
  node.kind === "group" ? [node, ...node.children.flatMap(all)] : [node];

/** Only a measure in so many words: what is worked out is rounded on purpose. */
const lengthOf = (value: Formula, unit: Rational): Length | null =>
  value.kind === "measure" ? value.value : value.kind === "number" ? multiply(value.value, unit) : null;
