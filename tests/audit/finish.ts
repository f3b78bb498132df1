/** Promise 3: coats one after another, on what lies open, and on what moves in its groove before it is built in. */
import type { Model } from "./model.ts";
import type { Replay } from "./moments.ts";
import { type Violations, violation } from "./violation.ts";

export function* finish({ record }: Model, { moments }: Replay): Violations {
  const boards = new Set(
    record.layouts
      .filter(({ kind }) => kind === "board")
      .flatMap(({ placements }) =>
        placements.flatMap(({ blank }) => record.blanks.find(({ id }) => id === blank)?.stock ?? []),
      ),
  );
  for (const part of record.parts) {
    const coats = moments.flatMap(({ action }, i) =>
      action.do === "finish" && action.parts.includes(part.id) ? [{ coat: action.coat, i }] : [],
    );
    if (coats.length === 0) continue;
    if (coats.some(({ coat }, i) => coat !== i + 1))
      yield violation("coats go on in order", part.id, `gets coats ${coats.map(({ coat }) => coat).join(" ")}`);
    const added = moments.findIndex(({ action }) => action.do === "add" && action.parts.includes(part.id));
    const floats = record.joints.some(
      ({ parts: [panel], method, glue }) => panel === part.id && method === "groove" && !glue,
    );
    if (floats && boards.has(part.stock) && coats.some(({ i }) => i > added))
      yield violation("panels are finished first", part.id, "is finished when it is in its grooves");
    const shaped = moments.findLastIndex(
      ({ action }) =>
        (action.do === "band" && action.part === part.id) ||
        (action.do === "machine" && action.part === part.id && action.holes.some((i) => record.holes[i]?.atBench)),
    );
    if (coats.some(({ i }) => i < shaped))
      yield violation("coats go on in order", part.id, "is shaped or bored after its finish");
  }
}
