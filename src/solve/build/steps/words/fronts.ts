/** How the fronts of drawers are set in their places. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { add, compare, equal, less, max, min, subtract } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { partsAt } from "../../../design/making/neighbours.ts";
import { indexOf } from "../../../design/space.ts";
import type { Face, Joint } from "../../../design.ts";
import { boredThrough } from "../bored-through.ts";
import { listed, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { along } from "./along.ts";
import { gapsOf } from "./gaps.ts";

/** Whether the gaps round the fronts, and no measures, say where they go. */
export const setByShims = (work: Work, joints: readonly Joint[]): boolean =>
  joints.length > 0 && joints.every(({ setWith }) => setWith) && shims(work, joints).under !== null;

/**
 * A front is screwed on where it will stay: its gaps are made, not measured. One that covers its opening goes by the measures told before, while
 * the drawer stands out. A clamp reaches round neither of them while it is shut: tape holds it until it was looked at and the drawer is out again. A front that fills its opening leaves no room for hands:
 * the drawer comes out by a screw in the hole for its knob, or by a strip of tape.
 */
export function setTexts(work: Work, joints: readonly Joint[], fronts: string, boxes: string): readonly Sentence[] {
  const several = joints.length > 1;
  const [front, box] = several ? ["its front", "its box"] : [fronts, boxes];
  const { under, beside, thick } = shims(work, joints);
  const face = faceWords(work, joints);
  const laid = !shutIn(work, joints);
  const why = laid
    ? "Do not pull at the edges of the front: the tape lets go."
    : "The front leaves no room for fingers.";
  const grip = pulledByScrew(work, joints);
  const [size, long] = [pullSize(work, joints), work.print(pullScrew(work, joints))];
  const strip = `a strip of strong cloth tape to the underside of ${box}, one end hanging out in front`;
  const pushed = "Push the drawer in as far as it runs.";
  const tape = `Put two strips of double-sided tape, thin and no foam, on the front of ${box}${grip ? "" : `, and ${strip}`}`;
  return [
    // What its front is pressed on stands right before.
    ...(face ? [`${pushed} ${face.box} Pull it out again.`] : []),
    sentence(
      laid
        ? `${tape}. With the drawer pulled out a hand's breadth set ${front} on it by these measures${beside}, and squeeze both together with clamps for a moment. Take the clamps off, push the drawer in, and look whether the front laps what is round it as drawn; if not, pull it off and set it anew.`
        : `${tape}. ${pushed} ${under ? "Stand" : "Hold"} ${front} ${under ? `in its opening, on ${under}` : `before ${box} by these measures${beside}`}; press it hard against the tape.${face ? ` ${face.front}` : ""}${under ? decidesText(work, joints) : ""}`,
      {
        uses: [
          { of: "double-sided tape", holds: "fronts" },
          ...(grip ? [] : [{ of: "cloth tape" } as const]),
          ...(thick.length > 0 ? [{ of: "shims", thick } as const] : []),
        ],
      },
    ),
    grip
      ? sentence(
          `${why} To pull the drawer out, drive a spare ${size}wood screw ${long} long through its hole for the ${gripOf(work, joints)} into ${box}, no deeper there than ${work.print(biteOf(work, joints))}, so that its head stands out and you can hold it, and pull by that screw. Now that clamps go round it, clamp front and box together; then bore and screw from inside.`,
          { uses: [{ of: "spare screw", item: `wood screw ${size === "" ? "" : `${size}× `}${long}` }] },
        )
      : `${why} Pull the drawer out by the end of that strip. Now that clamps go round it, clamp front and box together; then bore and screw from inside.`,
  ];
}

/** By the hole that goes on through the box behind. */
export const pulledByScrew = (work: Work, joints: readonly Joint[]): boolean =>
  joints.length > 0 && joints.every((joint) => joint.setWith && boredThrough(work, joint).length > 0);

/** Whether the fronts lie in their openings, where fingers find nothing of a drawer that is shut; else they lap what stands round these. */
export const shutIn = (work: Work, joints: readonly Joint[]): boolean =>
  joints[0]?.setWith === "tape" || setByShims(work, joints);

/** What the fronts of some joints are pulled by: "knob". */
export const gripOf = ({ design }: Work, joints: readonly Joint[]): string => {
  const fronts = new Set(joints.map(({ parts: [, front] }) => front));
  return design.fittings.find(({ part }) => fronts.has(part))?.hardware[0]?.item.kind ?? "pull";
};

/** Ids of all that these fronts are pulled by. */
export function gripsOf(work: Work, joints: readonly Joint[]): readonly string[] {
  const fronts = new Set(joints.map(({ parts: [, front] }) => front));
  const kind = gripOf(work, joints);
  return work.plan.hardware.flatMap(({ id, item, carriedBy }) =>
    fronts.has(carriedBy) && item.kind === kind ? [id] : [],
  );
}

/** A third of an inch in the box, and as much outside. */
const HELD = inches(3, 4);
const pullScrew = ({ part, design }: Work, joints: readonly Joint[]): Length =>
  roundTo(
    add(joints.map(({ parts: [, id] }) => part(id).thickness).reduce(max), HELD),
    design.units === "inch" ? inches(1, 4) : millimetres(5),
    "up",
  );

/** Far enough to hold, and not through the box. */
const biteOf = (work: Work, joints: readonly Joint[]): Length => {
  const thin = joints.map(({ parts: [id] }) => work.part(id).thickness).reduce(min);
  const [bite, left, mark] =
    work.design.units === "inch"
      ? [inches(3, 8), inches(1, 16), inches(1, 16)]
      : [millimetres(10), millimetres(2), millimetres(1)];
  return min(bite, roundTo(subtract(thin, left), mark, "down"));
};

