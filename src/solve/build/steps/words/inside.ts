/** What has to be done inside before it is closed. */
import { inches, type Length, less } from "../../../../units/index.ts";
import { subtract } from "../../../../units/rational.ts";
import { enclosing, faceAxis, faceOf, indexOf, isHigh, middle } from "../../../design/space.ts";
import type { Face, Joint, Part } from "../../../design.ts";
import { gritWords } from "../../finishing/abrasives.ts";
import { FIRST, listed, type StepDraft, series, type Work } from "../draft.ts";
import { wordsOf } from "../sentence.ts";
import { calledAmong } from "./by-place.ts";

/** Wider than a rail: its face inside a box is hard to reach later. */
const PANEL = inches(4);

/** Where panels come to stand in a ring that they did not before: their faces inside are sanded first. */
export function insideText(work: Work, before: readonly string[], after: readonly string[]): readonly string[] {
  const panels = shutIn(work, before, after);
  if (panels.length === 0) return [];
  return [
    `${FIRST}sand the inside faces of ${listed(work, panels)} with ${gritWords} before this step closes them in: later you reach them badly.`,
  ];
}

/** Panels whose faces inside a step closes in. */
export function shutIn(work: Work, before: readonly string[], after: readonly string[]): readonly string[] {
  const panels = after.filter((id) => !less(work.part(id).width, PANEL));
  return !isRing(work, panels) || isRing(work, before) ? [] : panels;
}

/** Whether a face of one of them looks to the middle of them all. */
function isInside(work: Work, panels: readonly string[], { id, face }: Behind): boolean {
  if (!panels.includes(id)) return false;
  const axis = faceAxis(face);
  const whole = panels.map((each) => work.part(each).body).reduce(enclosing);
  const [own, all] = [middle(work.part(id).body, axis), middle(whole, axis)];
  return isHigh(face) ? less(own, all) : less(all, own);
}

/** Less is rounded over with the edge. Common practice, no source. */
const CORNER = inches(1, 8);

/**
 * Panels that come to lie behind the faces of posts or stiles that their edges are glued to: those corners are sanded
 * before; each face once, with the first of its joints, and not those inside of what is closed in the same step.
 */
export function cornerTexts(
  work: Work,
  joints: readonly Joint[],
  before: readonly string[],
  after: readonly string[],
): readonly string[] {
  const panels = shutIn(work, before, after);
  const here = new Set(joints);
  const there = new Set(after);
  const earlier = work.design.joints.filter((joint) => !here.has(joint) && joint.parts.every((id) => there.has(id)));
  const sanded = new Set(facesBehind(work, earlier).map(({ id, face }) => `${id} ${face}`));
  const fresh = facesBehind(work, joints).filter(
    (each) => !sanded.has(`${each.id} ${each.face}`) && !isInside(work, panels, each),
  );
  return sandedText(work, fresh);
}

function sandedText(work: Work, fresh: readonly Behind[]): readonly string[] {
  const among = [...new Set(fresh.map(({ id }) => id))];
  const faces = new Map<string, Set<Face>>();
  for (const { id, face } of fresh) {
    const name = calledAmong(work, id, among);
    faces.set(name, (faces.get(name) ?? new Set()).add(face));
  }
  const told = [...faces].map(
    ([name, own]) => `the ${series([...own])} ${own.size > 1 ? "faces" : "face"} of the ${name}`,
  );
  const one = told.length === 1 && [...faces.values()].every(({ size }) => size === 1);
  return told.length === 0
    ? []
    : [
        `${FIRST}sand ${series(told)} with ${gritWords}: the corners beside what stands past ${one ? "it" : "them"} are badly reached later. Wipe off there what squeezes out before it sets.`,
      ];
}

/** Of rails the page on gluing speaks, which there is for several glue-ups: of a single one they are told in its step. */
export function railsSanded(work: Work, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const [own, ...others] = drafts.filter(({ kind }) => kind === "glue-up");
  if (!own || others.length > 0) return drafts;
  const glued = new Set(own.actions.flatMap((action) => (action.do === "glue" ? action.joints : [])));
  const joints = work.design.joints.filter(({ id }) => glued.has(id));
  const rails = facesBehind(work, joints, CORNER).filter(({ id }) => less(work.part(id).width, PANEL));
  const told = sandedText(work, rails);
  const at = own.text.findLastIndex((text) => wordsOf(text).startsWith(`${FIRST}sand`)) + 1;
  const text = [...own.text.slice(0, at), ...told, ...own.text.slice(at)];
  return drafts.map((draft) => (draft === own ? { ...draft, text } : draft));
}

interface Behind {
  readonly id: string;
  readonly face: Face;
}

/** Each face of what is as wide at least that lies behind one of what it is glued to. */
function facesBehind(work: Work, joints: readonly Joint[], least: Length = PANEL): readonly Behind[] {
  return joints.flatMap(({ glue, parts }) => {
    const [part, frame] = parts.map(work.part) as [Part, Part];
    const thin = indexOf(part.axes.thickness);
    if (!glue || part.turned || frame.turned || less(part.width, least) || indexOf(frame.axes.length) === thin)
      return [];
    return [false, true]
      .filter((high) => {
        const behind = high
          ? subtract(frame.body.high[thin], part.body.high[thin])
          : subtract(part.body.low[thin], frame.body.low[thin]);
        return !less(behind, CORNER) && less(frame.body.low[thin], part.body.high[thin]);
      })
      .map((high) => ({ id: part.id, face: faceOf(thin, high) }));
  });
}

/** Whether joints go round in a circle. */
function isRing({ design }: Work, ids: readonly string[]): boolean {
  const leader = new Map(ids.map((id) => [id, id]));
  const find = (id: string): string => {
    const up = leader.get(id) ?? id;
    return up === id ? id : find(up);
  };
  const pairs = new Set<string>();
  return design.joints.some(({ parts: [a, b] }) => {
    if (!leader.has(a) || !leader.has(b) || pairs.has(`${a} ${b}`) || pairs.has(`${b} ${a}`)) return false;
    pairs.add(`${a} ${b}`);
    const [one, two] = [find(a), find(b)];
    leader.set(one, two);
    return one === two;
  });
}
