import type { Joint } from "../../../design.ts";

/** Whether the parts with the rabbets are joined to each other by something else: what lies in the rabbets holds nothing together. */
export function closesRound(joints: readonly Joint[]): boolean {
  const frame = new Set(joints.flatMap(({ method, parts: [, mate] }) => (method === "rabbet" ? [mate] : [])));
  return joints.some(({ method, parts }) => method !== "rabbet" && parts.every((id) => frame.has(id)));
}

/** The methods of a scene in the order in which they are told. What only lies in rabbets is set in when its frame is closed. */
export function rabbetsLast(joints: readonly Joint[]): readonly Joint["method"][] {
  const methods = [...new Set(joints.map(({ method }) => method))];
  return closesRound(joints) ? [...methods.filter((method) => method !== "rabbet"), "rabbet"] : methods;
}
