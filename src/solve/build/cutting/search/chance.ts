/** Numbers that look random and are the same in every run (a 32-bit mixer, "mulberry32"). */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** At least 0, less than 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 up to but not including `limit`. */
  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }
}
