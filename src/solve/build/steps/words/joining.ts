import type { Direction, Joint } from "../../../design.ts";
import { isClamped } from "../clamping.ts";
import { listed, namesOf, series, type Work } from "../draft.ts";
import { comesFrom, isUnderneath, restsOn } from "../lying.ts";
import { isPanel, type Move, togetherAfter } from "../moves.ts";
import { type Sentence, sentence, tells } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { boredOnTexts } from "./bored-on.ts";
import { clampedAt, closedAtOnce, unclamped } from "./closed-at-once.ts";
import { counted, countText, driveTexts } from "./driving.ts";
import { fastenedText, thenText } from "./fastened.ts";
import { setByShims } from "./fronts.ts";
import { glazedText } from "./glazed.ts";
import { glueKeepsOff } from "./glue-keeps-off.ts";
import { grainTexts } from "./grain-way.ts";
import { grooveText } from "./grooves.ts";
import { housedTexts, isHoused } from "./housed.ts";
import { lineTexts } from "./lines.ts";
import { METHOD_WORDS } from "./methods.ts";
import { oneByOneText, toldOnce } from "./one-by-one.ts";
import { slideScrewTexts } from "./own-screws.ts";
import { peggedTexts, pegsBeforeGlue } from "./pegged.ts";
import { placeTexts } from "./place.ts";
import { rabbetsLast } from "./rabbets-last.ts";
import { roomsToGlue } from "./rooms.ts";
import { slideRoom } from "./slide-room.ts";
import { squeezedTexts } from "./squeezed-through.ts";
import { standTexts } from "./standing.ts";
import { tiltTexts } from "./tilted.ts";
import { endTexts } from "./which-end.ts";

/** What the sentences about one step need. */
interface Scene {
  readonly work: Work;
  readonly joints: readonly Joint[];
  readonly arriving: readonly string[];
  /** A body that arrives as a whole, by name. */
  readonly built: string | null;
  /** More than one arrives so. */
  readonly several: boolean;
  /** What arrives lies underneath, and has been told. */
  readonly lowered: boolean;
  /** The body that stands there, by its name; null where it is told by its parts. */
  readonly stands: string | null;
  readonly moves: readonly Move[];
  /** How the work lies. */
  readonly up: Direction;
  readonly proof: Proof | null;
}

/** How a frame is proved square as it is closed, and the part that goes into it in the same step and keeps it as it is then. */
export interface Proof {
  readonly text: string;
  readonly filler: string | null;
}

/**
 * How the parts of a step go together: what to do, with what, from which side. `built` names a body that arrives as a whole, `stands` one that is
 * there. The `proof` of a frame stands before what fills that, where this is told by itself; else it is left out.
 */
