/** What has to be done inside before it is closed. */
import { inches, less } from "../../../../units/index.ts";
import { gritWords } from "../../finishing/abrasives.ts";
import { FIRST, listed, type Work } from "../draft.ts";

/** Wider than a rail: its face inside a box is hard to reach later. */
const PANEL = inches(4);

/** Where panels come to stand in a ring that they did not before: their faces inside are sanded first. */
export function insideText(work: Work, before: readonly string[], after: readonly string[]): readonly string[] {
  const panels = after.filter((id) => !less(work.part(id).width, PANEL));
  if (!isRing(work, panels) || isRing(work, before)) return [];
  return [
    `${FIRST}sand the inside faces of ${listed(work, panels)} with ${gritWords} before this step closes them in: later you reach them badly.`,
  ];
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
