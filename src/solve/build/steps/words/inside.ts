/** What has to be done inside before it is closed. */
import { once } from "../../../../geometry/index.ts";
import { inches, less } from "../../../../units/index.ts";
import { subtract } from "../../../../units/rational.ts";
import { enclosing, faceAxis, faceOf, indexOf, isHigh, middle } from "../../../design/space.ts";
import type { Face, Part } from "../../../design.ts";
import { gritWords } from "../../finishing/abrasives.ts";
import { FIRST, listed, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
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
function isInside(work: Work, panels: readonly string[], { id, face }: Pick<Behind, "id" | "face">): boolean {
  if (!panels.includes(id)) return false;
  const axis = faceAxis(face);
  const whole = panels.map((each) => work.part(each).body).reduce(enclosing);
  const [own, all] = [middle(work.part(id).body, axis), middle(whole, axis)];
  return isHigh(face) ? less(own, all) : less(all, own);
}

/** Less is rounded over with the edge. Common practice, no source. */
const CORNER = inches(1, 8);

/**
 * Parts that come to lie behind the faces of posts or stiles that they are glued to: those faces are sanded before, as long as a part is single, and
 * not those inside of what is closed in the same step. `single`: what comes in a step by itself.
 */
export function cornerTexts(
  work: Work,
  single: readonly string[],
  before: readonly string[],
  after: readonly string[],
): readonly string[] {
  const panels = shutIn(work, before, after);
  const own = behindIn(work).filter((each) => single.includes(each.id) && !isInside(work, panels, each));
  if (own.length === 0) return [];
  const faces = new Map<string, Face[]>();
  for (const { id, face } of own) if (!faces.get(id)?.includes(face)) faces.set(id, [...(faces.get(id) ?? []), face]);
  const ids = [...faces.keys()];
  const told = groupedBy(ids, (id) => `${work.line(id).mark} ${faces.get(id)?.join()}`).map((alike) => {
    const [id = ""] = alike;
    const sides = faces.get(id) ?? [];
    const others = ids.filter((other) => work.line(other).mark === work.line(id).mark).length > alike.length;
    const names = others ? alike.map((each) => `the ${calledAmong(work, each, ids)}`) : [listed(work, alike)];
    return `the ${series(sides)} ${sides.length > 1 ? "faces" : "face"} of ${series(names)}`;
  });
  const it = [...faces.values()].flat().length === 1 ? "it" : "them";
  return [
    `${FIRST}sand ${series(told)} with ${gritWords}: the corners beside what stands past ${it} are badly reached later.`,
  ];
}

interface Behind {
  readonly id: string;
  readonly face: Face;
  readonly joint: string;
}

/** Each face that lies behind one of what its part is glued to. */
const behindIn = once((work: Work): readonly Behind[] =>
  work.design.joints.flatMap(({ id, glue, parts }) => {
    const [part, frame] = parts.map(work.part) as [Part, Part];
    const thin = indexOf(part.axes.thickness);
    if (!glue || part.turned || frame.turned || indexOf(frame.axes.length) === thin) return [];
    return [false, true]
      .filter((high) => {
        const behind = high
          ? subtract(frame.body.high[thin], part.body.high[thin])
          : subtract(part.body.low[thin], frame.body.low[thin]);
        return !less(behind, CORNER) && less(frame.body.low[thin], part.body.high[thin]);
      })
      .map((high) => ({ id: part.id, face: faceOf(thin, high), joint: id }));
  }),
);

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