export function joiningText(
  work: Work,
  moves: readonly Move[],
  up: Direction,
  {
    built,
    stands,
    proof,
  }: { readonly built: string | null; readonly stands: string | null; readonly proof: Proof | null },
): readonly Sentence[] {
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  // A front that is set is placed before it is fixed; where shims place it, nothing is measured.
  const set = joints.some(({ setWith }) => setWith);
  const placed = setByShims(work, joints)
    ? []
    : placeTexts(work, moves, up).map((text) => sentence(text, { brings: "in place" }));
  const scenes = inTurn(moves).map((own) => ({
    ...{ work, moves, up, built, stands, proof, several: moves.length > 1, lowered: isUnderneath(work, moves, up) },
    arriving: own.flatMap((move) => move.arriving),
    joints: own.flatMap((move) => move.work.map(({ joint }) => joint)),
  }));
  const told = scenes.flatMap((scene, i, all) =>
    i === all.length - 1 ? methodTexts(scene) : methodTexts(scene).flatMap(unclamped),
  );
  const oneByOne = set && moves.length > 1;
  const { turned, flush } = endTexts(work, moves);
  const ways = [...turned, ...grainTexts(work, moves)];
  // Which way a part is turned is too late with glue on it; where everything goes is told before it is clamped there.
  const glued = told.findIndex(isGluing);
  const where = [...(set ? [] : placed), ...(glued < 0 ? ways : []), ...flush, ...standTexts(work, joints)];
  const method = glued < 0 ? told : told.toSpliced(glued, 0, ...ways);
  const at = clampedAt(method);
  // What hangs is held in its place while its hinges are screwed on.
  const hung = at < 0 && joints.some(({ kind }) => kind === "hinged");
  return [
    ...(oneByOne ? [oneByOneText(moves.flatMap(({ arriving }) => arriving.map(work.part)))] : []),
    ...(set ? placed : []),
    ...(hung ? where : []),
    ...pegsBeforeGlue(work, moves),
    ...(at < 0 ? method : [...method.slice(0, at), ...where, ...method.slice(at)]),
    ...tiltTexts(work, moves, built),
    ...(at < 0 && !hung ? where : []),
    ...squeezedTexts(work, joints, togetherAfter(moves)),
    ...scenes.flatMap(thenTexts),
    ...pegTexts(work, joints),
    ...lineTexts(
      work,
      drives.map(({ fastener }) => fastener),
      moves.flatMap(({ present, arriving }) => [...present, ...arriving]),
    ),
    ...(oneByOne ? toldOnce(moves, (own) => fastenTexts(work, own, up)) : fastenTexts(work, moves, up)),
  ];
}

/** Hard, it keeps finish from the wood and what comes beside it from its place. Common practice, no source. */
export const WIPED = "Wipe off what squeezes out while it is wet, in the corners too.";

const isGluing = (told: Sentence): boolean => tells(told, "glues") !== null || tells(told, "apart") !== null;

/** How the work of some moves is driven, and bored on through. */
function fastenTexts(work: Work, moves: readonly Move[], up: Direction): readonly Sentence[] {
  const all = moves.flatMap((move) => move.work);
  return [
    ...driveTexts(
      work,
      all.flatMap(({ drives }) => drives),
      up,
      moves.flatMap(({ present, arriving }) => [...present, ...arriving]),
    ),
    ...boredOnTexts(
      work,
      all.map(({ joint }) => joint),
    ),
  ];
}

/** A panel that is slid in between comes in its turn: what stands before it, the panel, what closes the frame. */
function inTurn(moves: readonly Move[]): readonly (readonly Move[])[] {
  const first = moves.findIndex(isPanel);
  const last = moves.findLastIndex(isPanel);
  if (first <= 0 || last === moves.length - 1) return [moves];
  return [moves.slice(0, first), moves.slice(first, last + 1), moves.slice(last + 1)];
}

/** The parts of some joints: those that arrive (or the body they arrive in), and those that are there. */
function sidesOf({ work, arriving, built, stands }: Scene, joints: readonly Joint[]) {
  const all = [...new Set(joints.flatMap((joint) => joint.parts))];
  const coming = all.filter((id) => arriving.includes(id));
  const there = all.filter((id) => !arriving.includes(id));
  const these = built ?? listed(work, coming);
  const standing = stands ? [stands] : namesOf(work, there);
  const everything = series(
    built ? [built, ...standing] : stands ? [...namesOf(work, coming), stands] : namesOf(work, [...there, ...coming]),
  );
  const mates = listed(work, [...new Set(joints.map(({ parts: [, mate] }) => mate))]);
  const mortised = [...new Set(joints.map(({ method }) => method))].map((method) => [method, "mortise"] as const);
  const receiving = roomsToGlue(work, joints, mortised, `of ${mates}`);
  return { these, those: listed(work, there), everything, receiving };
}

/** What is told of the joints of a scene. A panel is slid in first; its edge goes into what closes the frame as that comes, when the glue is on. */
function methodTexts(scene: Scene): readonly Sentence[] {
  const methods = rabbetsLast(scene.joints);
  const grooves = scene.joints.filter(({ method }) => method === "groove");
  const texts = textsOf(
    scene,
    methods.filter((method) => method !== "groove"),
  );
  if (grooves.length === 0) return texts;
  const told = grooveText(
    scene,
    grooves,
    grooves.some(({ glue }) => glue),
  );
  const slid = grooves.some(({ parts: [id] }) => scene.arriving.includes(id));
  const at = slid ? 0 : texts.findIndex((text) => !tells(text, "glues"));
  return at < 0 ? [...texts, told] : [...texts.slice(0, at), told, ...texts.slice(at)];
}

