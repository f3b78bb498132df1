import type { Relaxed } from "../bounds/columns.ts";
import { roundedUp } from "../bounds/round.ts";
import { Dive } from "./dive.ts";
import { type Joint, jointly, sumOf } from "./joint.ts";
import type { Packed, Piece, Problem } from "./problem.ts";
import { Ruin } from "./ruin.ts";
import type { Steps } from "./steps.ts";

/** Steps after which a goal is tried for anew, with other luck. */
const ATTEMPT = 300e6;
/** Steps for putting in what remains when bins of a mixture are filled. */
const MENDING = 20e6;
/** Each attempt takes more steps than it spends in bins, so that those that end at once come to an end. */
const AT_LEAST = 10_000;

/** The best packing so far, and how it is bettered. */
export class Hunt {
  packed: readonly Packed[] = [];
  private readonly problem: Problem;
  private readonly joint: Joint;
  /** Costs differ by this at least. */
  private readonly step: number;
  private seed = 1;

  constructor(problem: Problem) {
    this.problem = problem;
    this.joint = jointly(problem);
    const costs = problem.bins.map((bin) => bin.cost);
    this.step = roundedUp(1e-6, costs);
  }

  get cost(): number {
    return sumOf(this.packed, this.problem);
  }

  /** What is not on hand. */
  get count(): number {
    return this.packed.filter(({ type }) => this.problem.bins[type]?.onHand !== true).length;
  }

  /** Begins with a packing, or with any; false when none is found. */
  begin(start?: readonly Packed[]): boolean {
    const found = start ?? new Ruin(this.joint.problem, 1).reach(Number.POSITIVE_INFINITY, [], { left: 2e6 });
    if (found === null) return false;
    this.packed = found;
    return true;
  }

  /** Looks for less and less cost down to its bound, then for less use of bins. */
  improve(costBound: number, countBound: number, steps: Steps): void {
    const costs = this.problem.bins.map((bin) => bin.cost);
    while (steps.left > 0 && this.cost > costBound) this.cheaper(steps);
    if (this.cost > costBound) return;
    // One size that is bought: the cost is the count.
    if (costs.every((cost) => cost === costs[0] && cost > 0)) return;
    const within = { left: steps.left / 2 };
    while (within.left > 0 && (this.count > countBound || this.count < this.packed.length))
      this.attempt(sumOf(this.packed, this.joint.problem) - 1, within);
  }

  /** The next cost below that of the packing. */
  private get goal(): number {
    return this.cost - this.step;
  }

  private cheaper(steps: Steps, most = ATTEMPT, start = this.packed): void {
    this.attempt((this.goal + 1) * this.joint.unit - 1, steps, most, start);
  }

  private attempt(goal: number, steps: Steps, most = ATTEMPT, start = this.packed): void {
    this.seed += 1;
    const { problem } = this.joint;
    const left = start.toSorted((a, b) => filled(b.root) - filled(a.root));
    while (left.length > 0 && sumOf(left, problem) > goal) left.pop();
    const own = { left: Math.min(steps.left, most) };
    steps.left -= own.left + AT_LEAST;
    const found = new Ruin(problem, this.seed).reach(goal, left, own);
    steps.left += own.left;
    if (found !== null) this.packed = found;
  }

  /** Fills bins as they are in mixtures, and looks for bins for the rest; for as many steps it looks without mixtures. */
  follow(relaxed: Relaxed, costBound: number, steps: Steps): void {
    if (this.problem.parts.some(({ group }) => group !== undefined)) return;
    const dive = new Dive(this.problem);
    if (steps.left < dive.least) return;
    // What comes quickly without mixtures is not waited for.
    this.cheaper(steps, dive.least);
    dive.begin(relaxed, steps);
    for (let dived = 0; steps.left > 0 && this.cost > costBound; ) {
      const before = steps.left;
      dive.learn(this.packed);
      const begun = dive.down(this.goal, steps);
      if (begun !== null) this.cheaper(steps, Math.min(MENDING, before / 20), begun);
      dived += before - steps.left;
      if (dived < ATTEMPT) continue;
      this.cheaper(steps);
      dived = 0;
    }
  }
}

const filled = (piece: Piece): number =>
  piece.part >= 0 ? piece.width * piece.length : piece.kids.reduce((sum, kid) => sum + filled(kid), 0);
