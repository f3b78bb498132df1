import { add, equal, half, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, axisOf, faceOf } from "../../../design/space.ts";
import type { Direction, Feature, Part } from "../../../design.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { fromNearer, sideWord } from "./measured.ts";

type BoxFeature = Extract<Feature, { readonly size: unknown }>;

/** Lies across the directions of the piece. */
const isSkew = (way: Direction): boolean => way.filter((part) => Math.abs(part) > 1e-9).length > 1;

/** Slots that are cut at the bench: for splines in mitres, for biscuits in edges and faces. */
export function slotTexts(work: Work, part: Part, all: readonly BoxFeature[]): readonly string[] {
  const slots = all.filter(({ kind }) => kind === "slot");
  const skew = slots.filter(({ into }) => isSkew(into));
  return [
    ...splineTexts(work, part, skew),
    ...biscuitTexts(
      work,
      part,
      slots.filter((slot) => !skew.includes(slot)),
    ),
  ];
}

/** Slots of one joint: the face, and where their middles are. */
function biscuitTexts(work: Work, part: Part, slots: readonly BoxFeature[]): readonly string[] {
  const joints = [...new Set(slots.map((slot) => slot.for))];
  return joints.map((joint) => {
    const own = slots.filter((slot) => slot.for === joint);
    const first = own[0] as BoxFeature;
    const [run, thin, into] = [axisOf(first.along), axisOf(first.across), axisOf(first.into)];
    const item = (joint !== null && work.plan.chosen.get(joint)?.fasteners[0]?.item) || "biscuit";
    const middle = (slot: BoxFeature, i: AxisIndex, k: 0 | 1) => {
      const at = add(slot.origin[i], half(slot.size[k]));
      return fromNearer(work, part, i, at, at) ?? "in the middle";
    };
    const face = `${faceOf(into, first.into[into] < 0)} ${sideWord(part, into)}`;
    const n = own.length === 1 ? "a slot" : `${numberWord(own.length)} slots`;
    return `Cut ${n} for ${item} in the ${face}, the middle of the cutter ${middle(first, thin, 1)}, centred ${series(own.map((slot) => middle(slot, run, 0)))}.`;
  });
}

/** Slots for splines in mitred ends. */
function splineTexts({ print }: Work, part: Part, slots: readonly BoxFeature[]): readonly string[] {
  const groups = new Map<string, BoxFeature[]>();
  for (const slot of slots) {
    const { across, size, origin } = slot;
    const thin = axisOf(across);
    const centred = equal(
      subtract(origin[thin], part.body.low[thin]),
      subtract(subtract(part.body.high[thin], origin[thin]), size[1]),
    );
    const place = centred
      ? "in the middle of the thickness"
      : `${print(subtract(origin[thin], part.body.low[thin]))} from the ${faceOf(thin, false)}`;
    const key = `${print(size[1])} wide and ${print(size[2])} deep into the mitre, ${place}`;
    groups.set(key, [...(groups.get(key) ?? []), slot]);
  }
  return [...groups].map(
    ([text, list]) =>
      `Cut a slot ${text}, from edge to edge${list.length > 1 ? `, in each of the ${numberWord(list.length)} mitres` : ""}.`,
  );
}
