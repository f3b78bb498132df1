/** What a plan holds while its stock measures otherwise than drawn: the outside moves until the space is as large as before. */
import type { Finding } from "../../../findings/finding.ts";
import { hasErrors, type Outcome } from "../../../findings/outcome.ts";
import { openingNotHeld } from "../../../findings/rules/opening-not-held.ts";
import type { Draft, Formula, Reference, SizeDraft } from "../../../parse/draft.ts";
import { inches, type Length } from "../../../units/length.ts";
import { absolute, divide, less, rational, subtract } from "../../../units/rational.ts";
import { placing } from "../placed.ts";
import { type AxisIndex, extent, INDICES } from "../space.ts";
import { heldSpace } from "./held.ts";

const SIZES = ["width", "depth", "height"] as const;
const DIRECTIONS = ["from side to side", "from front to back", "from bottom to top"] as const;
type Extents = readonly [Length | null, Length | null, Length | null];

/** The plan with its outside moved by what keeps the space that it holds. As it is where it holds the outside, or its stock is as drawn. */
export function holding(draft: Draft): Outcome<Draft> {
  const { hold } = draft;
  const findings: Finding[] = [];
  if (!hold || (hold.path.length === 1 && hold.path[0] === "outside")) return { value: draft, findings };
  // What is wrong with stock and counts is told when the plan is solved.
  let looking = false;
  const report = (finding: Finding): void => {
    if (looking) findings.push(finding);
  };
  const { directory, print } = placing(draft, report);
  looking = true;
  const space = heldSpace(hold, directory, report);
  if (hasErrors(findings) || space === null) return { findings };
  if ([...draft.stock.values()].every(({ measured }) => measured === undefined)) return { value: draft, findings };
  const wanted = extents(asDrawn(draft), hold);
  let held = draft;
  for (const axis of INDICES) {
    const size = wanted[axis];
    if (size === null) continue;
    held = heldAlong(held, hold, axis, size);
    const now = extents(held, hold)[axis];
    if (now && !sameLength(now, size))
      findings.push(
        openingNotHeld(hold.at, {
          name: space.id,
          direction: DIRECTIONS[axis],
          outside: SIZES[axis],
          given: draft.outside[SIZES[axis]] !== undefined,
          drawn: print(size),
          now: print(now),
        }),
      );
  }
  return { value: held, findings };
}

/** Formulas of places are sums and shares: how far the outside has to move follows from how far the space follows it. */
function heldAlong(draft: Draft, hold: Reference, axis: AxisIndex, wanted: Length): Draft {
  const now = extents(draft, hold)[axis];
  if (!now || sameLength(now, wanted) || !draft.outside[SIZES[axis]]) return draft;
  const trial = extents(withOutside(draft, axis, TRIAL), hold)[axis];
  const share = trial && divide(subtract(trial, now), TRIAL);
  if (!share || share.n === 0n) return draft;
  return withOutside(draft, axis, divide(subtract(wanted, now), share));
}

const TRIAL = inches(1, 8);

/** One side of the outside larger by so much, and with it the range that a reader may ask for. */
function withOutside(draft: Draft, axis: AxisIndex, by: Length): Draft {
  const name = SIZES[axis];
  const size = draft.outside[name] as SizeDraft;
  const moved = (left: Formula): Formula => {
    const { at } = left;
    return { kind: "operation", operator: "+", left, right: { kind: "measure", value: by, at }, at };
  };
  const { value, from, to, ...rest } = size;
  const whole = { ...rest, value: moved(value), ...(from && { from: moved(from) }), ...(to && { to: moved(to) }) };
  return { ...draft, outside: { ...draft.outside, [name]: whole } };
}

const asDrawn = (draft: Draft): Draft => ({
  ...draft,
  stock: new Map([...draft.stock].map(([name, { measured: _, ...stock }]) => [name, stock])),
});

/** How large the space is, before anything is rounded to what can be marked; null where it cannot be worked out, which is told later. */
function extents(draft: Draft, hold: Reference): Extents {
  const { fits: _, ...plain } = draft;
  const step = fineStep(draft);
  const { directory, places } = placing({ ...plain, precision: { ...draft.precision, value: step } }, () => {}, true);
  const space = heldSpace(hold, directory, () => {});
  const box = space && places.box(space);
  const along = (axis: AxisIndex): Length | null => box && extent(box, axis);
  return [along(0), along(1), along(2)];
}

/** A step on which every thickness lies, and its halves, thirds and other shares as far as sixteenths. */
function fineStep(draft: Draft): Length {
  const thicknesses = [...placing(draft, () => {}).stock.values()].flatMap((stock) => (stock ? [stock.thickness] : []));
  return thicknesses.reduce((step, { d }) => divide(step, rational(d)), rational(1, SHARES));
}

/** The least number that 1 to 16 divide, and some halvings. */
const SHARES = 720_720n * 1024n;

/** Apart by less than any step: what a share of a share may leave. */
const sameLength = (a: Length, b: Length): boolean => less(absolute(subtract(a, b)), rational(1, 1000));
