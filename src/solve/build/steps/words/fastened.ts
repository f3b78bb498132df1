import type { Method } from "../../../../parse/draft.ts";
import { isSame, type Length } from "../../../../units/length.ts";
import { compare, subtract } from "../../../../units/rational.ts";
import { faceOf, indexOf } from "../../../design/space.ts";
import type { Fastener, Joint } from "../../../design.ts";
import { called, FIRST, listed, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { closingBevelTexts } from "./closing-bevel.ts";
import { endsAt } from "./ends-at.ts";
import { setTexts } from "./fronts.ts";
import { gapsOf } from "./gaps.ts";
import { setBackText } from "./leaf-seats.ts";
import { ownScrewTexts } from "./own-screws.ts";
import { stillTexts, woodMoves } from "./still.ts";

/** What the sentences speak of: what comes, and what is there. */
interface Said {
  readonly glued: boolean;
  readonly these: string;
  readonly those: string;
  /** No other method in the step says how they meet. */
  readonly alone: boolean;
  /** From where they come, as the work lies. */
  readonly from: "above" | "below" | null;
  /** What is there is one part so far. */
  readonly starts: boolean;
  /** Where the glue keeps off, after the words that tell where it is spread. */
  readonly bare: string;
}

const buttons = (room: string): string =>
  `Push the tongue of each button into its ${room}, its top against the wood that it holds, and pull it out again by the gap: it must be able to move both ways. Do not glue.`;

const sliding = (hole: string): string =>
  `Put each screw in the middle of its ${hole}, so that the wood can move both ways. Turn it only until its washer just turns hard: the wood must be able to slide.`;

const MOVES = "Do not glue: the wood must be able to move.";

/** What a maker has to know about a method besides where its fasteners go. Before the parts meet, and after. */
const TEXTS: Partial<Readonly<Record<Method, { readonly first?: string; readonly after?: string }>>> = {
  cleats: { after: "A cleat is screwed both ways: to what carries it, and to what it carries." },
  "slotted screws": { after: sliding("slot") },
  "oversized holes with washers": { after: sliding("wide hole") },
  "buttons in a groove": { after: buttons("groove") },
  "buttons in mortises": { after: buttons("mortise") },
  clips: { first: "Hook the clips into the groove.", after: MOVES },
  "figure-eight fasteners": {
    first: `${FIRST}screw the figure-eight fasteners into their recesses, so loosely that they still swing; open the recesses with a chisel where they do not.`,
    after: MOVES,
  },
  bolts: { after: "Tighten the nuts. It comes apart again: do not glue." },
  "bolts and cross dowels": {
    first:
      "Push the cross dowels into their bores, the thread in line with the bolt and the slot of the end towards it.",
    after: "It comes apart again: do not glue.",
  },
  loose: { after: "It stays loose." },
  "shelf pins": {
    first: "Push the pins into their holes, all of one shelf at one height, and lay it on them. It stays loose.",
  },
};

/** How parts meet that fasteners hold. */
export function fastenedText(
  work: Work,
  joints: readonly Joint[],
  { glued, these, those, alone, from, starts, bare }: Said,
): readonly Sentence[] {
  const { method } = joints[0] as Joint;
  const { first } = TEXTS[method] ?? {};
  const { setWith } = joints[0] as Joint;
  const rests = joints[0]?.kind === "resting";
  return [
    ...(first ? [first] : []),
    ...hungTexts(work, joints[0] as Joint, these, those),
    ...(glued ? [sentence(`Spread glue where they meet${bare}.`, { glues: true })] : []),
    ...(setWith ? setTexts(work, joints, these, those) : []),
    ...(alone && joints[0]?.kind !== "hinged" && !setWith && (!rests || method === "loose")
      ? [metText(these, those, from, starts)]
      : []),
  ];
}

/** What to mind when the parts are in their places. */
export function thenText(work: Work, joints: readonly Joint[]): readonly string[] {
  const { method } = joints[0] as Joint;
  const { after } = TEXTS[method] ?? {};
  const stays = after === MOVES && joints.every(({ still }) => still && !woodMoves(work, still.part));
  return [
    ...(stays ? ["Do not glue: so it comes off again."] : after ? [after] : []),
    ...gapTexts(work, joints),
    ...(method === "shelf pins" ? pinTexts(work, joints) : []),
    ...stillTexts(work, joints),
  ];
}

const together = (words: string): Sentence => sentence(words, { brings: "together" });

/** What comes from below stands there, and the work comes. */
function metText(these: string, those: string, from: Said["from"], starts: boolean): Sentence {
  if (from !== "below") return together(`Set ${these} ${from === "above" ? "on" : "against"} ${those}.`);
  return starts ? together(`Set ${those} on ${these}.`) : `Lift the work onto ${these}, ${those} on top.`;
}

/** What hangs: the hinges first on what moves, then on what it hangs on. */
function hungTexts(work: Work, joint: Joint, these: string, those: string): readonly Sentence[] {
  const {
    id,
    method,
    parts: [hung, hold],
  } = joint;
  const own = work.plan.hardware.filter((each) => each.joint === id);
  const hinges = ownScrewTexts(work, own).map((text) => text.replace(/^(?:It takes|They take)/u, "The hinges take"));
  if (method === "cup hinges")
    return [
      ...hinges,
      `Press the cups of the hinges into their holes and screw them on. Screw the plates to ${those}, in the holes bored for them. Hook ${these} on, and set it with the screws of the hinges until its gaps are even.`,
    ];
  const bevel = closingBevelTexts(work, id);
  if (method === "continuous hinge")
    return [
      ...bevel,
      ...hinges,
      `Screw the hinge to ${these}, then to ${those} with a screw at each end; open and shut it, and drive the rest.`,
    ];
  if (method !== "butt hinges") return [];
  // A lid lies above what it hangs on, however much air comes in there.
  const above = subtract(work.part(hung).body.low[2], work.part(hold).body.high[2]);
  const below = above.n >= 0n ? above : gapsOf(work, hung).below;
  const mortised = [hung, hold].some((part) => work.part(part).features.some((feature) => feature.for === id));
  const binds = mortised
    ? "deepen a seat, or lay card into it"
    : "put a strip of card behind a leaf, along one edge of it or the other";
  const shims = below ? ` on shims ${work.print(below)} thick` : " on shims as thick as its gap";
  return [
    ...bevel,
    ...hinges,
    sentence(
      `Screw the hinges to the ${called(work, hung)}, in the holes bored for them, the knuckles outside. Try it shut in its place${below?.n === 0n ? "" : shims}${setBackText(work, joint)}; then open it to a right angle, let a second person or blocks hold it at the same height, and screw the other leaves to ${those} with one screw each, in its holes. Shut it and look: where it binds, ${binds}. Then drive the rest.`,
      below?.n === 0n ? {} : { uses: [{ of: "shims", thick: below ? [work.print(below)] : [] }] },
    ),
  ];
}

/** At what height the pins are as drawn, by the part that they go into. */
function pinTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const pins = joints.flatMap(({ id }) => work.plan.chosen.get(id)?.fasteners ?? []);
  const sides = [...new Set(pins.flatMap(({ travelsWith }) => travelsWith ?? []))].filter(
    (id) => !work.part(id).turned,
  );
  const rows = new Map<string, string[]>();
  for (const id of sides) {
    const own = pins.filter(({ travelsWith }) => travelsWith === id).map(({ head }) => head.at[2]);
    const heights = own.toSorted(compare).map((at) => work.place(subtract(at, work.part(id).blank.low[2])));
    const key = series([...new Set(heights)]);
    rows.set(key, [...(rows.get(key) ?? []), id]);
  }
  const told = [...rows].map(([heights, ids]) => `in ${listed(work, ids)} ${heights}`);
  if (told.length === 0) return [];
  // Rows of holes besides those that the pins are drawn in.
  const holes = work.plan.holes.filter(({ part, kind }) => sides.includes(part) && kind === "pin");
  const free = holes.length > pins.length;
  const end = sides.every((id) => indexOf(work.part(id).axes.length) === 2) ? "end" : "edge";
  return [
    `As drawn the holes of the pins are at these heights, measured from the bottom ${end}: ${told.join("; ")}.${free ? " Any other row does as well." : ""}`,
  ];
}

