import type { Span } from "../../findings/span.ts";
import { from, type Settings, type Value, writer } from "../expand/make.ts";
import type { Site } from "./assembly.ts";
import type { Divider } from "./divider-settings.ts";

/** What stands round a space, by the names of the parts: what its dividers and shelves are joined to. */
export interface Bounds {
  readonly left?: string;
  readonly right?: string;
  readonly bottom?: string;
  readonly top?: string;
  /** A rail at the back beside that which closes it above. */
  readonly topBehind?: string;
}

/** How openings lie: side by side, or one below the other. */
export type Way = "across" | "down";

/** What stands between two openings, with the space that it divides and what stands round that. */
export interface Between {
  readonly name: string;
  readonly said: Divider | null;
  readonly region: string;
  readonly way: Way;
  /** Statements of its place in the direction in which the openings lie: it touches one of them. */
  readonly touching: Settings;
  readonly bounds: Bounds;
  /** A drawer is above or below it, or beside it: nobody would call it a shelf. */
  readonly drawers?: boolean;
}

/** How a space is divided: what stands between two openings. */
export interface Dividing {
  /** What those are called, with a number. */
  readonly word: (way: Way) => string;
  /** They have places of their own, from which the sizes of the openings follow. */
  readonly placed?: true;
  readonly put: (between: Between, making: Making) => void;
}

/** Parts, spaces and joints that an assembly has so far. */
export interface Making {
  readonly site: Site;
  readonly entries: Record<string, Settings>;
  readonly joints: Settings[];
  /** Fixed shelves and dividers that end at the back: a back that is nailed is nailed to them too. */
  readonly reaching: string[];
  readonly stock: Value;
  readonly join: Settings;
  /** The band on the front edges of what stands in it. */
  readonly edge: Settings;
  /** Its sides are groups of posts and panels: whether the panels are flush with the posts inside. */
  readonly posts?: "flush inside" | "apart";
  /** How it is divided, if otherwise than a case. */
  readonly dividing?: Dividing;
  /** What stands in the case behind a member of a face frame, by its name in the whole piece. */
  readonly behind?: (member: string) => string | undefined;
}

/** What has a site, and collects parts and joints. */
export interface Collecting {
  readonly site: Site;
  readonly entries: Record<string, Settings>;
  readonly joints: Settings[];
}

/** Makes something of one setting: parts, spaces, joints and formulas of it point there, and those of a setting inside it further in. */
export function within<M extends Collecting, T>(at: Span | undefined, making: M, make: (inner: M) => T): T {
  if (at === undefined) return make(making);
  const site: Site = { ...making.site, at, where: { ...making.site.where, at }, write: writer(at) };
  const inner: M = { ...making, site, entries: {}, joints: [] };
  const result = make(inner);
  for (const [name, made] of Object.entries(inner.entries)) making.entries[name] = from(at, made);
  making.joints.push(...inner.joints.map((joint) => from(at, joint)));
  return result;
}

/** A name as the whole piece knows it: a drawer has sides of its own. */
export const whole = (name: string, { path }: Site): string => [...path, name].join(".");

/**
 * The part of a wall that carries something. Of a side made of posts and a panel, hinges go on the front post, slides on the panel; runners and pins on the panel
 * where it is flush inside, so that their screws keep clear of what joins it to the posts, and else on the posts.
 */
export function carrier(wall: string, what: "hinges" | "slides" | "pins" | "runners", { posts }: Making): string {
  if (!posts || !/^(left|right)-side$/.test(wall)) return wall;
  if (what === "hinges") return `${wall}.front-post`;
  return what === "slides" || posts === "flush inside" ? `${wall}.panel` : wall;
}

/** The same as the whole piece knows it; what slides and runners are screwed to stands behind a face frame. */
export const wholeCarrier = (wall: string, what: "hinges" | "slides" | "runners", making: Making): string =>
  (what === "hinges" ? undefined : making.behind?.(wall)) ?? whole(carrier(wall, what, making), making.site);

/** How the parts of a door or a drawer come to their sizes. Panes are bought in theirs. */
export const comesToSize = (entries: Record<string, Settings>, cut: Value | undefined): void => {
  for (const [name, entry] of Object.entries(entries))
    if (cut !== undefined && entry.kind !== "space" && entry.called !== "pane") entries[name] = { ...entry, cut };
};

/** Until the opening can be measured. */
export const TO_OPENING = "to the opening";
