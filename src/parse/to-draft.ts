import type { Finding } from "../findings/finding.ts";
import { precisionStep } from "../findings/rules/precision-step.ts";
import { sizeAndOutside } from "../findings/rules/size-and-outside.ts";
import { unitsDoubtful } from "../findings/rules/units-doubtful.ts";
import type { Span } from "../findings/span.ts";
import { inches, type Length, millimetres } from "../units/length.ts";
import { divide, less, multiply, rational, toNumber, ZERO } from "../units/rational.ts";
import type { Draft, Formula, SizeDraft, Units } from "./draft.ts";
import type { Opened } from "./expand/index.ts";
import type { Field } from "./kinds/settings.ts";
import { LIMITS } from "./limits.ts";
import type { plan } from "./schema/plan.ts";

type Read = NonNullable<ReturnType<typeof plan.read>>;

/** What the settings of a plan come to, with what is taken when nothing is said. */
export function toDraft({ at, said }: Read, { choices, chosen }: Omit<Opened, "tree">, findings: Finding[]): Draft {
  const units = said.units?.value ?? "inch";
  const sizes = new Map<string, SizeDraft>(said.sizes?.value.map(({ name, value }) => [name, value]));
  const outside = said.outside?.value.said ?? {};
  for (const name of ["width", "depth", "height"] as const) {
    const twice = said.sizes?.value.find((size) => size.name === name);
    if (twice === undefined || outside[name] === undefined) continue;
    const also = [{ at: outside[name].key, label: "the outside measure" }];
    findings.push(sizeAndOutside(twice.at, { name }, { also }));
  }
  const doubt = doubtful(Object.values(outside), units, said.units !== undefined);
  if (doubt) findings.push(doubt);
  const precision = step(said.precision, units, findings);
  const fits = step(said.fits, units, findings);
  const kerf = said.kerf === undefined ? undefined : plainLength(said.kerf.value, units);
  if (said.kerf !== undefined && (kerf === undefined || less(kerf, ZERO)))
    findings.push(precisionStep(said.kerf.at, { key: "kerf", units }));
  return {
    at,
    title: said.title,
    ...(said.subtitle && { subtitle: said.subtitle }),
    ...(said.by && { by: said.by }),
    ...(said.summary && { summary: said.summary }),
    ...(said.edition && { edition: said.edition }),
    ...(said.credits && { credits: said.credits }),
    ...(said.rights && { rights: said.rights }),
    ...(said.support && { support: said.support }),
    units,
    precision: precision ?? { value: units === "inch" ? inches(1, 16) : millimetres(1), at: startOf(at) },
    ...(fits && { fits }),
    outside: {
      ...(outside.width && { width: outside.width.value }),
      ...(outside.depth && { depth: outside.depth.value }),
      ...(outside.height && { height: outside.height.value }),
    },
    sizes,
    ...(said.hold && { hold: said.hold.value }),
    stock: new Map(said.stock.value.map((stock) => [stock.name, stock])),
    choices,
    chosen,
    piece: said.piece.value.nodes,
    joints: [...said.piece.value.joints, ...(said.joints?.value ?? [])],
    fittings: [...said.piece.value.fittings, ...(said.fittings?.value ?? [])],
    hardware: new Map(said.hardware?.value.map((each) => [each.name, each])),
    ...(said.place && { site: said.place.value }),
    ...(said.wall && { wall: said.wall.value }),
    ...(said.carries && { carries: said.carries }),
    ...(said.finish && { finish: said.finish.value }),
    ...(said.order && { order: said.order.value }),
    ...(said.notes && { notes: said.notes.value }),
    ...(said["used for"] && { usedFor: said["used for"].value }),
    ...(said["tools owned"] && { tools: said["tools owned"].value }),
    ...(said.allow && { allow: said.allow.value }),
    ...(said["rough sizes"] && { rough: said["rough sizes"].value }),
    kerf: kerf ?? (units === "inch" ? inches(1, 8) : millimetres(32, 10)),
  };
}

/** Furniture is smaller than this at its largest in inches, and larger in millimetres. Common practice, no source. */
const MOST_INCHES = 240;
const LEAST_MILLIMETRES = 100;
/** What cannot be meant in millimetres either. */
const MOST = (LIMITS.metres.limit * 1000) / 25.4;

/** Whether the numbers of the outside were likely meant in the other unit; sizes with a unit of their own are taken at their word. */
function doubtful(outside: readonly Field<SizeDraft>[], units: Units, said: boolean): Finding | null {
  const sizes = outside.flatMap(({ value: { value, at } }) =>
    value.kind === "number" ? [{ size: toNumber(value.value), at }] : [],
  );
  if (sizes.length === 0 || sizes.length < outside.length) return null;
  const largest = sizes.reduce((a, b) => (a.size < b.size ? b : a));
  // What is beyond every limit is told as that.
  if (units === "inch" ? largest.size <= MOST_INCHES || largest.size > MOST : largest.size >= LEAST_MILLIMETRES)
    return null;
  return unitsDoubtful(largest.at, { size: String(largest.size), units, said });
}

const startOf = (at: Span): Span => ({ ...at, end: at.start });

/** A length that needs no names: `1/16`, `0.5 mm`. */
function plainLength(formula: Formula, units: Units): Length | undefined {
  if (formula.kind === "measure") return formula.value;
  return formula.kind === "number" ? multiply(formula.value, units === "inch" ? inches(1) : millimetres(1)) : undefined;
}

/** A step that a tape has: an inch halved up to six times; tenths, halves or whole numbers of a millimetre up to 10. */
function step(field: Field<Formula> | undefined, units: Units, findings: Finding[]) {
  if (field === undefined) return undefined;
  const length = plainLength(field.value, units);
  if (length !== undefined && isStep(length, units)) return { value: length, at: field.at };
  findings.push(precisionStep(field.at, { key: "precision", units }));
  return undefined;
}

function isStep(length: Length, units: Units): boolean {
  if (!less(ZERO, length)) return false;
  const one = divide(length, units === "inch" ? inches(1, 64) : millimetres(1, 10));
  if (one.d !== 1n) return false;
  return units === "inch"
    ? [1n, 2n, 4n, 8n, 16n, 32n, 64n].includes(one.n)
    : !less(rational(100), one) && ([1n, 2n, 5n].includes(one.n) || one.n % 10n === 0n);
}
