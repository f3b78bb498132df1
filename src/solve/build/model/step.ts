/** The order of work: steps, what is done in each, and how long it takes. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Direction, Face } from "../../design.ts";

export type StepKind = "buy" | "mill" | "make" | "glue-up" | "drill" | "join" | "fit" | "take-off" | "finish" | "check";

/** What dries or rests when a step is done. `binds: "strain"`: only what works hard on it has to wait. */
export interface Wait {
  readonly for: string;
  readonly minutes: number;
  readonly binds?: "strain";
}

/** Clamps that open so far at least. */
export interface Clamping {
  readonly count: number;
  readonly opening: Length;
}

/** Sticks as long as the room between two parts along an axis, which hold them apart. */
export interface Sticks {
  readonly between: readonly [string, string];
  readonly axis: 0 | 1 | 2;
}

/** What the sentences of a step ask for besides tools: what the piece does not keep, or what is of a size that they tell. */
export type Use =
  | { readonly of: "double-sided tape"; readonly holds: "fronts" | "blocks" }
  | { readonly of: "cloth tape" }
  /** As it is sold. */
  | { readonly of: "spare screw"; readonly item: string }
  | { readonly of: "screws in fences" }
  /** Sizes; empty: as the gaps. */
  | { readonly of: "shims"; readonly thick: readonly string[] }
  | { readonly of: "bit for blocks"; readonly size: string };

/** Minutes: of work, from the beginning to the end if hands never rested, and what no order of the steps could be under. */
export interface Timeline {
  readonly bench: number;
  readonly elapsed: number;
  readonly lowerBound: number;
  /** At so many hours a day, nights for sleep. */
  readonly hoursADay: number;
  readonly days: readonly WorkDay[];
}

/** A day of work, or days in which all only dries; counted from 1. */
export interface WorkDay {
  readonly first: number;
  readonly last: number;
  /** Numbers of the first and the last step; null: none. */
  readonly steps: readonly [number, number] | null;
  /** Numbers of steps that were begun before and have their next coat. */
  readonly again: readonly number[];
  /** Minutes. */
  readonly bench: number;
  /** What dries or rests when it is over. */
  readonly dries: readonly string[];
}

export interface Step {
  readonly number: number;
  readonly title: string;
  readonly kind: StepKind;
  /** Unit in hand: id of the body that this step works on, such as "left-end" or "piece". */
  readonly unit: string;
  /** How many equal units this step makes (their actions are all written out). */
  readonly copies: number;
  /** Which way of the finished piece points to the ceiling. */
  readonly up: Direction;
  /** Numbers of steps that must be done before, those before them left out. */
  readonly after: readonly number[];
  /** Those of which a wait must be over as well. */
  readonly afterWait: readonly number[];
  /** Minutes from the beginning of the work, nights included. */
  readonly start: number;
  readonly end: number;
  /** Minutes of work, and waits. */
  readonly bench: number;
  readonly waits: readonly Wait[];
  /** On at once; absent: none. */
  readonly clamps?: readonly Clamping[];
  /** Ids of the jigs and patterns that it uses; absent: none. */
  readonly jigs?: readonly string[];
  /** Cut in this step; absent: none. */
  readonly sticks?: readonly Sticks[];
  /** Absent: one pair of hands does it. */
  readonly hands?: 2;
  readonly text: readonly string[];
  /** Absent: nothing of the kind. */
  readonly uses?: readonly Use[];
  /** Of its text, what brings parts together; absent: nothing. */
  readonly brings?: readonly string[];
  /** It cuts by what is left standing, whatever the stock measures. */
  readonly leaves?: true;
  /** Ids of hardware that it puts on before its time, and of what it takes off again. */
  readonly forNow?: { readonly on: readonly string[]; readonly off: readonly string[] };
  /** Number of the step that it is told as; absent: it is told in full. */
  readonly like?: number;
  readonly cautions: readonly string[];
  readonly reminders: readonly string[];
  readonly actions: readonly Action[];
  /** For the picture, first copy only: what is new in this step, what was there before, and how the new parts travelled. */
  readonly shows: {
    readonly fresh: readonly string[];
    readonly present: readonly string[];
    readonly travel: readonly { readonly parts: readonly string[]; readonly along: Direction }[];
    readonly fasteners: readonly string[];
    /** Which way of the finished piece points up, where the step lays it otherwise than its heads and words of place need. Absent: as the step's. */
    readonly up?: Direction;
    /** What is new lies on the bench as it is by then. Absent: as it is in the piece. */
    readonly as?: OnBench;
  };
}

/**
 * Side by side: as the saw leaves it, the boards and layers of a slab pushed together, square and in its size, or with the cuts that are made
 * by then.
 */
export type OnBench = "sawn" | "glued" | "sized" | "worked";

export type Tool = "straight" | "long" | "angle" | "stubby" | "hammer" | "stapler" | "hand" | "wrench";

/** A stretch of the way that something travels; `distance` null: from far away, or to there. A turn is about a line, by the right hand. */
export type Leg =
  | {
      /** Unit vector of travel. */
      readonly along: Direction;
      readonly distance: Length | null;
    }
  | {
      /** A point, in units of 1/16 µm, and a unit vector. */
      readonly about: readonly [readonly [number, number, number], Direction];
      readonly degrees: number;
    };

export type Action =
  | { readonly do: "make"; readonly blanks: readonly string[] }
  /** `features` index the part's features, `holes` index `Build.holes`. */
  | {
      readonly do: "machine";
      readonly part: string;
      readonly features: readonly number[];
      readonly holes: readonly number[];
      /** Holes of what stands together, bored while it still lies on the bench, and from which side: where they begin or where they come out. */
      readonly ahead?: "from this side" | "from the other side";
    }
  /** Bands are put on in this order. */
  | { readonly do: "band"; readonly part: string; readonly edges: readonly Face[] }
  /** Parts enter along the legs and join the body that holds `to`; an empty `to` starts a body. */
  | {
      readonly do: "add";
      readonly parts: readonly string[];
      readonly to: readonly string[];
      readonly how: "straight" | "tilted";
      readonly legs: readonly Leg[];
    }
  | { readonly do: "glue"; readonly joints: readonly string[]; readonly openMinutes: number }
  | { readonly do: "clamp"; readonly joints: readonly string[] }
  | { readonly do: "release"; readonly joints: readonly string[] }
  | {
      readonly do: "drive";
      readonly fasteners: readonly string[];
      readonly tool: Tool;
      /** The driver's axis where it leans from the screw's; null: in line. */
      readonly axis: Direction | null;
    }
  /** Parts leave together the body that holds `from`, on the legs; fasteners are taken out first. */
  | {
      readonly do: "remove";
      readonly parts: readonly string[];
      readonly from: readonly string[];
      readonly legs: readonly Leg[];
      readonly undrives: readonly string[];
    }
  /** Shelf pins are pulled out of their holes, so that a shelf passes, and pushed in again. */
  | { readonly do: "pull" | "push"; readonly fasteners: readonly string[] }
  /** A coat of finish, counted from 1. */
  | { readonly do: "finish"; readonly parts: readonly string[]; readonly coat: number }
  /** Hardware is put on for good; its holes belong to the step in which its part is bored. */
  | { readonly do: "fit"; readonly hardware: readonly string[]; readonly to: readonly string[] }
  | { readonly do: "measure"; readonly what: string; readonly value: Length; readonly within: Length };
