/** Room behind a piece for what swings past its back. */
import { UNITS_PER_MM } from "../../../units/length.ts";
import { moveOf } from "../motions/move.ts";
import type { Traits } from "./traits.ts";

/** Less is no more than the play of a chest that is pushed to the wall; and what is left free besides. Millimetres, common practice, no source. */
const [LEAST, FREE] = [2, 6];
/** Degrees. */
const UPRIGHT = 90;
/** Told in steps of half an inch or a centimetre, in mm. */
const STEP = { inch: 12.7, mm: 10 } as const;

/** "Keep its back 1 1/2 in from the wall at least: …"; null where nothing swings past it. */
export function behind({ build, onWall }: Traits, print: (mm: number) => string): string | null {
  const solids = new Map(build.parts.map(({ id, solid }) => [id, solid]));
  const back = Math.max(...build.parts.map(({ solid }) => solid.high[1]));
  const [far] = build.motions
    .filter(({ kind }) => kind !== "slide")
    .map(({ kind, moves, poses }) => {
      const corners = moves.flatMap((id) =>
        (solids.get(id)?.pieces ?? []).flatMap(({ vertices }) => vertices.map(({ x, y, z }) => [x, y, z] as const)),
      );
      // A lid leans on the wall, or on its support, when it stands upright.
      const reach = poses
        .filter(({ at }) => kind === "swing" || at <= UPRIGHT)
        .map((pose) => {
          const { point } = moveOf(pose);
          return corners.reduce((so, at) => Math.max(so, point(at)[1]), back);
        });
      return { what: kind === "swing" ? "door" : "lid", by: (Math.max(...reach) - back) / UNITS_PER_MM };
    })
    .toSorted((a, b) => b.by - a.by);
  if (onWall || !far || far.by < LEAST) return null;
  const step = STEP[build.design.units];
  const clear = Math.ceil((far.by + FREE) / step) * step;
  return `Keep its back ${print(clear)} from the wall at least: its ${far.what} swings ${print(far.by)} behind it when it is opened.`;
}
