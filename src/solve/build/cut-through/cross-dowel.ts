/** A bolt and the cross dowel that it is turned into, cut along both: how deep each is bored, and where they meet. */
import { isSame } from "../../../units/length.ts";
import { absolute, add, subtract } from "../../../units/rational.ts";
import type { Build, BuiltPart } from "../../build.ts";
import { INCH_BOLTS, METRIC_BOLTS } from "../../design/fastening/hardware.ts";
import { axisOf, thirdAxis, triple, unit } from "../../design/space.ts";
import type { Direction, Fastener, Hole, Point } from "../../design.ts";
import type { CutThrough, Rod, Sized } from "../model/cut-through.ts";
import { deepest, onwards } from "./bore.ts";

type Of = Pick<Build, "parts" | "holes">;

/** Null for a bolt without one. */
export function crossDowelCut({ parts, holes }: Of, bolt: Fastener): CutThrough | null {
  const own = holes.filter((hole) => hole.for === bolt.id);
  const barrel = own.find(({ kind }) => kind === "nut");
  const [passed, bored] = [bolt.through[0], bolt.into].map((id) =>
    own.find((hole) => hole.part === id && hole.kind === "bolt"),
  );
  const hold = parts.find(({ id }) => id === bolt.into);
  const head = parts.find(({ id }) => id === bolt.through[0]);
  if (!bolt.nut || !barrel || !passed || !bored || !hold || !head || hold.turned || head.turned) return null;
  const [along, cross] = [axisOf(bored.direction), axisOf(barrel.direction)];
  if (along === cross) return null;
  const toAxis = absolute(subtract(bored.at[cross], barrel.at[cross]));
  const deep = deepest(barrel);
  const from = onwards(barrel.at, barrel.direction, subtract(add(toAxis, toAxis), deep));
  const { direction } = bored;
  return {
    what: "a bolt and its cross dowel",
    ...{
      axis: thirdAxis(along, cross),
      at: bored.at[thirdAxis(along, cross)],
      parts: [head.id, hold.id],
      hardware: [],
    },
    bores: [passed, bored, barrel],
    rods: [
      { from, to: onwards(barrel.at, barrel.direction, deep), diameter: bolt.nut.diameter, name: "cross dowel" },
      ...washerOf(bolt),
      {
        from: bolt.head.at,
        to: onwards(bolt.head.at, direction, bolt.length),
        diameter: bolt.rod,
        head: bolt.head,
        name: "bolt",
      },
    ],
    rounds: [],
    sizes: sizesOf({ passed, bored, barrel, hold, head }),
  };
}

/** Between its head and the wood. */
function washerOf({ head, direction, rod }: Fastener): readonly Rod[] {
  const size = [...INCH_BOLTS, ...METRIC_BOLTS].find((each) => isSame(each.rod, rod));
  if (!size) return [];
  const { thick, diameter } = size.washer;
  return [{ from: head.at, to: onwards(head.at, direction, thick), diameter }];
}

interface Bores {
  readonly passed: Hole;
  readonly bored: Hole;
  readonly barrel: Hole;
  readonly hold: BuiltPart;
  readonly head: BuiltPart;
}

function sizesOf({ passed, bored, barrel, hold, head }: Bores): readonly Sized[] {
  const [along, cross] = [axisOf(bored.direction), axisOf(barrel.direction)];
  const back: Direction = unit(cross, -barrel.direction[cross]);
  const skin = (at: Point): Point => triple((i) => (i === cross ? barrel.at[i] : at[i]));
  const end = skin(bored.at);
  const far: Direction = unit(cross, barrel.direction[cross]);
  const bottom = onwards(bored.at, bored.direction, deepest(bored));
  const sunk = passed.stages.length > 1 ? passed.stages[0]?.depth : undefined;
  return [
    {
      says: `from the end of ${hold.mark} to the middle of the cross dowel`,
      size: absolute(subtract(barrel.at[along], bored.at[along])),
      spans: [{ from: end, to: barrel.at, off: back }],
    },
    {
      says: "how deep the cross dowel is bored",
      size: deepest(barrel),
      spans: [{ from: barrel.at, to: onwards(barrel.at, barrel.direction, deepest(barrel)), off: bored.direction }],
    },
    {
      says: `how deep the bolt is bored into the end of ${hold.mark}`,
      size: deepest(bored),
      spans: [{ from: bored.at, to: bottom, off: far }],
    },
    ...(sunk
      ? [
          {
            says: `how deep its head is sunk into ${head.mark}`,
            size: sunk,
            spans: [{ from: passed.at, to: onwards(passed.at, passed.direction, sunk), off: far }],
          },
        ]
      : []),
  ];
}
