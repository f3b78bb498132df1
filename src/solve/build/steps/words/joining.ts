import { type AxisIndex, faceOf, INDICES } from "../../../design/space.ts";
import type { Fastener, Joint } from "../../../design.ts";
import { listed, numberWord, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { gapText, placeText } from "./place.ts";

/** How the parts of a step go together: what to do, with what, from which side. */
export function joiningText(work: Work, moves: readonly Move[]): readonly string[] {
  const first = moves[0] as Move;
  const arriving = moves.flatMap((move) => move.arriving);
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const fasteners = moves.flatMap((move) => move.work.flatMap((w) => w.drives.map((drive) => drive.fastener)));
  const mates = matesOf(joints, arriving, first);
  return [
    ...(first.starts ? [`Begin with ${listed(work, first.present)}.`] : []),
    ...methodTexts(work, joints, arriving, mates),
    ...placeTexts(work, moves),
    ...pegTexts(work, joints),
    ...driveTexts(work, fasteners),
  ];
}

/** What the arriving parts are joined to. */
const matesOf = (joints: readonly Joint[], arriving: readonly string[], first: Move): readonly string[] => [
  ...new Set([
    ...joints.flatMap((joint) => joint.parts).filter((id) => !arriving.includes(id)),
    ...(first.starts ? first.present : []),
  ]),
];

function methodTexts(
  work: Work,
  joints: readonly Joint[],
  arriving: readonly string[],
  mates: readonly string[],
): readonly string[] {
  const these = listed(work, arriving);
  const those = listed(work, mates);
  const methods = [...new Set(joints.map((joint) => joint.method))];
  const of = (method: Joint["method"]): readonly Joint[] => joints.filter((joint) => joint.method === method);
  return methods.flatMap((method): readonly string[] => {
    const glued = of(method).some((joint) => joint.glue);
    switch (method) {
      case "mortise and tenon":
        return [
          ...(glued ? ["Brush glue into the mortises and thinly on the tenons."] : []),
          `Push ${these} and ${those} together until every shoulder is tight.`,
          ...(glued ? ["Clamp across each joint and wipe off what squeezes out."] : []),
        ];
      case "half lap":
        return [
          ...(glued ? ["Spread glue on the laps."] : []),
          `Press ${these} and ${those} together at their laps until the faces are flush.`,
          ...(glued ? ["Clamp each lap, with a piece of scrap under the clamp."] : []),
        ];
      case "dado":
      case "rabbet":
        return [
          ...(glued ? [`Brush glue into the ${method}s.`] : []),
          `Set ${these} into the ${method}s of ${listed(work, housing(of(method), arriving))}${glued ? " and clamp" : ""}.`,
        ];
      case "groove":
        return [
          `Slide ${panels(work, of(method))} into the grooves${glued ? ", with glue" : ", without glue, so that it can move"}.`,
        ];
      case "dowels":
        return [
          `${glued ? "Put glue in the dowel holes and tap in" : "Tap in"} the dowels. Push ${these} and ${those} together${glued ? " and clamp" : ""}.`,
        ];
      case "glue":
        return [`Spread glue where they meet. Set ${these} on ${those} and clamp.`];
      default:
        return methods.length === 1 ? [`Set ${these} against ${those}.`] : [];
    }
  });
}

const housing = (joints: readonly Joint[], arriving: readonly string[]): readonly string[] => [
  ...new Set(joints.map((joint) => joint.parts.find((id) => !arriving.includes(id)) ?? joint.parts[1])),
];

const panels = (work: Work, joints: readonly Joint[]): string =>
  listed(work, [...new Set(joints.map((joint) => joint.parts[0]))]);

/** Where parts go that nothing else locates. */
function placeTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const first = moves[0] as Move;
  const sentence = placeText(work, first);
  const gap = gapText(work, moves);
  return [...(sentence ? [sentence] : []), ...(gap ? [gap] : [])];
}

/** Dowels come with their part. */
function pegTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const pegs = joints
    .flatMap((joint) => work.plan.chosen.get(joint.id)?.fasteners ?? [])
    .filter((f) => f.travelsWith !== null);
  return counted(pegs).map(({ item, n }) => `Use ${numberWord(n)} ${item}${n === 1 ? "" : "s"}.`);
}

const counted = (fasteners: readonly Fastener[]): readonly { item: string; n: number; list: readonly Fastener[] }[] => {
  const items = new Map<string, Fastener[]>();
  for (const fastener of fasteners) items.set(fastener.item, [...(items.get(fastener.item) ?? []), fastener]);
  return [...items].map(([item, list]) => ({ item, n: list.length, list }));
};

function driveTexts(work: Work, fasteners: readonly Fastener[]): readonly string[] {
  return counted(fasteners).flatMap(({ item, n, list }) => {
    const through = listed(work, [...new Set(list.flatMap((f) => f.through))]);
    const into = listed(work, [...new Set(list.map((f) => f.into))]);
    const sides = [...new Set(list.map(sideOf))];
    const nails = list[0]?.kind === "nail" || list[0]?.kind === "brad";
    const pilots = work.plan.holes.filter((hole) => !hole.atBench && list.some((f) => f.id === hole.for));
    const pilot = pilots[0]?.stages[0];
    return [
      ...(pilot
        ? [
            `Drill ${work.print(pilot.diameter)} pilot holes ${work.print(pilot.depth)} deep into ${into}, through the holes that are there.`,
          ]
        : []),
      `${nails ? "Drive in" : "Drive"} ${numberWord(n)} ${itemOf(item, n)} from ${series(sides)}, through ${through} into ${into}.`,
    ];
  });
}

/** "wood screws, countersunk head" of more than one. */
const itemOf = (item: string, n: number): string => (n === 1 ? item : item.replace(/(screw|nail|brad)\b/, "$1s"));

/** The side of the piece that a head is driven from. */
function sideOf({ direction }: Fastener): string {
  const axis = INDICES.reduce<AxisIndex>(
    (best, i) => (Math.abs(direction[i] as number) > Math.abs(direction[best] as number) ? i : best),
    0,
  );
  const face = faceOf(axis, (direction[axis] as number) < 0);
  return face === "top" ? "above" : face === "bottom" ? "below" : `the ${face}`;
}
