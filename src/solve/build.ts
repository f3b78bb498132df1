/**
 * Everything that follows from a Design: what to buy and cut, how it lies on the boards, in which order it goes together. Types only.
 * A Build is what `--record` prints (see docs) and what every page is drawn from.
 */
import type { Finding } from "../findings/finding.ts";
import type { Length } from "../units/length.ts";
import type { Advice, AdviceOn } from "./build/model/advice.ts";
import type { Check } from "./build/model/check.ts";
import type { DrillRow, FastenerRow } from "./build/model/drilling.ts";
import type { FinishRow, FinishSchedule } from "./build/model/finish.ts";
import type { Jig } from "./build/model/jig.ts";
import type { LayoutProof } from "./build/model/layout-proof.ts";
import type { BuiltMotion } from "./build/model/motion.ts";
import type { FreeSize, Otherwise } from "./build/model/otherwise.ts";
import type { Pattern } from "./build/model/pattern.ts";
import type { Finishing, Purchase } from "./build/model/purchase.ts";
import type { Step, Timeline } from "./build/model/step.ts";
import type { ChangingSizes, Reserved, Slope } from "./build/model/thickness.ts";
import type { Design, Fastener, Hardware, Hole, Joint, Part, Stock } from "./design.ts";

export interface Build {
  readonly design: Design;
  /** The design's parts with their marks and names, in cut-list order; thickness, width and length as printed. */
  readonly parts: readonly BuiltPart[];
  readonly cutList: readonly CutLine[];
  readonly blanks: readonly Blank[];
  /** In the order of the cut list; absent where everything is cut from it. */
  readonly later?: readonly LaterCut[];
  /** For each stock with a range of thickness; absent where none has one. */
  readonly changing?: readonly ChangingSizes[];
  readonly joints: readonly BuiltJoint[];
  readonly fasteners: readonly Fastener[];
  readonly holes: readonly Hole[];
  /** Every hole, bit by bit. */
  readonly drilling: readonly DrillRow[];
  /** Every fastener, by length. */
  readonly fastenerTable: readonly FastenerRow[];
  readonly hardware: readonly Hardware[];
  readonly motions: readonly BuiltMotion[];
  /** Parts that lie in it and do not come out: they are carried along. Absent where there are none. */
  readonly liesIn?: readonly string[];
  readonly jigs?: readonly Jig[];
  /** Absent where nothing is easier traced than measured. */
  readonly patterns?: readonly Pattern[];
  readonly layouts: readonly Layout[];
  readonly layoutProof: readonly LayoutProof[];
  readonly purchases: readonly Purchase[];
  /** Absent where the plan says nothing of finish. */
  readonly finishing?: readonly Finishing[];
  /** Absent where there is nothing to finish. */
  readonly finishSchedule?: FinishSchedule;
  readonly steps: readonly Step[];
  readonly timeline: Timeline;
  readonly tools: readonly { readonly tool: string; readonly why: string }[];
  readonly checks: readonly Check[];
  readonly advice?: AdviceOn;
  /** Under other options; absent where there is nothing else to choose, or it was not asked for. */
  readonly otherwise?: readonly Otherwise[];
  readonly freeSizes?: readonly FreeSize[];
  readonly findings: readonly Finding[];
}

export interface BuiltPart extends Part {
  readonly mark: string;
  /** Printed name of its cut-list line: "Left leg". */
  readonly name: string;
  /** kg */
  readonly mass: number;
  /** The step after which the parts around it stand, so that it can be measured; null where it is cut from the list. */
  readonly cutAfterStep?: number | null;
}

/** A line of the cut list that waits until the piece tells its size. */
export interface LaterCut {
  readonly mark: string;
  /** The first step after which it may be cut, if there is one, and the steps in which it is; of a pane those in which it is ordered. */
  readonly after: number | null;
  readonly steps: readonly number[];
  readonly ordered?: true;
  /** Sentences: where to measure, what to take off. */
  readonly measure: readonly string[];
}

export interface BuiltJoint extends Joint {
  readonly fasteners: readonly string[];
}

