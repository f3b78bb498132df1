/** Bending of beams that lie loosely on two supports. Millimetres, newtons, and N/mm² (1 GPa is 1000). */

/** The load that a mass makes, N for one kg. */
export const GRAVITY = 9.80665;

/** A load spread evenly over a part of a beam, measured from its left support. */
export interface Strip {
  readonly from: number;
  readonly to: number;
  readonly force: number;
}

/** Second moment of a section `broad` across and `high` up, mm⁴. */
export const secondMoment = (broad: number, high: number): number => (broad * high * high * high) / 12;

/**
 * How far the middle of a beam goes down. A load P at a, in the near half, lowers it by P a (3 L² - 4 a²) / (48 E I) (Macaulay's beam, any
 * handbook); a strip is that, summed over its length. One strip over everything gives 5 w L⁴ / (384 E I).
 */
export function middleSag(strips: readonly Strip[], span: number, stiffness: number): number {
  const half = span / 2;
  const upTo = (a: number): number => 1.5 * span * span * a * a - a * a * a * a;
  const within = (from: number, to: number): number => {
    const [low, high] = [Math.max(0, from), Math.min(half, to)];
    return high > low ? upTo(high) - upTo(low) : 0;
  };
  const sum = strips.reduce((so, { from, to, force }) => {
    if (to <= from) return so;
    return so + (force / (to - from)) * (within(from, to) + within(span - to, span - from));
  }, 0);
  return sum / (48 * stiffness);
}

/** 5 W L³ / (384 E I) for a force spread over the whole span. */
export const evenSag = (force: number, span: number, stiffness: number): number =>
  middleSag([{ from: 0, to: span, force }], span, stiffness);

/** A rectangle of a section: from where to where it reaches up, mm, and its stiffness, N/mm². */
export interface Rectangle {
  readonly broad: number;
  readonly low: number;
  readonly high: number;
  readonly modulus: number;
}

/**
 * How stiff rectangles are that are glued together to one beam, N mm²: E I about their common middle, which the stiffer wood draws to
 * itself (parallel axes and the transformed section, any handbook).
 */
export function rigidity(section: readonly Rectangle[]): number {
  const weight = ({ broad, low, high, modulus }: Rectangle): number => modulus * broad * (high - low);
  const middle = ({ low, high }: Rectangle): number => (low + high) / 2;
  const whole = section.reduce((so, each) => so + weight(each), 0);
  const y = section.reduce((so, each) => so + weight(each) * middle(each), 0) / whole;
  return section.reduce((so, each) => {
    const off = middle(each) - y;
    return so + each.modulus * secondMoment(each.broad, each.high - each.low) + weight(each) * off * off;
  }, 0);
}

/** The real cube root of a number above zero, by Newton's method. */
export function cubeRoot(value: number): number {
  let root = Math.max(value, 1);
  for (let i = 0; i < 200; i += 1) {
    const next = (2 * root + value / (root * root)) / 3;
    if (next >= root) break;
    root = next;
  }
  return root;
}
