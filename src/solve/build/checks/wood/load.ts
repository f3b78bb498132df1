import type { LoadName } from "../../../../parse/draft.ts";
import type { Load } from "../../../design.ts";
import { GRAVITY } from "./beam.ts";

const FOOT = 304.8;
const POUND = 0.45359237;
/** Books are about this deep: a narrower board carries its share of them. Common practice, no source. */
const BOOK_DEEP = 8 * 25.4;

/** kg on a board, by its size in mm, and where the figure comes from. */
interface Named {
  readonly inch: string;
  readonly metric: string;
  readonly basis: string;
  readonly kilograms: (long: number, broad: number) => number;
}
const byArea =
  (poundsPerSquareFoot: number) =>
  (long: number, broad: number): number =>
    ((poundsPerSquareFoot * POUND) / (FOOT * FOOT)) * long * broad;

const PRACTICE = "common practice, no source";
const LIGHT = { inch: "10 lb for each square foot", metric: "49 kg for each square metre" };

const LOADS: Readonly<Record<LoadName, Named | null>> = {
  nothing: null,
  books: {
    inch: "books, 20 lb for each foot",
    metric: "books, 30 kg for each metre",
    basis: "hardbacks, 20 lb/ft, from a reproduction",
    kilograms: (long, broad) => ((20 * POUND) / FOOT) * long * Math.min(1, broad / BOOK_DEEP),
  },
  jars: {
    inch: "jars, 25 lb for each square foot",
    metric: "jars, 122 kg for each square metre",
    basis: PRACTICE,
    kilograms: byArea(25),
  },
  shoes: { inch: `shoes, ${LIGHT.inch}`, metric: `shoes, ${LIGHT.metric}`, basis: PRACTICE, kilograms: byArea(10) },
  clothes: {
    inch: `clothes, ${LIGHT.inch}`,
    metric: `clothes, ${LIGHT.metric}`,
    basis: PRACTICE,
    kilograms: byArea(10),
  },
};

export interface Loaded {
  /** In a sentence: "books, 20 lb for each foot". */
  readonly words: string;
  readonly basis: string;
  /** N */
  readonly force: number;
}

/** What lies on a board whose longer and shorter side are given in mm; null for nothing. */
export function loadOn(load: Load, long: number, broad: number, metric: boolean): Loaded | null {
  if ("kilograms" in load) {
    const said = metric ? `${round(load.kilograms)} kg` : `${round(load.kilograms / POUND)} lb`;
    return { words: said, basis: "the plan", force: load.kilograms * GRAVITY };
  }
  const named = LOADS[load.name];
  return (
    named && {
      words: metric ? named.metric : named.inch,
      basis: named.basis,
      force: named.kilograms(long, broad) * GRAVITY,
    }
  );
}

const round = (value: number): number => Math.round(value * 10) / 10;
