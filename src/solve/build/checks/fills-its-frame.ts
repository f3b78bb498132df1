import { fillsItsFrame } from "../../../findings/rules/fills-its-frame.ts";
import { contact, exactBounds, type Vec } from "../../../geometry/index.ts";
import { inches, millimetres, toMillimetres } from "../../../units/length.ts";
import { subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, indexOf } from "../../design/space.ts";
import type { Change } from "../../design/use/seasons.ts";
import { USUAL_SITE } from "../../design/use/site.ts";
import type { Design, Part, Site, Stock } from "../../design.ts";
import { once } from "../once.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Frame, frameMovement, framesOf, strain, TAKEN } from "./wood/restraint.ts";

/** Of a normal: it lies along the axis. */
const STRAIGHT = 0.999;

/**
 * Wide boards do not fill the room between two parts that other parts hold apart: when they swell they push those open. Boards that lie edge to edge
 * swell together.
 */
export const fillsItsFrameRule: Rule = (checked) => {
  const { design } = checked;
  const frames = framesOf(checked);
  const touched = touching(design);
  return design.parts.flatMap((part) => {
    const frame = frames[indexOf(part.axes.width)] as Frame;
    if (frame.stock(part).movement === undefined || part.turned) return [];
    return judge(rowFrom(part, frame, touched), checked);
  });
};

/** One board, or several of a stock edge to edge, and what touches the outer edges. */
interface Row {
  readonly boards: readonly Part[];
  readonly frame: Frame;
  readonly before: readonly Part[];
  readonly behind: readonly Part[];
}

/** From its first board; what begins at another board is no row of its own. */
function rowFrom(first: Part, frame: Frame, touched: Touched): Row {
  const isNext = ({ stock, turned, axes }: Part): boolean =>
    stock === first.stock && !turned && indexOf(axes.width) === frame.axis;
  const boards = [first];
  let behind = beside(first, frame.axis, 1, touched);
  const before = beside(first, frame.axis, -1, touched);
  for (let [next] = behind.filter(isNext); next && behind.length === 1; [next] = behind.filter(isNext)) {
    boards.push(next);
    behind = beside(next, frame.axis, 1, touched);
  }
  return { boards, frame, before: before.some(isNext) ? [] : before, behind };
}

function judge({ boards, frame, before, behind }: Row, { design, print }: Checked): readonly Verdict[] {
  const { axis } = frame;
  const [first, last] = [boards[0] as Part, boards.at(-1) as Part];
  const stock = frame.stock(first);
  const site = design.site ?? USUAL_SITE;
  const change = swelling(stock, site);
  const free = boards.reduce(
    (so, board) => so + widthOf(board, axis) * strain(board, frame.stock(board), axis, change),
    0,
  );
  // One board that glue or screws hold at both is judged by those.
  const held = new Set(
    boards.length > 1 ? [] : frame.anchors.flatMap(({ joint: { parts } }) => (parts.includes(first.id) ? parts : [])),
  );
  const pairs = before.flatMap((one) => {
    const give = frameMovement(first, { to: one.id, at: toMillimetres(first.body.low[axis]) }, frame, change);
    return (
      behind
        // What lies in a groove of the board touches both sides of that, and pushes nothing.
        .filter((other) => other.id !== one.id && !(held.has(one.id) && held.has(other.id)))
        .map((other) => ({ one, other, by: free - give({ to: other.id, at: toMillimetres(last.body.high[axis]) }) }))
    );
  });
  const [worst] = pairs.filter(({ by }) => Number.isFinite(by) && by > 0).toSorted((a, b) => b.by - a.by);
  if (!worst) return [];
  const check = {
    ...{ rule: "fills-its-frame", subject: first.id, value: worst.by, limit: TAKEN, unit: "mm" },
    basis: `Wood Handbook FPL-GTR-190, Eq. 13-2 and 13-3; coefficient: ${stock.movement?.basis}; moisture: ${site.basis}; limit: common practice, no source`,
  };
  if (worst.by <= TAKEN) return [{ check: { ...check, verdict: "holds" } }];
  const finding = fillsItsFrame(first.at, {
    parts: boards.map(({ id }) => id),
    between: [worst.one.id, worst.other.id],
    swells: print(millimetres(Math.round(worst.by * 1000), 1000)),
    from: change.from,
    until: change.to,
    place: site.name,
    limit: print(millimetres(Math.round(TAKEN * 1000), 1000)),
    room: print(roundTo(millimetres(Math.ceil(worst.by * 1000), 1000), STEP[design.units], "up")),
  });
  return [{ check: { ...check, verdict: "warns" }, finding }];
}

/** In which the room beside it is told. */
const STEP = { inch: inches(1, 16), mm: millimetres(1) } as const;

/** From the day on which it was fitted, which may be in the driest season, to the dampest. */
const swelling = ({ moisture }: Stock, { driest, dampest }: Site): Change => ({
  from: moisture ?? driest,
  to: dampest,
});

/** Its tongues are wood too. Millimetres. */
function widthOf({ solid }: Part, axis: AxisIndex): number {
  const { low, high } = exactBounds(solid);
  return toMillimetres(subtract(high[axis], low[axis]));
}

/** What touches a part, and which ways it lies from there. */
type Touched = (part: Part) => readonly { readonly other: Part; readonly normals: readonly Vec[] }[];

/** Of the edges of notches too; what a tenon of a part goes into holds that anyhow. */
function touching({ parts, joints }: Pick<Design, "parts" | "joints">): Touched {
  const mortised = new Set(joints.flatMap(({ method, parts: own }) => (method.endsWith("tenon") ? [own.join()] : [])));
  return once((part) =>
    parts
      .filter(({ id }) => id !== part.id && !mortised.has([id, part.id].join()) && !mortised.has([part.id, id].join()))
      .map((other) => ({ other, normals: contact(part.solid, other.solid).map(({ normal }) => normal) })),
  );
}

/** What touches a board on one side of it along an axis. */
const beside = (board: Part, axis: AxisIndex, out: 1 | -1, touched: Touched): readonly Part[] =>
  touched(board).flatMap(({ other, normals }) =>
    normals.some((normal) => normal[axis] * out > STRAIGHT) ? [other] : [],
  );