/** The thickest that goes through the hole of the grip, by its number; empty where it is for none. Shanks of #6 and #8: ASME B18.6.1, 0.138 and 0.164 in. */
function pullSize(work: Work, joints: readonly Joint[]): string {
  const bores = joints
    .flatMap((joint) => boredThrough(work, joint))
    .flatMap((i) => work.plan.holes[i]?.stages.map(({ diameter }) => diameter) ?? []);
  const [first, ...others] = bores;
  const bore = first && others.reduce(min, first);
  const inch = work.design.units === "inch";
  if (!bore || less(bore, inches(9, 64))) return "";
  return less(bore, inches(11, 64)) ? (inch ? "#6 " : "3.5 mm ") : inch ? "#8 " : "4 mm ";
}

/** Shims and a measure from the box would be two rules. */
function decidesText(work: Work, joints: readonly Joint[]): string {
  const told = joints.map(({ parts: [box, id] }) => along(work, work.part(id).body, work.part(box).body, 2));
  const [first] = told;
  return first && told.every((each) => each === first)
    ? ` Where the front comes to lie on the box follows from the shims; as drawn the front ${first.startsWith("standing ") ? first.replace("standing", "stands") : `lies ${first}`} of the box.`
    : " Where the front comes to lie on the box follows from the shims.";
}

/** How a drawer is brought forward or back, and kept there: in a slot nothing but friction holds it. */
const shiftTexts = ({ plan }: Work): { readonly shift: string; readonly keep: string } =>
  plan.hardware.some(({ item }) => item.kind === "side slide")
    ? {
        shift:
          "pull it out, loosen the screws of its slides, shift these in their slots, or, where they have none, in new holes beside the old ones, and push it in again,",
        keep: " Then, with it out, bore a pilot hole under a round hole of each half, and move a screw from its slot to it: nothing may shift it any more.",
      }
    : { shift: "shift what the drawer runs on", keep: "" };

interface FaceWords {
  /** "The front of its box now lies 3/4 in behind the faces of the posts": before its front is on. */
  readonly box: string;
  /** "Its face then lies flush with the posts." */
  readonly front: string;
}

/** How far what looks outwards lies behind what stands beside the fronts, where that is the same of all; else null. */
function faceWords(work: Work, joints: readonly Joint[]): FaceWords | null {
  const told = joints.map(({ parts: [box, id] }): FaceWords | null => {
    const part = work.part(id);
    const axis = indexOf(part.axes.thickness);
    if (part.turned || axis === 2) return null;
    const low = less(part.body.low[axis], work.part(box).body.low[axis]);
    const side = axis === 1 ? ["left", "right"] : ["front", "back"];
    const beside = side.flatMap((face) => partsAt(face as Face, part, work.design.parts));
    const behind = beside.map(({ id: other, body }) => ({
      other,
      by: low ? subtract(part.body.low[axis], body.low[axis]) : subtract(body.high[axis], part.body.high[axis]),
    }));
    const by = behind[0]?.by;
    if (!by || behind.some((each) => !equal(each.by, by)) || by.n < 0n) return null;
    const those = listed(work, [...new Set(behind.map(({ other }) => other))]);
    const { shift, keep } = shiftTexts(work);
    return {
      box: `The front of its box now lies ${work.print(add(by, part.thickness))} behind the outer face of ${those}; where it does not, ${shift} until it does.${keep}`,
      front: `Its face then lies ${by.n === 0n ? `flush with ${those}` : `${work.print(by)} behind that of ${those}`}.`,
    };
  });
  const [first] = told;
  return first && told.every((each) => each?.box === first.box) ? first : null;
}

interface Shims {
  readonly under: string | null;
  readonly beside: string;
  readonly thick: readonly string[];
}

/** What keeps the gaps of fronts open, as thick as they are drawn: what they stand on, if anything, or else what goes beside them. */
function shims(work: Work, joints: readonly Joint[]): Shims {
  const fronts = joints
    .map(({ parts: [, id] }) => id)
    .toSorted((a, b) => compare(work.part(a).body.low[2], work.part(b).body.low[2]));
  const [lowest, ...others] = fronts.map((id) => gapsOf(work, id));
  const sizes = (gaps: readonly (Length | null | undefined)[]): readonly string[] => [
    ...new Set(gaps.flatMap((gap) => (gap ? [work.print(gap)] : []))),
  ];
  const all = {
    own: sizes([lowest?.below]),
    above: sizes(others.map(({ below }) => below)),
    beside: sizes([lowest, ...others].map((gaps) => gaps?.beside)),
  };
  const thick = [...all.above, ...all.own, ...all.beside];
  const [own, above, beside] = [all.own, all.above, all.beside].map((each) => each.join(" or ")) as [
    string,
    string,
    string,
  ];
  const below = above === "" ? own : above;
  if (below === "")
    return { under: null, beside: beside === "" ? "" : `, with shims ${beside} thick beside it`, thick };
  if (own === below && below === beside)
    return { under: `shims ${below} thick, below it and beside it`, beside, thick };
  const lower = own === "" || own === below ? "" : ` (${own} under the lowest)`;
  return {
    under: `shims ${below} thick below it${lower}${beside === "" ? "" : ` and ${beside} thick beside it`}`,
    beside,
    thick,
  };
}
