import type { JointDraft, Method } from "../../../parse/draft.ts";
import { runsOn } from "../slides/runs-on.ts";
import { sideSlides } from "../slides/side-slide.ts";
import { undermountSlides } from "../slides/undermount.ts";
import { bolts } from "./bolt.ts";
import { crossDowels } from "./cross-dowel.ts";
import { cupHinges } from "./cup-hinge.ts";
import { dowels } from "./dowel.ts";
import { figureEights } from "./figure-eight.ts";
import { keepers } from "./keeper.ts";
import { lagScrews } from "./lag.ts";
import { leafHinges } from "./leaf-hinge.ts";
import { movingScrews } from "./moving-screw.ts";
import { nails } from "./nail.ts";
import { shelfPins } from "./pin.ts";
import { pocketScrews } from "./pocket.ts";
import { screws } from "./screw.ts";
import type { Maker } from "./site.ts";

/** How a method fastens. */
export interface FasteningMethod {
  readonly make: Maker;
  /** The wider of the two parts stays free to move across its grain: it holds the points, the other takes the heads. */
  readonly moves?: true;
  /** Its heads stand proud, and may be let in where something else needs their room. */
  readonly sinks?: true;
  /** The parts do not touch: the joined one lies on the fasteners, its ends open, or hangs or runs on hardware. */
  readonly apart?: "resting" | "hinged" | "running";
  /** Has no holes: rows are offered too whose outer ones stand so many steps farther in, all as evenly apart. */
  readonly drawnIn?: readonly number[];
  /** The rows that are offered besides the one described are moved along by so many steps of 3/8 in (10 mm). */
  readonly steps: readonly number[];
}

const usual = { steps: [1, 2] } as const;
const driven = { ...usual, drawnIn: [1, 2, 3] } as const;
const moving = { ...usual, moves: true } as const;
const washers = { ...moving, sinks: true } as const;

/** Every method that needs fasteners of its own. A new one is a file here and a line in this table. */
const METHODS: Partial<Readonly<Record<Method, FasteningMethod>>> = {
  screws: { ...usual, make: screws },
  cleats: { ...usual, make: screws },
  "pocket screws": { ...usual, make: pocketScrews },
  dowels: { ...usual, make: dowels },
  nails: { ...driven, make: (...site) => nails("nail", ...site) },
  brads: { ...driven, make: (...site) => nails("brad", ...site) },
  staples: { ...driven, make: (...site) => nails("staple", ...site) },
  "slotted screws": { ...washers, make: (...site) => movingScrews("slot", ...site) },
  "oversized holes with washers": { ...washers, make: (...site) => movingScrews("oversized", ...site) },
  "buttons in a groove": { ...moving, make: (...site) => keepers("button", false, ...site) },
  "buttons in mortises": { ...moving, make: (...site) => keepers("button", true, ...site) },
  clips: { ...moving, make: (...site) => keepers("clip", false, ...site) },
  "figure-eight fasteners": { ...moving, make: figureEights },
  bolts: { ...usual, make: bolts },
  "bolts and cross dowels": { ...usual, make: crossDowels },
  "lag screws": { ...usual, make: lagScrews },
  // Rows back to back in a divider have to stand two diameters apart, and more.
  // Wherever it runs, its slides are level: only the holes that they are screwed in may be others.
  slides: { make: sideSlides, apart: "running", steps: [] },
  "undermount slides": { make: undermountSlides, apart: "running", steps: [] },
  "runs on": { make: runsOn, apart: "running", steps: [] },
  "shelf pins": { make: shelfPins, apart: "resting", steps: [2, 4] },
  "cup hinges": { make: cupHinges, apart: "hinged", steps: [1, 2, 3, 4] },
  "butt hinges": { make: leafHinges, apart: "hinged", steps: [1, 2, 3, 4] },
  "continuous hinge": { make: leafHinges, apart: "hinged", steps: [] },
};

/** What fastens a joint: its own method, or what is added to glue, laps and housings; null where nothing does. */
export function fasteningOf({ with: { value }, fasteners }: JointDraft): FasteningMethod | null {
  const own = METHODS[value];
  if (own) return own;
  const kind = fasteners?.kind;
  return (kind && kind !== "pin" && METHODS[`${kind}s`]) || null;
}
