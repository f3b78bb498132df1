import { lidded, lowered, underTheLid } from "../sample/lid.ts";
import type { Row } from "./row.ts";

const nothing = () => {};

export const motions: readonly Row[] = [
  ["a lid that opens downwards", () => lidded(90), nothing, "motion is free"],
  ["a lid that is pushed into the case", () => lidded(-90, [0, 0, -1]), nothing, "motion is free"],
  ["a slide under a closed lid", () => underTheLid(0), nothing, "motion is free"],
  ["a roof that comes down on a screw's head", () => lowered(397.1), nothing, "motion is free"],
];
