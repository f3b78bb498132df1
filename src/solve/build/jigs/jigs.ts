import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, equal, less, max, min, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Layout } from "../../build.ts";
import { isGluedUp } from "../../design/making/plain.ts";
import { faceAxis, otherAxes } from "../../design/space.ts";
import type { Design, Fitting, Hardware, Hole, Part } from "../../design.ts";
import type { Jig, JigDraft } from "../model/jig.ts";
import { spacers } from "./spacers.ts";
import { drillingStrips } from "./strips.ts";

/** Wood beyond the outermost hole of a template, at least; its size is even. Common practice, no source. */
const BEYOND = millimetres(25);
const EVEN = { inch: inches(1, 4), mm: millimetres(5) } as const;
/** No more is wanted to guide a drill or to lay into a corner. Common practice, no source. */
const THIN = millimetres(20);
/** Fewer holes are set out by their measures sooner than a template is made. Common practice, no source. */
const LEAST = 3;
const NO_USES: Jig["uses"] = { holes: [], features: [], parts: [] };
const GRIPS: ReadonlySet<string> = new Set(["knob", "pull"]);

/**
 * A template for each kind of knob or pull of which several sit alike: laid into a corner, its holes are where they belong; strips for rows
 * of shelf pins and of the screws of slides; spacers for even gaps.
 */
export function jigsOf({
  design,
  holes,
  hardware,
  layouts,
  mark,
}: {
  readonly design: Design;
  readonly holes: readonly Hole[];
  readonly hardware: readonly Hardware[];
  readonly layouts: readonly Layout[];
  readonly mark: (id: string) => string;
}): readonly Jig[] {
  const all = [...templates(design, holes), ...drillingStrips(design, holes, hardware), ...spacers(design, mark)];
  const thin = new Set(design.stock.filter(({ thickness }) => !less(THIN, thickness)).map(({ name }) => name));
  // What is all glued up has its thickness only when the panels have theirs.
  const late = new Set(
    design.stock
      .filter(({ name, form }) => form === "board" && design.parts.every((p) => p.stock !== name || isGluedUp(p)))
      .map(({ name }) => name),
  );
  const worth = ({ stock }: Layout): number => (late.has(stock) ? 0 : 2) + (thin.has(stock) ? 1 : 0);
  const thinFirst = [...layouts].sort((a, b) => worth(b) - worth(a));
  const thickness = new Map(design.stock.map((stock) => [stock.name, stock.thickness]));
  return all.map((jig, i) => {
    const from = offcutFor(jig, thinFirst);
    return { ...jig, id: `jig ${i + 1}`, from, thickness: (from !== null && thickness.get(from)) || null };
  });
}

function templates(design: Design, holes: readonly Hole[]): readonly JigDraft[] {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const patterns = new Map<string, { jig: JigDraft; count: number; corner: string }>();
  for (const fitting of design.fittings) {
    const part = parts.get(fitting.part);
    const kind = fitting.hardware[0]?.item.kind ?? "";
    if (!part || part.turned || !GRIPS.has(kind)) continue;
    const jig = { ...templateFor(fitting, part, EVEN[design.units === "inch" ? "inch" : "mm"]), uses: NO_USES };
    const key = `${fitting.hardware[0]?.item.name} ${jig.holes.map(({ x, y }) => `${x.n}/${x.d} ${y.n}/${y.d}`).join()}`;
    const before = patterns.get(key);
    const own = fitting.hardware.map(({ id }) => id);
    const bored = holes.flatMap((hole, i) =>
      hole.part === part.id && hole.for !== null && own.includes(hole.for) ? [i] : [],
    );
    const uses = { holes: [...(before?.jig.uses.holes ?? []), ...bored], features: [], parts: [] };
    const corner = cornerOf(fitting, part);
    const handed = before !== undefined && (before.jig.handed === true || before.corner !== corner);
    const merged = { ...(before?.jig ?? jig), uses, ...(handed && { handed: true as const }) };
    patterns.set(key, { jig: merged, count: (before?.count ?? 0) + 1, corner: before?.corner ?? corner });
  }
  return [...patterns.values()]
    .filter(({ count, jig }) => count > 1 && jig.uses.holes.length >= LEAST)
    .map(({ jig }) => jig);
}

/** Which edges are the nearer ones; a hole in the middle has none. */
function cornerOf(fitting: Fitting, { id, blank }: Part): string {
  const own = fitting.holes.filter(({ part }) => part === id);
  return otherAxes(faceAxis(fitting.face))
    .map((axis) => {
      const low = own.map(({ at }) => subtract(at[axis], blank.low[axis])).reduce(min);
      const high = own.map(({ at }) => subtract(blank.high[axis], at[axis])).reduce(min);
      return Math.sign(compare(low, high));
    })
    .join();
}

/** From the nearer edges of the part, so that handed doors share one template, turned over. */
function templateFor(fitting: Fitting, { id, blank }: Part, even: Length): Omit<JigDraft, "uses"> {
  const [a, b] = otherAxes(faceAxis(fitting.face));
  const own = fitting.holes.filter(({ part }) => part === id);
  const fromEdge = (axis: typeof a): ((hole: Hole) => Length) => {
    const low = own.map(({ at }) => subtract(at[axis], blank.low[axis])).reduce(min);
    const high = own.map(({ at }) => subtract(blank.high[axis], at[axis])).reduce(min);
    return ({ at }) =>
      compare(low, high) <= 0 ? subtract(at[axis], blank.low[axis]) : subtract(blank.high[axis], at[axis]);
  };
  const [x, y] = [fromEdge(a), fromEdge(b)];
  const holes = own.map((hole) => ({ x: x(hole), y: y(hole), diameter: hole.stages[0]?.diameter ?? ZERO }));
  const far = (of: (hole: (typeof holes)[number]) => Length): Length =>
    roundTo(add(holes.map(of).reduce(max, ZERO), BEYOND), even, "up");
  const sorted = holes.toSorted((p, q) => (equal(p.x, q.x) ? compare(p.y, q.y) : compare(p.x, q.x)));
  const what = `the ${fitting.hardware[0]?.item.kind ?? ""}s`;
  return {
    what,
    laid: "in the corner",
    count: 1,
    width: far((hole) => hole.x),
    length: far((hole) => hole.y),
    holes: sorted,
  };
}

/** The first offcut, in this order, that is large enough either way. */
function offcutFor({ width, length }: Pick<Jig, "width" | "length">, layouts: readonly Layout[]): string | null {
  const holds = (w: Length, l: Length): boolean => !less(w, width) && !less(l, length);
  const found = layouts.find(({ offcuts }) =>
    offcuts.some((each) => holds(each.width, each.length) || holds(each.length, each.width)),
  );
  return found?.stock ?? null;
}
