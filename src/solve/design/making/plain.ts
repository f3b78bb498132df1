import { ZERO } from "../../../units/rational.ts";
import type { Between, Making, Part } from "../../design.ts";

const PLAIN: Making = { boards: 1, layers: 1, banding: [], cut: "list", over: ZERO, strip: null, alike: null };

/** How a part is made; one piece of wood, cut from the list, where nothing was said. */
export const makingOf = (part: Part): Making => part.making ?? PLAIN;

/** Whether a part waits until the piece tells its size. */
export const isCutLater = (part: Part): boolean => ["opening", "piece"].includes(makingOf(part).cut);

/** Ids of all that a part comes between where it is measured. */
export const idsBetween = (between: readonly Between[] = []): readonly string[] => [
  ...new Set(between.flatMap(({ parts, also = [] }) => [parts, ...also].flat())),
];

/** Whether a part is glued up from several pieces of wood. */
export const isGluedUp = (part: Part): boolean => makingOf(part).boards * makingOf(part).layers > 1;
