/** How far a drawer on wood tips over the front edge of what carries it. In doubles: this only judges. */
import { circlePoint } from "../../../../geometry/index.ts";
import { TOLERANCE } from "../../../../units/length.ts";
import type { Pose } from "../../../design.ts";
import { bodiesOf } from "../../motions/bodies.ts";
import { firstStrike } from "../../motions/strike.ts";
import type { Checked } from "../check.ts";
import { type Drawer, spanAlong } from "./drawers.ts";
import { stopsAfter, stopsIn } from "./stops.ts";

/** Lengths in units. */
export interface Nod {
  /** How far it is open. */
  readonly open: number;
  readonly degrees: number;
  /** How far its front comes down. */
  readonly drop: number;
}

/** Degrees after which nothing more is looked for: it falls. */
const FALLS = 20;
/** Degrees: the first turns of each width find roughly where it is stopped, the others exactly enough. */
const [COARSE, FINE] = [1 / 4, 1 / 64];

/**
 * Opened up to its stop, or by half where nothing stops it. By 0 where its middle still lies on what carries it then: its weight keeps it level.
 * Null where nothing that it runs on lies below it: it hangs in grooves of the case.
 */
export function nodOf(drawer: Drawer, checked: Checked): Nod | null {
  const { axis, out, motion, parts } = drawer;
  const carried = edgeOf(drawer, checked);
  if (!carried) return null;
  const ends = parts.flatMap((part) => spanAlong(part, axis)).map((at) => at * out);
  const [back, front] = [Math.min(...ends), Math.max(...ends)];
  const stops = stopsIn(drawer, checked)
    .map((button) => stopsAfter(button, drawer, checked))
    .filter((end) => typeof end === "number");
  const open = Math.min(...(stops.length > 0 ? stops : [(front - back) / 2]), motion.strikes?.at ?? motion.range);
  if ((front + back) / 2 + open < carried.edge - TOLERANCE) return { open, degrees: 0, drop: 0 };
  const degrees = stoppedAt(drawer, checked, (turn) => tilted(drawer, carried, open, turn));
  return { open, degrees, drop: (front + open - carried.edge) * circlePoint(degrees, 360)[1] };
}

interface Edge {
  /** Along the way out. */
  readonly edge: number;
  readonly up: number;
}

/** The foremost upper edge of what it runs on. */
function edgeOf({ axis, out, motion, parts }: Drawer, { design }: Checked): Edge | null {
  const top = Math.max(...parts.map((part) => spanAlong(part, 2)[1]));
  const held = design.joints.flatMap(({ id, parts: [, hold] }) => (motion.joints.includes(id) ? [hold] : []));
  const edges = design.parts.flatMap((part): readonly Edge[] => {
    const [low, high] = spanAlong(part, axis);
    const up = spanAlong(part, 2)[1];
    return held.includes(part.id) && up < top - TOLERANCE ? [{ edge: out > 0 ? high : -low, up }] : [];
  });
  return edges.reduce<Edge | null>((best, each) => (best === null || each.edge > best.edge ? each : best), null);
}

/** Slid out, and turned about that edge so that its front comes down. */
function tilted({ axis, out }: Drawer, { edge, up }: Edge, open: number, degrees: number): Pose {
  const along = (by: number): [number, number, number] => (axis === 0 ? [by, 0, 0] : [0, by, 0]);
  const [at, shift] = [along(out * (edge - open)), along(out * open)];
  const line: [number, number, number] = axis === 0 ? [0, out, 0] : [-out, 0, 0];
  return { at: degrees, shift, rotate: { about: [[at[0], at[1], up], line], degrees } };
}

/** Degrees at which something that stands still is struck, `FALLS` where nothing is. */
function stoppedAt(
  { motion }: Drawer,
  { design, hardware, fasteners }: Checked,
  pose: (degrees: number) => Pose,
): number {
  const bodies = bodiesOf(design.parts, hardware, fasteners);
  const struck = (from: number, to: number, by: number): number | null => {
    const poses = Array.from({ length: Math.round((to - from) / by) }, (_, i) => pose(from + (i + 1) * by));
    return firstStrike({ ...motion, poses }, bodies, new Map())?.at ?? null;
  };
  const about = struck(0, FALLS, COARSE);
  return about === null ? FALLS : (struck(about - COARSE, about, FINE) ?? about);
}
