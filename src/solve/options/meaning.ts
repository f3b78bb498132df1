import type { Draft } from "../../parse/draft.ts";
import { isMirrored } from "../design/mirrored.ts";

/** A text that is the same for two drafts exactly when they say the same, whatever was chosen; with the places where they say it, or without. */
export function meaningOf(draft: Draft, places: "with places" | "without places"): string {
  const { chosen: _, ...said } = draft;
  return JSON.stringify([isMirrored(draft), said], (key, value: unknown) => {
    if (key === "at" && places === "without places") return undefined;
    if (typeof value === "bigint") return `${value}n`;
    return value instanceof Map ? [...value] : value;
  });
}
