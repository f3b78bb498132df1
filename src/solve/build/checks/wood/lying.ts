/** What a lid comes to lie on when it is shut: no joint tells of that. Millimetres. */
import type { Design, Joint, Part } from "../../../design.ts";
import { LOOSE } from "../../order/links.ts";
import { bodyOf, type Support } from "./body.ts";

/** So far at most may a shut lid stay above what holds it when somebody sits down: the gap of its hinges. Common practice, no source. */
const ABOVE = 3;

/** What a flat part of something that is hinged or loose lies on, or comes down on under weight. */
export function liesOn(part: Part, along: 0 | 1, beside: 0 | 1, design: Design): readonly Support[] {
  if (part.axes.thickness !== "up") return [];
  const moving = swung(part.id, design);
  if (moving === null) return [];
  const [own, [bottom]] = [[bodyOf(part, along), bodyOf(part, beside)] as const, bodyOf(part, 2)];
  return design.parts.flatMap((under): readonly Support[] => {
    const away = bottom - bodyOf(under, 2)[1];
    if (moving.has(under.id) || away < -0.1 || away > ABOVE) return [];
    const [a, b] = [common(own[0], bodyOf(under, along)), common(own[1], bodyOf(under, beside))];
    return a && b ? [{ by: under.id, from: a[0], to: a[1], low: b[0], high: b[1] }] : [];
  });
}

/** Everything that swings or is lifted off with a part; null where it stays. What is hinged or lies loose is the first part of its joint. */
function swung(id: string, { joints }: Design): ReadonlySet<string> | null {
  const fixed = joints.filter(({ kind }) => !LOOSE.includes(kind));
  const together = new Set([id]);
  for (const each of together)
    for (const { parts } of fixed) if (parts.includes(each)) for (const other of parts) together.add(other);
  const lid = ({ kind, method }: Joint): boolean => kind === "hinged" || method === "loose";
  return joints.some((joint) => lid(joint) && together.has(joint.parts[0])) ? together : null;
}

function common(a: readonly [number, number], b: readonly [number, number]): readonly [number, number] | null {
  const [low, high] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  return high > low ? [low, high] : null;
}
