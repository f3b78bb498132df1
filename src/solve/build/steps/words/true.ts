/** How what is glued comes out true: which edges have glue, where clamps pull, what is proved with a square or a straightedge. */

import type { Contact } from "../../../../geometry/index.ts";
import { turnedVec } from "../../../../geometry/index.ts";
import { equal, toNumber } from "../../../../units/rational.ts";
import {
  type AxisIndex,
  extent,
  faceOf,
  INDICES,
  indexOf,
  middle,
  otherAxes,
  thirdAxis,
  unit,
} from "../../../design/space.ts";
import type { Direction, Joint, Part } from "../../../design.ts";
import { definite, listed, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { degreesOf } from "./angled-ends.ts";
import { sideWord } from "./measured.ts";

/** They hide how their parts meet between them: edge to face, or end to face. */
const PEGGED: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["dowels", "biscuits", "loose tenon", "spline"]);

/** The share of a direction along an axis above which it counts as lying along that: of a face; of an end, which may be cut up to 45°. */
const FACE = 0.99;
const END = 0.7;

const normalOf = ({ contact }: Joint, share = FACE): AxisIndex | null => {
  const [first] = contact;
  return first ? (INDICES.find((i) => Math.abs(first.normal[i]) > share) ?? null) : null;
};

/** Whether a part of solid wood meets the other with its end. Sheets have grain both ways. */
const byEnd = (work: Work, part: Part, axis: AxisIndex): boolean =>
  work.stock(part.stock).movement !== undefined && indexOf(part.axes.length) === axis;

/** A part, and a joint that closes on a side of it. */
interface Met {
  readonly joint: Joint;
  readonly id: string;
}

/** Glue between the pegs: along the grain it holds by itself, into an end it soaks. */
export function betweenTexts(work: Work, joints: readonly Joint[]): readonly Sentence[] {
  const own = joints.filter(({ method, glue }) => glue && PEGGED.has(method));
  const ends = own.flatMap((joint): readonly Met[] => {
    const axis = normalOf(joint);
    return axis === null ? [] : joint.parts.flatMap((id) => (byEnd(work, work.part(id), axis) ? [{ joint, id }] : []));
  });
  const edges = own.flatMap((joint): readonly Met[] =>
    ends.some((each) => each.joint === joint) ? [] : [{ joint, id: joint.parts[0] }],
  );
  return [
    ...(edges.length > 0
      ? [sentence(`Spread a thin coat along ${sidesOf(work, edges, "edge")} too, between the dowels.`, { glues: true })]
      : []),
    ...(ends.length > 0
      ? [
          sentence(`Rub a little into ${sidesOf(work, ends, "end")} too: end grain drinks it, and the dowels hold.`, {
            glues: true,
          }),
        ]
      : []),
  ];
}

/** "the left end of the bottom panel (D)", "both ends of two rails (L)": what of some parts is joined, and no more. */
function sidesOf(work: Work, met: readonly Met[], askew: "edge" | "end"): string {
  const words = new Map<string, string>();
  for (const own of groupedBy(met, ({ id }) => id)) {
    const sides = [...new Set(own.map((each) => sideIn(work, each, askew)))].toSorted();
    const [first = ["", askew], second] = sides.map((side) => side.split(" "));
    const both = sides.length === 2 && first[1] === second?.[1] && first[0] !== "";
    words.set(own[0]?.id ?? "", both ? `both ${first[1]}s` : series(sides.map((side) => side.trim())));
  }
  return series(
    groupedBy([...words.keys()], (id) => words.get(id) ?? "").map((ids) => {
      const side = words.get(ids[0] ?? "") ?? "";
      const all = ids.length > 1 && !side.endsWith("s") ? `${side}s` : side;
      return `${side.startsWith("both ") ? "" : "the "}${all} of ${listed(work, ids)}`;
    }),
  );
}

/** "left end": where a part is met by the other of a joint; " ends" for one that stands askew. */
function sideIn(work: Work, { joint, id }: Met, askew: "edge" | "end"): string {
  const part = work.part(id);
  const mate = work.part(joint.parts.find((other) => other !== id) ?? id);
  const axis = normalOf(joint);
  if (axis === null || part.turned) return ` ${askew}s`;
  const high = toNumber(middle(part.body, axis)) < toNumber(middle(mate.body, axis));
  return `${faceOf(axis, high)} ${sideWord(part, axis)}`;
}

/** So many times as thick is what a panel lies to one side of: a post, and not a face that it stands on. */
const THIN = 1.2;
const THICK = 4;

/** A thin part that lies to one side of a thick one pulls a frame hollow where the clamps are in the middle of the thick one. */
export function inLineTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const aside = joints.filter((joint) => {
    const [part, base] = joint.parts.map(work.part) as [Part, Part];
    const axis = indexOf(part.axes.thickness);
    const normal = normalOf(joint);
    if (!joint.glue || part.turned || base.turned || normal === null || normal === axis) return false;
    return (
      THIN * toNumber(extent(part.body, axis)) < toNumber(extent(base.body, axis)) &&
      THICK * toNumber(extent(part.body, axis)) > toNumber(extent(base.body, axis)) &&
      !equal(middle(part.body, axis), middle(base.body, axis)) &&
      // A rail between others is held by more than its clamps.
      toNumber(extent(part.body, axis)) * 4 < toNumber(part.width)
    );
  });
  const panels = [...new Set(aside.map(({ parts: [id] }) => id))];
  if (panels.length === 0) return [];
  const what = listed(work, panels);
  return [
    `Set the clamps in line with ${what}, not with the middle of what ${panels.length === 1 ? "it is" : "they are"} glued to, or the work bows. Lay a straightedge across it both ways before you leave it.`,
  ];
}

