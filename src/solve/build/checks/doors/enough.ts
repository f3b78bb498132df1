import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { roundTo } from "../../../../units/round.ts";
import { tellLength } from "../../../../units/tell-length.ts";
import type { Units } from "../../../design.ts";

const STEP = { inch: inches(1, 64), mm: millimetres(1, 10) } as const;

/** A least size for a sentence: the first mark that is enough. */
export const atLeast = (length: Length, units: Units): string => tellLength(roundTo(length, STEP[units], "up"), units);
/** A greatest size: the last mark that is not too much. */
export const atMost = (length: Length, units: Units): string => tellLength(roundTo(length, STEP[units], "down"), units);
