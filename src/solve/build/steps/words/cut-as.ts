import type { Feature, Joint, Part } from "../../../design.ts";

const OTHERS: readonly Feature["kind"][] = ["mortise", "groove", "rabbet"];

/** What the room of a dado is called that lies so that it is no dado: "rabbet" at the end of its part; null for every other joint. */
export function cutAs(parts: readonly Part[], { id, method, parts: [, mate] }: Joint): Feature["kind"] | null {
  if (method !== "dado") return null;
  const features = parts.find((part) => part.id === mate)?.features ?? [];
  return features.find((each) => each.for === id && OTHERS.includes(each.kind))?.kind ?? null;
}
