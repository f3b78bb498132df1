/** Promise 2: what is bought is enough and is used. */
import { actionsOf, count, type Model } from "./model.ts";
import type { Purchase } from "./record.ts";
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
  yield* fasteners(model);
  yield* boards(model);
}

/** Units in which one is one; of a box or a pound nobody can say how many are in it. */
const SINGLE = ["", "each", "piece", "pieces"];
const isSingle = ({ unit, item }: Purchase): boolean => SINGLE.includes(unit) || item.endsWith(unit);
const enough = (bought: readonly Purchase[], need: number): boolean =>
  bought.some((line) => !isSingle(line)) || bought.reduce((so, line) => so + line.quantity + line.onHand, 0) >= need;

function* fasteners({ record }: Model): Violations {
  for (const item of new Set(record.fasteners.map((fastener) => fastener.item))) {
    const need = record.fasteners.filter((fastener) => fastener.item === item).length;
    const bought = record.purchases.filter((line) => line.section === "fasteners" && line.item === item);
    if (bought.length === 0 || !enough(bought, need))
      yield violation("purchases add up", item, `${need} are used, ${bought.map((line) => line.quantity)} bought`);
  }
}

/** As many sheets as there are layouts of bought sheets; of boards at least as many, where they are counted singly. */
function* boards({ record }: Model): Violations {
  const layouts = (kind: string) => record.layouts.filter((l) => l.kind === kind && l.source === "buy").length;
  const bought = (section: string) => record.purchases.filter((line) => line.section === section);
  const sheets = bought("sheets").reduce((so, line) => so + line.quantity, 0);
  if (sheets !== layouts("sheet"))
    yield violation("purchases add up", "sheets", `${layouts("sheet")} are laid out, ${sheets} bought`);
  const singly = bought("lumber").every((line) => /^(|each|boards?|pieces?|lengths?)$/.test(line.unit));
  const lumber = bought("lumber").reduce((so, line) => so + line.quantity, 0);
  if (singly && lumber !== layouts("board"))
    yield violation("purchases add up", "boards", `${layouts("board")} are laid out, ${lumber} bought`);
}
