import { add, equal, type Rational, ZERO } from "../../../units/rational.ts";
import type { Feature } from "../../design.ts";
import { INDICES } from "../space.ts";

/** What a plane or a cutter takes out in one run. */
const RUNS: ReadonlySet<Feature["kind"]> = new Set(["rabbet", "groove", "dado"]);

/** Features in their order; rabbets, grooves and dados that go on where another of the same section ends are one: so boards lie side by side. */
export function inRuns(features: readonly Feature[]): readonly Feature[] {
  const runs: Feature[] = [];
  for (const feature of features) {
    let run = feature;
    for (const ends of [false, true]) {
      const at = runs.findIndex((other) => (ends ? goesOn(run, other) : goesOn(other, run)));
      const [other] = at < 0 ? [] : runs.splice(at, 1);
      if (other) run = ends ? longer(run, other) : longer(other, run);
    }
    runs.push(run);
  }
  return runs;
}

/** Whether `b` begins where `a` ends. */
function goesOn(a: Feature, b: Feature): boolean {
  if (a.kind !== b.kind || !RUNS.has(a.kind) || !("size" in a && "size" in b)) return false;
  const same = (["along", "across", "into"] as const).every((way) => INDICES.every((i) => a[way][i] === b[way][i]));
  const end = INDICES.map((i) => add(a.origin[i], times(a.size[0], a.along[i])));
  const section = [1, 2] as const;
  return (
    same &&
    section.every((i) => equal(a.size[i], b.size[i])) &&
    INDICES.every((i) => equal(b.origin[i], end[i] as Rational))
  );
}

/** `way`: −1, 0 or 1. */
const times = (length: Rational, way: number): Rational =>
  way === 0 ? ZERO : way > 0 ? length : { n: -length.n, d: length.d };

const longer = (a: Feature, b: Feature): Feature =>
  "size" in a && "size" in b ? { ...a, size: [add(a.size[0], b.size[0]), a.size[1], a.size[2]] } : a;