/** What has only one end held yet tips: a square proves it, where no diagonals do; a bevel, where its end is cut at an angle. */
export function squareTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const tipping = joints.filter((joint) => {
    const [part, mate] = joint.parts.map(work.part) as [Part, Part];
    if (!joint.glue || joint.method === "breadboard end" || part.turned || isMitred(joint, mate)) return false;
    return endOf(part, joint) !== null;
  });
  // A panel that is held on three sides stands square by them.
  const sides = (id: string): number =>
    new Set(joints.filter(({ parts }) => parts.includes(id)).map((joint) => sideOf(work, joint, id))).size;
  const held = tipping.filter(({ parts: [id] }) => sides(id) < 3);
  return groupedBy(held, (joint) => proof(work, joint)).map((own) => {
    const ids = [...new Set(own.map(({ parts: [id] }) => id))];
    const one = ids.length === 1;
    const how = proof(work, own[0] as Joint);
    const askew = askewBy(work, own[0] as Joint);
    const leave =
      askew === null
        ? ""
        : ` How ${one ? "it is" : "they are"} turned on that, ${askew} from in line with it, is given by the joint: leave that as it comes.`;
    return `Check ${how} that ${definite(work, ids)} ${one ? "stands" : "stand"} ${how === SQUARE ? "square" : "true"} to what ${one ? "it is" : "they are"} glued to, and shift the clamps until ${one ? "it does" : "they do"}.${leave}`;
  });
}

/** Where a part meets the other with its end, whatever else of it is let in there. */
function endOf(part: Part, { contact, insertion }: Joint): Contact | null {
  const axis = longest(part);
  // The end of what goes into a groove sideways only stops it.
  if (insertion && Math.abs(insertion[axis]) < END) return null;
  return contact.find(({ normal }) => Math.abs(normal[axis]) > END) ?? null;
}

/** Which way a part runs in the room. */
function runOf({ axes, turned }: Part): Direction {
  const length = unit(indexOf(axes.length), 1);
  return turned ? turnedVec(turned.placement, length) : length;
}

/** Whether the other is cut at an angle as well: how its wood runs says nothing of the first then. */
function isMitred({ contact }: Joint, mate: Part): boolean {
  const run = runOf(mate);
  const normal = contact[0]?.normal ?? run;
  const share = Math.abs(INDICES.reduce<number>((so, i) => so + run[i] * normal[i], 0));
  return share > 1 - FACE && share < FACE;
}

const SQUARE = "with a square, along and across,";

/** How what is met by an end is proved: along what it is glued to, and across that. */
function proof(work: Work, joint: Joint): string {
  const [part, mate] = joint.parts.map(work.part) as [Part, Part];
  const axis = longest(part);
  const normal = endOf(part, joint)?.normal ?? unit(axis, 1);
  const run = runOf(mate);
  const [one, two] = otherAxes(axis);
  const along = Math.abs(run[one]) > Math.abs(run[two]) ? one : two;
  const ways = [along, thirdAxis(axis, along)].map((i) => ({
    word: i === along ? "along" : "across",
    degrees: degreesOf(Math.abs(normal[i] / normal[axis])),
  }));
  const leaning = ways.filter(({ degrees }) => degrees !== "0°");
  const square = ways.find(({ degrees }) => degrees === "0°");
  if (leaning.length === 0) return SQUARE;
  const bevel = leaning.map(({ word, degrees }) => `${degrees} from square ${word}`).join(" and ");
  return `${square ? `with a square ${square.word}, and ` : ""}with a bevel set as the end was cut, ${bevel},`;
}

/** By how much the wood of what an end meets runs askew to the edges of the part; null where it runs along one of them. */
function askewBy(work: Work, joint: Joint): string | null {
  const [part, mate] = joint.parts.map(work.part) as [Part, Part];
  const run = runOf(mate);
  const [one, two] = otherAxes(longest(part)).map((i) => Math.abs(run[i])) as [number, number];
  const degrees = degreesOf(Math.min(one, two) / Math.max(one, two));
  return degrees === "0°" ? null : degrees;
}

/** Where a joint is on one of its parts. */
function sideOf(work: Work, joint: Joint, id: string): string {
  const axis = endOf(work.part(id), joint) ? longest(work.part(id)) : normalOf(joint, END);
  if (axis === null) return joint.id;
  const [own, other] = [id, ...joint.parts.filter((each) => each !== id)].map((each) =>
    middle(work.part(each).body, axis),
  );
  return own && other ? faceOf(axis, toNumber(own) < toNumber(other)) : joint.id;
}

const longest = ({ body }: Part): AxisIndex =>
  INDICES.reduce<AxisIndex>((so, i) => (toNumber(extent(body, i)) > toNumber(extent(body, so)) ? i : so), 0);
