import { Chance } from "./chance.ts";
import { type Bin, Placing } from "./placing.ts";
import { division, type Packed, type Piece, type Problem, partsIn } from "./problem.ts";
import type { Steps } from "./steps.ts";
import { takenOut } from "./take-out.ts";

/** How many turns back a bin may be worth as little as. */
const HISTORY = 20;
/** What a turn counts for each part. */
export const PER_PART = 15;
/** How often each part is put in in a manner of its own. */
const VARIOUS = 0.5;
/** Placing has its own count; here the parts are what takes time. */
const UNCOUNTED: Steps = { left: 0 };

/** What a value is divided by: nothing, the root of the area, the area. */
const BY_AREA: readonly ((area: number) => number)[] = [() => 1, Math.sqrt, (area) => area];

/** Fills single bins with parts that are worth much together: some are taken out and others put in, over and over. */
export class Filler {
  private readonly problem: Problem;
  private readonly chance: Chance;
  private readonly placing: Placing;
  private readonly areas: readonly number[];
  private readonly keys: Float64Array;

  constructor(problem: Problem, seed: number) {
    this.problem = problem;
    this.chance = new Chance(seed);
    this.placing = new Placing(problem, this.chance);
    this.areas = problem.parts.map(({ ways: [way] }) => (way?.width ?? 1) * (way?.length ?? 1));
    this.keys = new Float64Array(problem.parts.length);
  }

  /** Bins of a type with some of the parts, each worth more than `least`; `values` are those of all parts. */
  fill(
    type: number,
    parts: readonly number[],
    values: readonly number[],
    least: number,
    turns: number,
    steps: Steps,
  ): readonly Packed[] {
    const { width = 0, length = 0 } = this.problem.bins[type] ?? {};
    const empty = division(false, width, length, 0, []);
    const found: Packed[] = [];
    const memory = new Float64Array(HISTORY);
    let [root, value] = [empty, 0];
    for (let turn = 0; turn < turns && steps.left > 0; turn += 1) {
      steps.left -= PER_PART * parts.length;
      const tried = this.changed(type, root, empty, parts, values);
      let worth = 0;
      for (const part of partsIn(tried)) worth += values[part] as number;
      const before = memory[turn % HISTORY] as number;
      if (worth >= value || worth >= before) {
        [root, value] = [tried, worth];
        if (worth > least) found.push({ type, root });
      }
      memory[turn % HISTORY] = Math.max(before, value);
    }
    return found;
  }

  /** A bin without some of its parts, and with others where they go. */
  private changed(type: number, root: Piece, empty: Piece, parts: readonly number[], values: readonly number[]): Piece {
    const { chance, placing } = this;
    const left = root.kids.length === 0 ? null : takenOut(root, chance).left;
    const bins = [placing.bin(type, left ?? empty)];
    const there = new Set(left === null ? [] : partsIn(left));
    const others = parts.filter((part) => !there.has(part));
    this.sort(others, values);
    const manner = placing.manner();
    const various = chance.next() < VARIOUS;
    for (const part of others)
      if (!placing.tooLarge(part, bins[0] as Bin))
        placing.place(bins, part, various ? placing.manner() : manner, UNCOUNTED);
    return bins[0]?.root ?? empty;
  }

  /** The most valuable first, or those for their area, more or less. */
  private sort(parts: number[], values: readonly number[]): void {
    const { chance, keys, areas } = this;
    const sizeOf = BY_AREA[chance.below(BY_AREA.length)] ?? Math.sqrt;
    const share = chance.next();
    const noise = share * share;
    for (const part of parts)
      keys[part] = ((values[part] as number) / sizeOf(areas[part] as number)) * (1 - noise * chance.next());
    parts.sort((a, b) => (keys[b] as number) - (keys[a] as number) || a - b);
  }
}
