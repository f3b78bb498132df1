import type { Settings } from "../expand/make.ts";
import { joinWords, yesNoOr } from "../kinds/kept.ts";
import { may } from "../kinds/settings.ts";
import type { Site } from "./assembly.ts";

/** How something is fastened to the base that it stands on. */
export const toBaseSetting = may(
  yesNoOr(joinWords),
  "How its bottom panel is fastened to the base that it stands on: two screws into each board if nothing is said, where the panel lies on it.",
);

/** The joint between a bottom panel and the base under it; `lies` tells whether the panel lies on it. */
export function toBase(said: Settings | boolean | undefined, lies: boolean, { on, usual }: Site): readonly Settings[] {
  const how = said ?? lies;
  if (on?.assembly?.kind !== "base" || how === false) return [];
  const usually = { with: "screws", count: 2, "in from ends": usual("4", "100") };
  return [{ join: "bottom-panel", to: on.path, ...(how === true ? usually : how) }];
}
