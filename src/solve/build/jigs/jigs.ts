import { type Length, millimetres } from "../../../units/length.ts";
import { add, compare, equal, less, max, min, subtract, ZERO } from "../../../units/rational.ts";
import type { Layout } from "../../build.ts";
import { faceAxis, otherAxes } from "../../design/space.ts";
import type { Design, Fitting, Hole, Part } from "../../design.ts";
import type { Jig } from "../model/jig.ts";
import { drillingStrips } from "./strips.ts";

/** Wood beyond the outermost hole of a template. Common practice, no source. */
const BEYOND = millimetres(25);
const GRIPS: ReadonlySet<string> = new Set(["knob", "pull"]);

/** A template for each kind of knob or pull of which several sit alike: laid into a corner, its holes are where they belong; strips for rows of shelf pins. */
export function jigsOf({
  design,
  holes,
  layouts,
}: {
  readonly design: Design;
  readonly holes: readonly Hole[];
  readonly layouts: readonly Layout[];
}): readonly Jig[] {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const patterns = new Map<string, Omit<Jig, "id" | "from">>();
  for (const fitting of design.fittings) {
    const part = parts.get(fitting.part);
    const kind = fitting.hardware[0]?.item.kind ?? "";
    if (!part || part.turned || !GRIPS.has(kind)) continue;
    const jig = templateFor(fitting, part);
    const key = `${fitting.hardware[0]?.item.name} ${jig.holes.map(({ x, y }) => `${x.n}/${x.d} ${y.n}/${y.d}`).join()}`;
    const before = patterns.get(key);
    patterns.set(key, before ? { ...before, parts: [...before.parts, part.id] } : jig);
  }
  const several = [...patterns.values()].filter((jig) => jig.parts.length > 1);
  const all = [...several, ...drillingStrips(design, holes)];
  return all.map((jig, i) => ({ ...jig, id: `template ${i + 1}`, from: offcutFor(jig, layouts) }));
}

/** From the nearer edges of the part, so that handed doors share one template, turned over. */
function templateFor(fitting: Fitting, { id, body }: Part): Omit<Jig, "id" | "from"> {
  const [a, b] = otherAxes(faceAxis(fitting.face));
  const own = fitting.holes.filter(({ part }) => part === id);
  const fromEdge = (axis: typeof a): ((hole: Hole) => Length) => {
    const low = own.map(({ at }) => subtract(at[axis], body.low[axis])).reduce(min);
    const high = own.map(({ at }) => subtract(body.high[axis], at[axis])).reduce(min);
    return ({ at }) =>
      compare(low, high) <= 0 ? subtract(at[axis], body.low[axis]) : subtract(body.high[axis], at[axis]);
  };
  const [x, y] = [fromEdge(a), fromEdge(b)];
  const holes = own.map((hole) => ({ x: x(hole), y: y(hole), diameter: hole.stages[0]?.diameter ?? ZERO }));
  const far = (of: (hole: (typeof holes)[number]) => Length): Length => add(holes.map(of).reduce(max, ZERO), BEYOND);
  const sorted = holes.toSorted((p, q) => (equal(p.x, q.x) ? compare(p.y, q.y) : compare(p.x, q.x)));
  const what = `the ${fitting.hardware[0]?.item.kind ?? ""}s`;
  const bores = own[0]?.kind ?? "knob";
  return {
    what,
    parts: [id],
    bores,
    laid: "in the corner",
    width: far((hole) => hole.x),
    length: far((hole) => hole.y),
    holes: sorted,
  };
}

/** The first offcut, in the order of the layouts, that is large enough either way. */
function offcutFor({ width, length }: Pick<Jig, "width" | "length">, layouts: readonly Layout[]): string | null {
  const holds = (w: Length, l: Length): boolean => !less(w, width) && !less(l, length);
  const found = layouts.find(({ offcuts }) =>
    offcuts.some((each) => holds(each.width, each.length) || holds(each.length, each.width)),
  );
  return found?.stock ?? null;
}
