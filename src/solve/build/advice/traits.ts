/** What a piece is like, as far as advice depends on it. Lengths in mm, masses in kg. */
import type { Build, BuiltMotion } from "../../build.ts";
import { indexOf } from "../../design/space.ts";
import { around } from "../checks/standing/weight-and-feet.ts";

export interface Traits {
  readonly build: Build;
  /** Has hardware of one of these kinds. */
  readonly has: (...kinds: readonly string[]) => boolean;
  /** Whether one of these joints is in it. */
  readonly joined: (...methods: readonly string[]) => boolean;
  readonly doors: boolean;
  readonly drawers: boolean;
  /** Lids and flaps: what turns about a level line, or is held by a lid support. */
  readonly lids: boolean;
  /** Holds things: has doors, drawers, lids or shelves. */
  readonly stores: boolean;
  /** Screwed to a wall, and so off the floor or not. */
  readonly onWall: boolean;
  /** Stands on feet or legs that are apart, each small where it meets the floor; not on a plinth, a frame or the edges of boards. */
  readonly onFeet: boolean;
  /** Storage that could tip over: as high as the scope of ASTM F2057-23, 27 in, or with drawers, which are climbed; not on a wall. */
  readonly canTip: boolean;
  /** Of solid wood, at least in part. */
  readonly solid: boolean;
  /** Solid wood moves on what holds it. */
  readonly slides: boolean;
  /** A panel of solid wood that is free in its frame. */
  readonly floats: boolean;
  /** Shallow enough to be hung on a wall. */
  readonly shallow: boolean;
  /** Has a back, panel or boards, that is only nailed, stapled or screwed on: it can be loosened. */
  readonly looseBack: boolean;
  readonly high: number;
  readonly mass: number;
}

/** mm. What stands deeper is not hung on a wall (common practice, no source). */
const SHALLOW = 305;

/** mm */
const TIPS = 27 * 25.4;

export function traitsOf(build: Build): Traits {
  const { design, hardware, motions, joints, parts } = build;
  const kinds = new Set(hardware.map(({ item }) => item.kind));
  const methods: ReadonlySet<string> = new Set(joints.map(({ method }) => method));
  const has = (...some: readonly string[]): boolean => some.some((kind) => kinds.has(kind));
  const joined = (...some: readonly string[]): boolean => some.some((method) => methods.has(method));
  const swings = motions.filter(({ kind }) => kind === "swing");
  const doors = swings.some(upright);
  const drawers = motions.some(({ kind }) => kind === "slide");
  const lids = swings.some((each) => !upright(each)) || has("lid support");
  const solidStock = new Set(design.stock.filter(({ movement }) => movement).map(({ name }) => name));
  const bounds = parts.length === 0 ? null : around(parts.map(({ solid }) => solid));
  const stores = doors || drawers || lids || joined("shelf pins");
  const onWall = has("wall screw");
  const high = bounds === null ? 0 : bounds.high[2] - bounds.low[2];
  return {
    ...{ build, has, joined, doors, drawers, lids, stores, onWall, high },
    canTip: stores && !onWall && (high >= TIPS || drawers),
    onFeet: bounds !== null && standsOnFeet(parts, bounds.low[2]),
    solid: parts.some(({ stock }) => solidStock.has(stock)),
    shallow: bounds !== null && bounds.high[1] - bounds.low[1] <= SHALLOW,
    looseBack:
      bounds !== null &&
      parts
        .filter((part) => isLooseBack(part, joints, bounds.high[1]))
        .reduce((so, { solid }) => so + fromBehind(around([solid])), 0) >
        fromBehind(bounds) / 2,
    slides: design.joints.some(
      ({ kind, still }) =>
        kind === "sliding" && parts.some(({ id, stock }) => id === still?.part && solidStock.has(stock)),
    ),
    floats: joints.some(
      ({ kind, method, parts: [panel] }) =>
        kind === "floating" &&
        method === "groove" &&
        parts.some(({ id, stock }) => id === panel && solidStock.has(stock)),
    ),
    mass: parts.reduce((so, { mass }) => so + mass, 0),
  };
}

const FASTENED: readonly string[] = ["nails", "brads", "staples", "screws", "rabbet"];

/** How much of the back is seen to be covered, in mm². */
const fromBehind = ({ low, high }: ReturnType<typeof around>): number => (high[0] - low[0]) * (high[2] - low[2]);

/** A board or panel at the back, in depth no more than its thickness, whose joints are not glued. */
function isLooseBack({ id, axes, solid }: Build["parts"][number], joints: Build["joints"], back: number): boolean {
  if (indexOf(axes.thickness) !== 1 || around([solid]).high[1] < back - NEAR_BACK) return false;
  const own = joints.filter(({ parts: [part] }) => part === id);
  return own.length > 0 && own.every(({ glue, method }) => !glue && FASTENED.includes(method));
}

/** Backs lie so far in at most, mm. */
const NEAR_BACK = 20;

/** As wide as a foot is at most, and as far from the floor as still stands on it; mm. */
const [FOOT, ON_FLOOR] = [150, 1];

function standsOnFeet(parts: Build["parts"], floor: number): boolean {
  const standing = parts.map(({ solid }) => around([solid])).filter(({ low }) => low[2] <= floor + ON_FLOOR);
  return standing.every(({ low, high }) => high[0] - low[0] <= FOOT && high[1] - low[1] <= FOOT);
}

/** A door turns about an upright line. */
function upright({ poses }: BuiltMotion): boolean {
  const [, way] = poses.at(-1)?.rotate.about ?? [
    [0, 0, 0],
    [0, 0, 1],
  ];
  const [x, y, z] = way as readonly [number, number, number];
  return z * z > x * x + y * y;
}