export interface CutLine {
  readonly mark: string;
  readonly name: string;
  readonly stock: string;
  readonly parts: readonly string[];
  /** As printed: rounded to the plan's precision, tenons and tongues included. */
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
  /** By stock with a range of thickness; absent where none has one. */
  readonly slope?: ReadonlyMap<string, Slope>;
  /** Mark of the line of which this is the mirror image. */
  readonly mirrorOf: string | null;
  /** "2 tenons 1/4 × 1/2, included in the length" */
  readonly notes: readonly string[];
}

/** What the saw cuts from a board: a part, a board or layer of one that is glued up, or a strip or a piece that gives several. */
export interface Blank {
  readonly id: string;
  readonly part: string;
  /** The other parts of a strip, in their order in it; of a piece that is planed whole, in any. */
  readonly alsoParts?: readonly string[];
  /** Marks of a strip's parts are put together: "C + D". */
  readonly mark: string;
  readonly stock: string;
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
  /** Where the wood's grain runs on the blank; "free" where it does not matter. */
  readonly grain: "length" | "width" | "free";
  readonly why: "as finished" | "glue-up" | "rough" | "cut later" | "largest";
  /** What it is larger by than the part as drawn, for stock of another thickness; absent: nothing. */
  readonly reserved?: readonly Reserved[];
  /** Width of a board of a slab when its edges are jointed. */
  readonly jointed?: Length;
  /** It is planed in one piece, which a machine takes, and parted afterwards. Absent: each is planed by itself. */
  readonly planedWhole?: PlanedWhole;
  /** Blanks of one name come from one sheet where that can be. */
  readonly alike?: string;
}

/** So many of a rough size side by side and in line, with waste where they do not fill the piece. */
export interface PlanedWhole {
  readonly beside: number;
  readonly inLine: number;
  readonly width: Length;
  readonly length: Length;
}

/** One sheet or board, seen from above: x over its width, y along its length (the grain). */
export interface Layout {
  readonly stock: string;
  readonly kind: "sheet" | "board";
  readonly source: "buy" | "on hand";
  /** The maker's name for a piece on hand. */
  readonly piece?: string;
  /** Cents; absent where no price is known, or nothing is bought. */
  readonly price?: number;
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
  readonly kerf: Length;
  /** Taken off the factory edges at x = 0 and y = 0 before the first cut, which divides what is left. Zero on boards: their first cut trims the end at y = 0. */
  readonly squaring: Length;
  readonly placements: readonly Placement[];
  /** In the order of sawing. `from`–`to` is the side of the kerf nearer the origin; the kerf lies beyond it. */
  readonly cuts: readonly Cut[];
  readonly offcuts: readonly Rectangle[];
}

export interface Rectangle {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly length: Length;
}
export interface Placement extends Rectangle {
  readonly blank: string;
  readonly mark: string;
  /** The blank's length lies over the board's width. */
  readonly turned: boolean;
}
export interface Cut {
  readonly number: number;
  /** A rip runs along the board's length (constant x), a crosscut over its width (constant y). */
  readonly kind: "rip" | "crosscut";
  readonly from: readonly [Length, Length];
  readonly to: readonly [Length, Length];
  /** Distance from the piece's near edge: the setting of fence or stop. */
  readonly fence: Length;
}

export type { Jig, Uses } from "./build/model/jig.ts";
export type { FreeSize, Otherwise } from "./build/model/otherwise.ts";
export type { CurvePattern, HolePattern, Pattern, Side } from "./build/model/pattern.ts";
export type {
  Action,
  Clamping,
  Leg,
  OnBench,
  Step,
  StepKind,
  Sticks,
  Timeline,
  Tool,
  Wait,
  WorkDay,
} from "./build/model/step.ts";
export type {
  Advice,
  BuiltMotion,
  ChangingSizes,
  Check,
  Design,
  DrillRow,
  Fastener,
  FastenerRow,
  Finishing,
  FinishRow,
  Hole,
  Joint,
  LayoutProof,
  Part,
  Purchase,
  Stock,
};