/** How far the buttons or clips of each rail stand off it, and where the first of them is. */
function gapTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const rails = new Map<string, string[]>();
  for (const { id, method, parts, still } of joints) {
    const rail = parts.find((part) => part !== still?.part);
    const fasteners = work.plan.chosen.get(id)?.fasteners ?? [];
    if (!still || !rail || !(method.startsWith("buttons") || method === "clips")) continue;
    const thing = method === "clips" ? "clip" : "button";
    const key = `${spacing(work, rail, fasteners)}${standOff(work, rail, fasteners, thing)}`;
    rails.set(key, [...(rails.get(key) ?? []), rail]);
  }
  return [...rails].map(([text, ids]) => `On ${ids.length > 1 ? "each of " : ""}${listed(work, ids)}: ${text}.`);
}

function standOff(work: Work, rail: string, fasteners: readonly Fastener[], thing: string): string {
  const gap = fasteners[0]?.slack?.[indexOf(work.part(rail).axes.thickness)];
  if (!gap || gap.n === 0n) return "tight against it, since the wood is held there";
  return `${work.print(gap)} between its face and the shoulder of each ${thing}`;
}

/** "4 at even distances, the outer ones 2 1/2 in from its shoulders, ": the ends of what has no tenons */
function spacing(work: Work, rail: string, fasteners: readonly Fastener[]): string {
  const { axes, features } = work.part(rail);
  const shoulder = features.some(({ kind }) => kind === "tenon") ? "shoulder" : "end";
  const run = indexOf(axes.length);
  const ends = endsAt(work, rail, fasteners);
  const along = ends.slanting
    ? `, along its edge on ${listed(work, [...new Set(fasteners.map(({ into }) => into))])}`
    : "";
  const places = fasteners.map(({ head }) => head.at[run]).toSorted(compare);
  const [first, last] = [places[0] as Length, places.at(-1) as Length];
  const [low, high] = [subtract(first, ends.low), subtract(ends.high, last)];
  const from = isSame(low, high) ? work.print(low) : `${work.print(low)} and ${work.print(high)}`;
  return fasteners.length === 1
    ? `1, ${work.print(low)} from its ${faceOf(run, false)} ${shoulder}${along}, `
    : fasteners.length === 2
      ? `2, ${from} from its ${shoulder}s${along}, `
      : `${fasteners.length} at even distances, the outer ones ${from} from its ${shoulder}s${along}, `;
}
