import { idsBetween, isCutLater, makingOf } from "../../design/making/plain.ts";
import type { Direction } from "../../design.ts";
import { hangsOn } from "../order/links.ts";
import type { Assembly, JointWork, Plan, Union } from "../order/plan.ts";
import type { Work } from "./draft.ts";
import { type Entering, enteringOf } from "./openings.ts";
import { ownKey } from "./wishes/own-key.ts";

/** One body arriving at another: a union of the plan, in the order of work. */
export interface Move {
  readonly union: Union;
  /** The body that stays, and what comes to it. */
  readonly present: readonly string[];
  readonly arriving: readonly string[];
  /** The first part of a body is laid down in the move that gives it its second. */
  readonly starts: boolean;
  /** `arriving` was put together before. */
  readonly arrivesBuilt: boolean;
  readonly along: Direction;
  /** Its keys are not among what is driven. */
  readonly work: readonly JointWork[];
  /** What is let in when the glue is dry: it draws nothing together. */
  readonly keys: JointWork["drives"];
}

/** What has to be known for that. */
export type Grouping = Pick<Work, "design" | "motions" | "part" | "line">;

/** A body and the moves that make it, the bodies that it is made of first. */
export interface Unit {
  readonly name: string;
  /** A group of the source: it has a name that means something. */
  readonly named: boolean;
  readonly parts: readonly string[];
  readonly moves: readonly Move[];
}

/** The plan's tree as units in the order of work: a body that arrives as a whole is a unit of its own. */
export function unitsOf(plan: Plan): readonly Unit[] {
  const units: Unit[] = [];
  const visit = (assembly: Assembly, name: string): void => {
    if (assembly.kind === "part") return;
    // The chain of unions that grow one body, innermost first.
    const chain: Union[] = [];
    let body: Assembly = assembly;
    while (body.kind === "union" && (body === assembly || body.group === null)) {
      chain.unshift(body);
      body = body.staying;
    }
    visit(body, nameOf(body));
    const moves = chain.map((union): Move => {
      visit(union.moving, nameOf(union.moving));
      return moveOf(union);
    });
    units.push({ name, named: assembly.group === name, parts: assembly.parts, moves });
  };
  const { root } = plan;
  if (root.kind === "union" && hangs(root)) {
    // What is hung on the wall is the piece.
    visit(root.moving, "piece");
    return [...units, { name: ON_THE_WALL, named: false, parts: root.parts, moves: [moveOf(root)] }];
  }
  visit(root, "piece");
  return units;
}

const moveOf = (union: Union): Move => ({
  union,
  present: union.staying.parts,
  arriving: union.moving.parts,
  starts: union.staying.kind === "part",
  arrivesBuilt: union.moving.kind === "union",
  along: union.along,
  work: union.work.map((each) => ({ ...each, drives: each.drives.filter((drive) => !isKey(drive)) })),
  keys: union.work.flatMap(({ drives }) => drives.filter(isKey)),
});

const isKey = ({ fastener }: JointWork["drives"][number]): boolean => fastener.kind === "key";

/** Both parts are cut at a slope, whatever is let in across it. */
export const isMitre = ({ method }: JointWork["joint"]): boolean =>
  method === "mitre" || method === "splined mitre" || method === "keyed mitre";

/** Driven by blows. */
export const isStruck = ({ tool }: JointWork["drives"][number]): boolean => tool === "hammer" || tool === "stapler";

/** Ids of all that is together after some moves. */
export const togetherAfter = (moves: readonly Move[]): readonly string[] => {
  const last = moves.at(-1);
  return last ? [...last.present, ...last.arriving] : [];
};

/** Whether it is hung on a cleat on the wall in this move. */
export const hangs = ({ work }: Pick<Union, "work">): boolean => work.some(({ joint }) => hangsOn(joint));
export const ON_THE_WALL = "on the wall";

const nameOf = (assembly: Assembly): string =>
  assembly.kind === "union" && assembly.group !== null ? assembly.group : (assembly.parts[0] as string);

/** By the wishes for steps of their own that a move falls under: with what it brings, and what is laid down for it. */
export const moveKey = (work: Grouping, { starts, present, arriving }: Move): string =>
  ownKey(work, { verb: "join" }, starts ? [...present, ...arriving] : arriving);

/** Whether what arrives is measured where it goes. A door or a drawer is measured for as a whole, before anything of it is put together. */
export function waits(work: Grouping, { present, arriving }: Move): boolean {
  const ids = [...present, ...arriving];
  const isPartOf = ({ moves }: Entering): boolean => ids.every((id) => moves.includes(id));
  // What was measured in a body that arrives as a whole is in it by then.
  const isThere = (id: string): boolean => {
    const { between, notchedRound = [] } = makingOf(work.part(id));
    return between !== undefined && [...idsBetween(between), ...notchedRound].every((each) => arriving.includes(each));
  };
  return arriving.some((id) => isCutLater(work.part(id)) && !isThere(id)) && !enteringOf(work).some(isPartOf);
}

export const isGlued = ({ work }: Move): boolean => work.some(({ joint }) => joint.glue);

export const isPanel = ({ work }: Move): boolean => work.every(({ joint }) => joint.method === "groove" && !joint.glue);

/** A pane, which nothing holds until its beads are on, and the beads, each on its side of the frame. */
export const isGlazing = ({ work }: Pick<Move, "work">): boolean => work.some(({ joint }) => joint.method === "glazed");
