import type { Joint } from "../../../design.ts";

/** The methods of a scene in the order in which they are told. What lies in rabbets holds nothing together: it is set in when its frame is. */
export function rabbetsLast(joints: readonly Joint[]): readonly Joint["method"][] {
  const methods = [...new Set(joints.map(({ method }) => method))];
  const frame = new Set(joints.flatMap(({ method, parts: [, mate] }) => (method === "rabbet" ? [mate] : [])));
  const closes = joints.some(({ method, parts }) => method !== "rabbet" && parts.every((id) => frame.has(id)));
  return closes ? [...methods.filter((method) => method !== "rabbet"), "rabbet"] : methods;
}
