/** Promise 2: what is bought is enough and is used. */

import type { Purchase } from "./bought.ts";
import { actionsOf, bounds, count, type Model } from "./model.ts";
import { type Violations, violation } from "./violation.ts";

export function* counts(model: Model): Violations {
  const { record } = model;
  const actions = actionsOf(record).map(({ action }) => action);
  const fitted = actions.flatMap((action) => (action.do === "fit" ? action.hardware : []));
  const removed = actions.flatMap((action) => (action.do === "remove" ? action.parts : []));
  for (const { id } of record.hardware)
    if (count(fitted, id) - count(removed, id) !== 1)
      yield violation("hardware is fitted once", id, `is fitted ${count(fitted, id)} times`);
  for (const part of record.parts) {
    const banded = actions.flatMap((action) => (action.do === "band" && action.part === part.id ? action.edges : []));
    const edges = part.edgeBanding.map((band) => band.edge);
    if ([...banded].sort().join() !== [...edges].sort().join())
      yield violation("banding is done once", part.id, `is banded ${banded.join(" ")}, not ${edges.join(" ")}`);
  }
  yield* bands(model);
  yield* fasteners(model);
  yield* boards(model);
  yield* panes(model);
}

/** As many panes as there are parts that nobody makes. */
function* panes({ record }: Model): Violations {
  const wanted = record.parts.filter(({ bought }) => bought).length;
  const bought = record.purchases.filter(({ section }) => section === "panes");
  const quantity = bought.reduce((so, line) => so + line.quantity, 0);
  if (quantity !== wanted) yield violation("purchases add up", "panes", `${wanted} are put in, ${quantity} bought`);
}

/** Units in which one is one; of a box that does not tell its content nobody can say how many are in it. */
const SINGLE = ["", "each", "piece", "pieces"];
const total = (lines: readonly Purchase[]): number =>
  lines.reduce((so, line) => so + line.quantity * (line.content?.count ?? 1) + line.onHand, 0);

/** Lengths in which banding is sold, in mm. */
const ROLLS = new Map([
  ["feet", 304.8],
  ["m", 1000],
]);

/** Of each band as much as covers its edges, with an inch more at both ends of every strip. */
function* bands({ record, solid }: Model): Violations {
  const all = record.parts.flatMap((part) => part.edgeBanding.map((band) => ({ part, band })));
  for (const item of new Set(all.map(({ band }) => band.item))) {
    const strips = all.filter(({ band }) => band.item === item);
    const need = strips.reduce((so, { part, band }) => so + edgeLength(bounds(solid(part.id)), band.edge) + 2 * 25, 0);
    const bought = record.purchases.filter((line) => line.item === item);
    const length = bought.reduce((so, line) => so + total([line]) * (ROLLS.get(line.content?.of ?? line.unit) ?? 0), 0);
    if (length < need) yield violation("purchases add up", item, `${need} mm are used, ${length} mm bought`);
  }
}

/** The longest extent of a part beside the direction in which an edge looks. */
function edgeLength([low, high]: ReturnType<typeof bounds>, edge: string): number {
  const across = Math.floor(["left", "right", "front", "back", "bottom", "top"].indexOf(edge) / 2);
  return Math.max(...([0, 1, 2] as const).map((i) => (i === across ? 0 : high[i] - low[i])));
}

function* fasteners({ record }: Model): Violations {
  // Keys are sawn from offcuts.
  const sold = record.fasteners.filter(({ kind }) => kind !== "key");
  const used = sold.flatMap((fastener) => [fastener.item, ...fastener.with]);
  for (const item of new Set(used)) {
    const need = count(used, item);
    const bought = record.purchases.filter((line) => line.section === "fasteners" && line.item === item);
    const counted = bought.every((line) => SINGLE.includes(line.content?.of ?? line.unit));
    if (bought.length === 0 || (counted && total(bought) < need))
      yield violation("purchases add up", item, `${need} are used, ${total(bought)} bought`);
  }
}

/** Wood sold by volume, in mm³. A board foot is 1 in × 12 in × 12 in. */
const VOLUMES = [
  { unit: "board feet", cubic: 144 * 25.4 ** 3 },
  { unit: "board foot", cubic: 144 * 25.4 ** 3 },
  { unit: "m³", cubic: 1e9 },
];

/** As many sheets and boards as are laid out and bought; of lumber by volume, at least what is in the blanks. */
function* boards({ record }: Model): Violations {
  const layouts = (kind: string) => record.layouts.filter((layout) => layout.kind === kind);
  const toBuy = (kind: string) => layouts(kind).filter((layout) => layout.source === "buy").length;
  const bought = (section: string) => record.purchases.filter((line) => line.section === section);
  const sheets = bought("sheets").reduce((so, line) => so + line.quantity, 0);
  if (sheets !== toBuy("sheet"))
    yield violation("purchases add up", "sheets", `${toBuy("sheet")} are laid out, ${sheets} bought`);
  const lumber = bought("lumber");
  const quantity = lumber.reduce((so, line) => so + line.quantity, 0);
  const measure = VOLUMES.find(({ unit }) => lumber.length > 0 && lumber.every((line) => line.unit === unit));
  if (measure) {
    const wood = layouts("board").flatMap(({ thickness, placements }) =>
      placements.map(({ width, length }) => thickness * width * length),
    );
    const need = wood.reduce((so, one) => so + one, 0) / measure.cubic;
    if (total(lumber) < need) yield violation("purchases add up", "lumber", `${need} ${measure.unit} in ${quantity}`);
  } else if (lumber.every((line) => !VOLUMES.some(({ unit }) => unit === line.unit)) && quantity !== toBuy("board"))
    yield violation("purchases add up", "boards", `${toBuy("board")} are laid out, ${quantity} bought`);
}
