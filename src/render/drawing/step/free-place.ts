/** A place beside the picture for a circle that shows something larger, and for the words at it. */
import type { Spot } from "../drawing.ts";
import { heading } from "../ink.ts";
import { type Box, boxAround, grown, type Plate, passes } from "../plate.ts";

/** Above or below the circle, for its words; and half of what these take up across. */
const WORDS_HIGH = 13;
const WORDS_HALF = 46;

const STEP = 6;
/** What a leader counts that runs over the picture, for each point of it. */
const ACROSS = 2;

/** Where the words of a circle stand: below it, or above it where the line that ties it to its place would strike them. */
export function wordsAt(at: Spot, [x, y]: Spot, radius: number, tied: boolean): Box {
  const half = Math.max(radius, WORDS_HALF);
  const below = { left: x - half, right: x + half, top: y + radius, bottom: y + radius + WORDS_HIGH };
  if (!tied || !passes([at, [x, y]], below)) return below;
  return { ...below, top: y - radius - WORDS_HIGH, bottom: y - radius };
}

/** A near place for a circle that covers nothing, its leader clear of the picture where that can be. `tied`: with a line to what it shows. */
export function freePlace(
  at: Spot,
  radius: number,
  larger: number,
  { plate, ground }: { readonly plate: Plate; readonly ground: (spot: Spot) => number },
  tied = true,
): Spot | null {
  const { x, y, width, height } = plate.frame;
  const half = Math.max(radius, WORDS_HALF);
  let best: { readonly spot: Spot; readonly cost: number } | null = null;
  for (let cx = x + half + 1; cx <= x + width - half - 1; cx += STEP)
    for (let cy = y + radius + 1; cy <= y + height - radius - 1; cy += STEP) {
      const { along, distance } = heading(at, [cx, cy]);
      if (distance < radius * (1 + 1 / larger) + 6 || (best && distance >= best.cost)) continue;
      const words = wordsAt(at, [cx, cy], radius, tied);
      if (words.top < y + 1 || words.bottom > y + height - 1) continue;
      const circle = boxAround(cx, cy, 2 * half, 2 * radius);
      const box = { ...circle, top: Math.min(circle.top, words.top), bottom: Math.max(circle.bottom, words.bottom) };
      const round = { ...box, left: cx - radius, right: cx + radius };
      if (!plate.isFree(grown(box, 0.5)) || plate.linesThrough(round) > 0 || plate.linesThrough(words) > 0) continue;
      if (SAMPLES.some(([dx, dy]) => ground([cx + dx * radius, cy + dy * radius]) > 0)) continue;
      const leader = distance - radius * (1 + 1 / larger);
      const over = LEADER.reduce((sum, t) => {
        const far = radius / larger + t * leader;
        return sum + ground([at[0] + along[0] * far, at[1] + along[1] * far]);
      }, 0);
      const cost = distance + (ACROSS * over * leader) / LEADER.length;
      if (!best || cost < best.cost) best = { spot: [cx, cy], cost };
    }
  return best?.spot ?? null;
}

const LEADER = [0.1, 0.3, 0.5, 0.7, 0.9] as const;
const SAMPLES: readonly Spot[] = [-1, -0.5, 0, 0.5, 1].flatMap((dx) =>
  [-1, -0.5, 0, 0.5, 1].map((dy): Spot => [dx, dy]),
);
