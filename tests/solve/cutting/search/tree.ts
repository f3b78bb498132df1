import type { Packed, Piece, Problem } from "../../../../src/solve/build/cutting/search/problem.ts";

/** What is wrong with a packing: parts missing, twice or too large for their place, strips that need more than there is, too many stages. */
export function wrongIn(problem: Problem, packed: readonly Packed[]): readonly string[] {
  const wrong: string[] = [];
  const seen = new Map<number, number>();
  const walk = (piece: Piece, width: number, length: number, stage: number): void => {
    if (piece.part >= 0) {
      seen.set(piece.part, (seen.get(piece.part) ?? 0) + 1);
      const way = problem.parts[piece.part]?.ways[piece.way];
      if (way === undefined || way.width > width || way.length > length) wrong.push(`part ${piece.part} does not fit`);
      return;
    }
    const [only] = piece.kids;
    const trims = piece.kids.length === 1 && only !== undefined && only.part >= 0;
    if (stage > problem.stages && !trims) wrong.push(`stage ${stage}`);
    let used = 0;
    for (const kid of piece.kids) {
      used += piece.rip ? kid.width : kid.length;
      walk(kid, piece.rip ? kid.width : width, piece.rip ? length : kid.length, stage + 1);
    }
    if (used > (piece.rip ? width : length)) wrong.push("strips need more than there is");
  };
  for (const { type, root } of packed) {
    const bin = problem.bins[type];
    walk(root, bin?.width ?? 0, bin?.length ?? 0, 1);
  }
  for (const part of problem.parts.keys())
    if (seen.get(part) !== 1) wrong.push(`part ${part} is there ${seen.get(part) ?? 0} times`);
  for (const [type, { most }] of problem.bins.entries())
    if (packed.filter((each) => each.type === type).length > most) wrong.push(`more of bin ${type} than there are`);
  return wrong;
}
