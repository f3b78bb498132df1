import { fillsItsFrame } from "../../../findings/rules/fills-its-frame.ts";
import { contact, exactBounds, once, type Vec } from "../../../geometry/index.ts";
import { inches, millimetres, toMillimetres } from "../../../units/length.ts";
import { subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { NAILS } from "../../design/fastening/catalogue.ts";
import { type AxisIndex, indexOf } from "../../design/space.ts";
import type { Change } from "../../design/use/seasons.ts";
import { USUAL_SITE } from "../../design/use/site.ts";
import type { Design, Part, Site, Stock } from "../../design.ts";
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

/** What keeps an edge of a board from giving way, and where that is along its width, in millimetres. */
interface Stop {
  readonly part: Part;
  readonly at: number;
  /** By nails: they bend a little, and let wood move across them within what joints take. */
  readonly nailed?: true;
}

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

function judge({ boards, frame, before, behind }: Row, checked: Checked): readonly Verdict[] {
  const { design, print } = checked;
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
  const [low, high] = [toMillimetres(first.body.low[axis]), toMillimetres(last.body.high[axis])];
  const stops = (touching: readonly Part[], at: number): readonly Stop[] => touching.map((part) => ({ part, at }));
  // Where it lies against something at one edge only, what its nails hold is on the other side.
  const nails = boards.length > 1 || before.length > 0 === behind.length > 0 ? [] : nailedAt(first, axis, checked);
  const [ahead, after] = [
    before.length > 0 ? stops(before, low) : nails,
    behind.length > 0 ? stops(behind, high) : nails,
  ];
  const pairs = ahead.flatMap((one) => {
    const give = frameMovement(first, { to: one.part.id, at: one.at }, frame, change);
    return (
      after
        // What lies in a groove of the board touches both sides of that, and pushes nothing.
        .filter(({ part: { id } }) => id !== one.part.id && !(held.has(one.part.id) && held.has(id)))
        .map((other) => ({
          // What it lies against before what its nails hold.
          ...(one.nailed ? { one: other.part, other: one.part } : { one: one.part, other: other.part }),
          nailed: (one.nailed ?? other.nailed) === true,
          by: ((other.at - one.at) / (high - low)) * free - give({ to: other.part.id, at: other.at }),
        }))
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
    nailed: worst.nailed,
    swells: print(millimetres(Math.round(worst.by * 1000), 1000)),
    from: change.from,
    until: change.to,
    place: site.name,
    limit: print(millimetres(Math.round(TAKEN * 1000), 1000)),
    room: print(roundTo(millimetres(Math.ceil(worst.by * 1000), 1000), STEP[design.units], "up")),
  });
  return [{ check: { ...check, verdict: "warns" }, finding }];
}

/** The outermost nails across the width of a board, joint by joint, but those of glued joints. */
const nailedAt = ({ id }: Part, axis: AxisIndex, { design, fasteners }: Checked): readonly Stop[] =>
  fasteners.flatMap(({ kind, joint, direction, head, through, into }): readonly Stop[] => {
    const own = design.joints.find((each) => each.id === joint);
    const other = design.parts.find((part) => part.id !== id && [...through, into].includes(part.id));
    const holds = NAILS.has(kind) && own?.parts.includes(id) === true && !own.glue && Math.abs(direction[axis]) < 0.5;
    return holds && other ? [{ part: other, at: toMillimetres(head.at[axis]), nailed: true }] : [];
  });

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
