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
}
