import { roundTo } from "../../../../units/round.ts";
import { type AxisIndex, faceOf, INDICES } from "../../../design/space.ts";
import type { Direction, Fastener, Joint } from "../../../design.ts";
import { capital, listed, numberWord, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { METHOD_WORDS } from "./methods.ts";
import { placeTexts } from "./place.ts";

/** What the sentences about one step need. */
interface Scene {
  readonly work: Work;
  readonly joints: readonly Joint[];
  readonly arriving: readonly string[];
  /** A body that arrives as a whole, by name. */
  readonly built: string | null;
}

/** How the parts of a step go together: what to do, with what, from which side. `built` names a body that arrives as a whole. */
export function joiningText(
  work: Work,
  moves: readonly Move[],
  up: Direction,
  built: string | null,
): readonly string[] {
  const arriving = moves.flatMap((move) => move.arriving);
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  return [
    ...methodTexts({ work, joints, arriving, built }),
    ...placeTexts(work, moves),
    ...pegTexts(work, joints),
    ...driveTexts(
      work,
      drives.map(({ fastener }) => fastener),
      up,
    ),
  ];
}

/** The parts of some joints: those that arrive (or the body they arrive in), and those that are there. */
function sidesOf({ work, arriving, built }: Scene, joints: readonly Joint[]) {
  const all = [...new Set(joints.flatMap((joint) => joint.parts))];
  const coming = all.filter((id) => arriving.includes(id));
  const there = all.filter((id) => !arriving.includes(id));
  const these = built ?? listed(work, coming);
  const everything = built ? `${built} and ${listed(work, there)}` : listed(work, [...there, ...coming]);
  return { these, those: listed(work, there), everything };
}

function methodTexts(scene: Scene): readonly string[] {
  const methods = [...new Set(scene.joints.map((joint) => joint.method))].sort(
    (a, b) => Number(b === "groove") - Number(a === "groove"),
  );
  return methods.flatMap((method): readonly string[] => {
    const own = scene.joints.filter((joint) => joint.method === method);
    const glued = own.some((joint) => joint.glue);
    const sides = sidesOf(scene, own);
    if (method === "groove") return [grooveText(scene, own, glued)];
    const words = METHOD_WORDS[method];
    const wedged = own.some((joint) => joint.wedged);
    if (words) return words({ ...sides, wedged, glued, mates: housings(scene, own), method });
    return [
      ...(glued ? ["Spread glue where they meet."] : []),
      ...(methods.length === 1 ? [`Set ${sides.these} against ${sides.those}.`] : []),
    ];
  });
}

/** A panel goes into grooves, or a grooved part goes over a panel that is there. */
function grooveText({ work, arriving, joints }: Scene, own: readonly Joint[], glued: boolean): string {
  const panels = [...new Set(own.map((joint) => joint.parts[0]))];
  const how = glued ? "with glue" : "without glue, so that it can move";
  const when = own.length < joints.length ? ", before the frame is closed" : "";
  if (panels.every((id) => arriving.includes(id)))
    return `Slide ${listed(work, panels)} into the grooves${when}, ${how}.`;
  return `Let the edge of ${listed(work, panels)} go into its groove, ${how}.`;
}

const housings = ({ work, arriving }: Scene, own: readonly Joint[]): string =>
  listed(work, [...new Set(own.map((joint) => joint.parts.find((id) => !arriving.includes(id)) ?? joint.parts[1]))]);

/** Dowels come with their part. */
function pegTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const all = joints.flatMap((joint) => work.plan.chosen.get(joint.id)?.fasteners ?? []);
  return counted(all.filter((fastener) => fastener.travelsWith !== null)).map(
    ({ item, list }) => `Use ${countText(item, list.length)}.`,
  );
}

const counted = (fasteners: readonly Fastener[]): readonly { item: string; list: readonly Fastener[] }[] => {
  const items = new Map<string, Fastener[]>();
  for (const fastener of fasteners) items.set(fastener.item, [...(items.get(fastener.item) ?? []), fastener]);
  return [...items].map(([item, list]) => ({ item, list }));
};

/** "4 wood screws #8 × 2 1/2 in, countersunk head" */
const countText = (item: string, n: number): string =>
  n === 1
    ? `1 ${item}`
    : `${n} ${item.replace(/^(wood screw|pocket screw|nail|brad|dowel|peg|spline|loose tenon|biscuit|key)\b/, "$1s")}`;

function driveTexts(work: Work, fasteners: readonly Fastener[], up: Direction): readonly string[] {
  return counted(fasteners).flatMap(({ item, list }) => {
    if (list[0]?.kind === "key") return keyTexts(work, item, list);
    const through = listed(work, [...new Set(list.flatMap((f) => f.through))]);
    const into = listed(work, [...new Set(list.map((f) => f.into))]);
    const sides = series([...new Set(list.map((fastener) => sideOf(fastener, up)))]);
    const joints = new Set(list.map((f) => f.joint)).size;
    const each = list.length / joints;
    const share = joints > 1 && Number.isInteger(each) ? `, ${numberWord(each)} where each two parts meet` : "";
    const pilot = work.plan.holes.find((hole) => !hole.atBench && list.some((f) => f.id === hole.for))?.stages[0];
    return [
      ...(pilot
        ? [
            `Through the holes that are there, drill ${work.print(pilot.diameter)} pilot holes ${work.print(pilot.depth)} deep into ${into}.`,
          ]
        : []),
      capital(`drive ${countText(item, list.length)} from ${sides}, through ${through} into ${into}${share}.`),
    ];
  });
}

/** Keys are let in across a corner when it is dry. */
function keyTexts({ print, part, design }: Work, item: string, list: readonly Fastener[]): readonly string[] {
  const slots = list.flatMap(({ joint, through }) =>
    part(through[0] as string).features.filter((each) => each.for === joint && each.kind === "slot"),
  );
  const slot = slots[0];
  const size =
    slot && "size" in slot
      ? `${print(slot.size[1])} wide and ${print(roundTo(slot.size[2], design.precision))} deep `
      : "";
  const joints = new Set(list.map((fastener) => fastener.joint)).size;
  const each = list.length === joints ? "a slot" : `${numberWord(list.length / joints)} slots`;
  return [
    `When the glue is dry, saw ${each} ${size}across the outside of ${joints > 1 ? "each corner" : "the corner"}, square to the edge and evenly spaced.`,
    `Glue in ${countText(item, list.length)}, and trim flush when dry.`,
  ];
}

/** Where a head is driven from: as the work lies on the bench, else by the side of the finished piece. */
function sideOf({ direction }: Fastener, up: Direction): string {
  const upwards = INDICES.reduce<number>((so, i) => so + direction[i] * up[i], 0);
  if (Math.abs(upwards) > 0.7) return upwards < 0 ? "above" : "below";
  const size = (i: AxisIndex): number => Math.abs(direction[i]);
  const axis = INDICES.reduce<AxisIndex>((best, i) => (size(i) > size(best) ? i : best), 0);
  const face = faceOf(axis, direction[axis] < 0);
  return `the ${face}`;
}