function textsOf(scene: Scene, methods: readonly Joint["method"][]): readonly Sentence[] {
  const { proof, joints } = scene;
  const last = methods.at(-1);
  const filler = methods.length > 1 && proof?.filler;
  // What fills a frame comes when that has been proved.
  const fills = filler && joints.every(({ method, parts }) => method !== last || parts.includes(filler));
  const all = methods.map((method) => methodText(scene, methods, method));
  return fills ? [...all.slice(0, -1), [proof.text], ...all.slice(-1)].flat() : closedAtOnce(all);
}

function methodText(scene: Scene, methods: readonly Joint["method"][], method: Joint["method"]): readonly Sentence[] {
  const words = METHOD_WORDS[method];
  // Tenons through their mortises and others go home together.
  const alike = words ? methods.filter((other) => METHOD_WORDS[other] === words) : [method];
  if (alike[0] !== method) return [];
  const own = scene.joints.filter((joint) => alike.includes(joint.method));
  const glued = own.some((joint) => joint.glue);
  const sides = sidesOf(scene, own);
  const clamped = scene.moves.some((move) =>
    move.work.some((each) => own.includes(each.joint) && isClamped(scene.work, each)),
  );
  if (method === "glazed") return [glazedText(scene, own)];
  if (isHoused(method)) return housedTexts(scene, own, method);
  const bare = glueKeepsOff(scene.work, scene.joints);
  const wedged = own.some((joint) => joint.wedged);
  const room = method === "slides" ? slideRoom(scene.work, own) : null;
  const pegged = method === "dowels" ? peggedTexts(scene.work, scene.moves, own) : [];
  const drawn = own.every((joint) => isDrawn(scene.moves, joint));
  const screws = method.endsWith("slides") ? slideScrewTexts(scene.work, own) : [];
  if (words)
    return [
      ...screws,
      ...pegged,
      ...words({ ...sides, wedged, drawn, glued, clamped, room, bare, several: scene.several }),
    ];
  const { these, those } = sides;
  return fastenedText(scene.work, own, {
    glued,
    these,
    those,
    bare,
    starts: scene.moves[0]?.starts ?? false,
    from: comesFrom(scene.work, scene.moves, scene.up) ?? (restsOn(scene.work, scene.moves, scene.up) ? "above" : null),
    alone: new Set(scene.joints.map((joint) => joint.method)).size === 1 && !scene.lowered,
  });
}

/** Screws or nails are driven into it in these moves. */
const isDrawn = (moves: readonly Move[], { id }: Joint): boolean =>
  moves.some(({ work }) => work.some(({ joint, drives }) => joint.id === id && drives.length > 0));

/** Methods that have no words of their own but those of their fasteners. */
const isFastened = ({ method }: Joint): boolean =>
  !(method in METHOD_WORDS) && !isHoused(method) && method !== "groove" && method !== "glazed";

/** What to mind with each method, when all is in its place. */
const thenTexts = ({ work, joints }: Scene): readonly string[] =>
  groupedBy(joints.filter(isFastened), ({ method }) => method).flatMap((own) => thenText(work, own));

/** Pegs of other joints come with their part. */
function pegTexts(work: Work, joints: readonly Joint[]): readonly Sentence[] {
  const all = joints
    .filter(({ method }) => method !== "dowels")
    .flatMap((joint) => work.plan.chosen.get(joint.id)?.fasteners ?? []);
  return counted(all.filter((fastener) => fastener.travelsWith !== null)).map(({ item, list }) =>
    sentence(`Use ${countText(item, list.length)}.`, { counts: true }),
  );
}
