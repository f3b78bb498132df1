/** How the weight on a seat goes down to the floor, part by part. Millimetres, newtons. */
import { type AxisIndex, indexOf } from "../../../design/space.ts";
import type { Design, Part } from "../../../design.ts";
import type { Strip } from "./beam.ts";
import { bodyOf, type Support } from "./body.ts";
import { isFlat, shelfOf } from "./shelf.ts";
import { type Span, spanOf } from "./span.ts";

/** A part that bends: how it reaches, and what lies on it, in the coordinates of the piece. */
export interface Beam {
  readonly part: Part;
  readonly along: AxisIndex;
  readonly span: Span;
  readonly strips: readonly Strip[];
}

/** From seat to rail to rail to leg is three. */
const MOST_LEVELS = 4;

/** Every part that bends under a force spread over some boards, those boards first. Boards that nothing holds up are left out. */
export function beamsUnder(boards: readonly Part[], force: number, design: Design): readonly Beam[] {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const area = (part: Part): number => {
    const [[a, b], [c, d]] = [bodyOf(part, 0), bodyOf(part, 1)];
    return (b - a) * (d - c);
  };
  const whole = boards.reduce((so, board) => so + area(board), 0);
  const beams = new Map<string, Beam>();
  let level = new Map<string, readonly Strip[]>();
  for (const board of boards) {
    const beam = reachOf(board, design);
    if (beam === null) continue;
    const [from, to] = bodyOf(board, beam.along);
    level.set(board.id, [{ from, to, force: (force * area(board)) / whole }]);
  }
  for (let depth = 0; depth < MOST_LEVELS && level.size > 0; depth += 1) {
    const next = new Map<string, readonly Strip[]>();
    for (const [id, strips] of level) {
      const part = parts.get(id) as Part;
      const known = beams.get(id) ?? reachOf(part, design);
      if (known === null) continue;
      beams.set(id, { ...known, part, strips: [...(beams.get(id)?.strips ?? []), ...strips] });
      const total = strips.reduce((so, strip) => so + strip.force, 0);
      for (const { support, share } of shares(known.span.supports, bodyOf(part, known.along))) {
        const under = parts.get(support.by);
        const runs = under && beamAxis(under);
        if (under === undefined || runs === undefined || beams.has(support.by)) continue;
        const [from, to] = runs === known.along ? [support.from, support.to] : [support.low, support.high];
        next.set(support.by, [...(next.get(support.by) ?? []), { from, to, force: total * share }]);
      }
    }
    level = next;
  }
  return [...beams.values()];
}

/** The direction in which a part bends under weight; none for what stands upright. */
function beamAxis(part: Part): 0 | 1 | undefined {
  const along = indexOf(part.axes.length);
  return along === 2 ? undefined : along;
}

function reachOf(part: Part, design: Design): Omit<Beam, "part" | "strips"> | null {
  const stock = design.stock.find(({ name }) => name === part.stock);
  if (stock && isFlat(part)) {
    const shelf = shelfOf(part, stock, design);
    return shelf && { along: shelf.along, span: shelf.span };
  }
  const along = beamAxis(part);
  const span = along === undefined ? null : spanOf(part, along, design);
  return span && along !== undefined ? { along, span } : null;
}

/** What each support takes: the stretch that is nearer to it than to the next; supports at one place share theirs. */
function shares(supports: readonly Support[], [low, high]: readonly [number, number]) {
  const byPart = new Map<string, Support>();
  for (const each of supports) {
    const before = byPart.get(each.by) ?? each;
    byPart.set(each.by, {
      by: each.by,
      from: Math.min(before.from, each.from),
      to: Math.max(before.to, each.to),
      low: Math.min(before.low, each.low),
      high: Math.max(before.high, each.high),
    });
  }
  const all = [...byPart.values()];
  const centre = ({ from, to }: Support): number => (from + to) / 2;
  const places = [...new Set(all.map(centre))].sort((a, b) => a - b);
  const stretch = (i: number): number => {
    const here = places[i] as number;
    const from = i === 0 ? low : ((places[i - 1] as number) + here) / 2;
    const to = i === places.length - 1 ? high : ((places[i + 1] as number) + here) / 2;
    return (to - from) / (high - low);
  };
  return all.map((support) => {
    const i = places.indexOf(centre(support));
    const sharing = all.filter((other) => centre(other) === centre(support)).length;
    return { support, share: stretch(i) / sharing };
  });
}
