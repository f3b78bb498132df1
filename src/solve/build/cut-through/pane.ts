/** A pane in its rabbet, cut across one of its edges: the bead over it, what fastens that, and how wide and deep all of it is. */
import { type Length, TOLERANCE } from "../../../units/length.ts";
import { absolute, less, subtract, toNumber } from "../../../units/rational.ts";
import type { Build, BuiltPart } from "../../build.ts";
import { featureBox, isSquare } from "../../design/shapes/feature-box.ts";
import { type AxisIndex, axisOf, extent, indexOf, middle, thirdAxis, triple, unit } from "../../design/space.ts";
import type { Box, Direction, Fastener, Point } from "../../design.ts";
import type { CutThrough, Sized } from "../model/cut-through.ts";
import { onwards } from "./bore.ts";

type Of = Pick<Build, "parts" | "joints">;

/** Of a bead that is driven on beside its pane by these; null for what else is driven. */
export function paneCut({ parts, joints }: Of, driven: readonly Fastener[]): CutThrough | null {
  const [first] = driven;
  const [bead, hold] = [first?.through[0], first?.into].map((id) => parts.find((part) => part.id === id));
  const pane = parts.find(({ id }) =>
    joints.some(({ method, parts: [a, b] }) => method === "glazed" && a === bead?.id && b === id),
  );
  if (!first || !bead || !hold || !pane || [bead, hold, pane].some(({ turned }) => turned)) return null;
  const along = indexOf(bead.axes.length);
  const deep = axisOf(first.direction);
  if (Math.abs(first.direction[deep]) !== 1 || along === deep) return null;
  const across = thirdAxis(along, deep);
  const rabbet = rabbetOf(hold, pane, along);
  if (!rabbet) return null;
  const own = driven.filter(({ through, into }) => through[0] === bead.id && into === hold.id);
  const half = middle(bead.body, along);
  const far = ({ head }: Fastener): Length => absolute(subtract(head.at[along], half));
  const near = own.reduce((best, each) => (less(far(each), far(best)) ? each : best), first);
  const lie: Lie = { bead, hold, pane, rabbet, near, along, deep, across };
  return {
    what: "a pane in its rabbet",
    ...{ axis: along, at: near.head.at[along], parts: [bead.id, hold.id, pane.id], hardware: [], bores: [] },
    rods: [
      {
        from: near.head.at,
        to: onwards(near.head.at, near.direction, near.length),
        diameter: near.rod,
        head: { ...near.head, sunk: near.head.seat !== "proud" },
        name: near.kind,
      },
    ],
    ...{ rounds: [], sizes: sizesOf(lie) },
  };
}

/** What is cut into the frame where the pane's edge lies. */
function rabbetOf({ features }: BuiltPart, { body }: BuiltPart, along: AxisIndex): Box | null {
  const meets = ({ low, high }: Box): boolean =>
    ([0, 1, 2] as const).every((i) => less(low[i], body.high[i]) && less(body.low[i], high[i]));
  const found = features.flatMap((each) =>
    each.kind === "rabbet" && "size" in each && isSquare(each) ? [featureBox(each)] : [],
  );
  // At a corner of the frame another rabbet meets the pane too: this one runs along it.
  return found.filter(meets).reduce<Box | null>((best, each) => {
    return best && !less(extent(best, along), extent(each, along)) ? best : each;
  }, null);
}

interface Lie {
  readonly bead: BuiltPart;
  readonly hold: BuiltPart;
  readonly pane: BuiltPart;
  readonly rabbet: Box;
  readonly near: Fastener;
  readonly along: AxisIndex;
  /** Which way it is driven; over the edge of the pane. */
  readonly deep: AxisIndex;
  readonly across: AxisIndex;
}

function sizesOf({ bead, hold, pane, rabbet, near, along, deep, across }: Lie): readonly Sized[] {
  const { direction, head } = near;
  const glassHigh = less(middle(bead.body, across), middle(pane.body, across));
  const inwards: Direction = unit(across, glassHigh ? 1 : -1);
  const outside: Direction = unit(deep, -direction[deep]);
  const ends = (box: Box, axis: AxisIndex, high: boolean): Length => (high ? box.high : box.low)[axis];
  const back = direction[deep] > 0;
  const at = (u: Length, v: Length): Point => triple((i) => (i === along ? head.at[i] : i === across ? u : v));
  // On the wood, and over the glass.
  const [outer, inner] = [ends(bead.body, across, !glassHigh), ends(bead.body, across, glassHigh)];
  const [top, foot] = [ends(bead.body, deep, !back), ends(bead.body, deep, back)];
  const [wall, rim] = [ends(rabbet, across, !glassHigh), ends(rabbet, across, glassHigh)];
  const floor = ends(rabbet, deep, back);
  const edge = ends(pane.body, across, !glassHigh);
  const level = (says: string, [u, w]: readonly [Length, Length], v: Length, off: Direction): Sized => ({
    says,
    size: absolute(subtract(w, u)),
    spans: [{ from: at(u, v), to: at(w, v), off }],
  });
  const upright = (says: string, [v, w]: readonly [Length, Length], u: Length, off: Direction): Sized => ({
    says,
    size: absolute(subtract(w, v)),
    spans: [{ from: at(u, v), to: at(u, w), off }],
  });
  // As the cut list calls them, whichever of its faces lies down.
  const isOnEdge = indexOf(bead.axes.thickness) === across;
  const [wide, thick] = isOnEdge ? ["thick", "wide"] : ["wide", "thick"];
  const isSquareBar = toNumber(absolute(subtract(extent(bead.body, across), extent(bead.body, deep)))) <= TOLERANCE;
  const lies = isSquareBar ? "" : `: with this face it lies down, on ${hold.mark} and ${pane.mark}`;
  const play = absolute(subtract(edge, wall));
  return [
    {
      ...level(
        `from the edge of ${bead.mark} on the wood to the middle of the ${near.kind}`,
        [outer, head.at[across]],
        top,
        outside,
      ),
      isPlace: true,
    },
    level(`how ${wide} ${bead.mark} is${lies}`, [outer, inner], top, outside),
    upright(`how ${thick} ${bead.mark} is`, [top, foot], inner, inwards),
    upright(
      `how deep the rabbet in ${hold.mark} is`,
      [ends(rabbet, deep, !back), floor],
      wall,
      unit(across, glassHigh ? -1 : 1),
    ),
    ...(toNumber(play) > TOLERANCE ? [level(`the play of ${pane.mark}`, [wall, edge], floor, direction)] : []),
    level("how wide the rabbet is", [wall, rim], floor, direction),
  ];
}
