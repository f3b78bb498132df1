import type { Settings, Value } from "../expand/make.ts";
import type { Site } from "./assembly.ts";

/** What stands round a space, by the names of the parts: what its dividers and shelves are joined to. */
export interface Bounds {
  readonly left?: string;
  readonly right?: string;
  readonly bottom?: string;
  readonly top?: string;
}

/** Parts, spaces and joints that an assembly has so far. */
export interface Making {
  readonly site: Site;
  readonly entries: Record<string, Settings>;
  readonly joints: Settings[];
  readonly stock: Value;
  readonly join: Settings;
  /** The band on the front edges of what stands in it. */
  readonly edge: Settings;
  /** Its sides are groups of posts and panels: whether the panels are flush with the posts inside. */
  readonly posts?: "flush inside" | "apart";
}

/**
 * The part of a wall that carries something. Of a side made of posts and a panel, hinges go on the front post, slides on the panel; runners and pins on the panel
 * where it is flush inside, so that their screws keep clear of what joins it to the posts, and else on the posts.
 */
export function carrier(wall: string, what: "hinges" | "slides" | "pins" | "runners", { posts }: Making): string {
  if (!posts || !/^(left|right)-side$/.test(wall)) return wall;
  if (what === "hinges") return `${wall}.front-post`;
  return what === "slides" || posts === "flush inside" ? `${wall}.panel` : wall;
}
