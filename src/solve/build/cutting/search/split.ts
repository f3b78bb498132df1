import type { Chance } from "./chance.ts";
import type { Free } from "./free.ts";
import type { Problem, Way } from "./problem.ts";

/** Whether a rip should come first where a part is taken off a free piece, by one of four rules. */
export function ripsFirst(free: Free, way: Way, rule: number, chance: Chance): boolean {
  const [over, beyond] = [free.width - way.width, free.length - way.length];
  if (rule === 0) {
    const [byRip, byCross] = [over * free.length, beyond * free.width];
    return Math.max(byRip, beyond * way.width) >= Math.max(byCross, over * way.length);
  }
  return rule === 1 ? over < beyond : rule === 2 ? chance.next() < 0.5 : free.owner.rip;
}

/**
 * Whether the direction of cutting changes before the part is cut off, as wished if that may be: not beyond the last stage, and the
 * first cuts must make pieces that can be carried. Null where neither way may be.
 */
export function splitOf(free: Free, way: Way, { stages, carry }: Problem, ripFirst: boolean): boolean | null {
  const { owner, stage } = free;
  const root = free.above === null;
  const first = root && owner.kids.length === 0;
  const wished = ripFirst !== owner.rip;
  const may = (across: boolean): boolean => {
    if (across && !first && stage >= stages) return false;
    if (!root || carry === undefined) return true;
    const fits = (width: number, length: number): boolean =>
      Math.min(width, length) <= carry.shorter && Math.max(width, length) <= carry.longer;
    if (fits(owner.width, owner.length)) return true;
    if (across && !first) return fits(free.width, free.length);
    return owner.rip !== across ? fits(way.width, owner.length) : fits(owner.width, way.length);
  };
  return may(wished) ? wished : may(!wished) ? !wished : null;
}
