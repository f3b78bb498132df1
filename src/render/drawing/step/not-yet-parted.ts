/** Several parts that are still one piece when the others have their size. */
import type { Blank, Build, CutLine, Step } from "../../../solve/build.ts";
import { isCutLater } from "../../../solve/design/making/plain.ts";

/** The pieces that the parts of a line are planed in, in their new thickness, where these are cut to fit in a later step; none where they are parted. */
export function notYetParted(
  { blanks, parts }: Build,
  { kind }: Step,
  { parts: ids, thickness }: CutLine,
): readonly Blank[] {
  const first = parts.find(({ id }) => id === ids[0]);
  if (kind !== "mill" || !first || !isCutLater(first)) return [];
  return blanks
    .filter(
      ({ part, alsoParts = [], planedWhole }) => planedWhole && [part, ...alsoParts].some((id) => ids.includes(id)),
    )
    .map((blank) => ({ ...blank, thickness }));
}
