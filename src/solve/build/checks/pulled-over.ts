import { pulledOver } from "../../../findings/rules/pulled-over.ts";
import { millimetres } from "../../../units/length.ts";
import type { Checked, Rule } from "./check.ts";
import { SCOPE, stores } from "./standing/clothing.ts";
import { opened } from "./standing/opened.ts";
import { strapLine } from "./standing/strap.ts";
import { HAND, PULL } from "./standing/tests.ts";
import { around, footing, massText, total, weights } from "./standing/weight-and-feet.ts";
import { hangs, isClothingStorage } from "./tips-over.ts";

const BASIS =
  "scope, bookcases and the like of 686 mm and more: Consumer Goods (Toppling Furniture) Information Standard 2024 (Australia); CPSC, release of November 17, 2020; pull: ASTM F2057-23, 9.2.2, outside of its scope";

/** Storage that is not for clothes and stands by itself is not pulled over while it is empty, or is tied to the wall. */
export const pulledOverRule: Rule = (checked) => {
  const { design, hardware, print } = checked;
  const [first] = design.parts;
  const tied = hardware.some(({ item }) => item.kind === "wall strap");
  if (!first || tied || hangs(hardware) || isClothingStorage(checked) || !isStorage(checked)) return [];
  const outside = around(design.parts.map(({ solid }) => solid));
  const feet = footing(checked);
  const high = outside.high[2] - feet.low[2];
  const heavy = total(weights(checked)) >= SCOPE.kg || saysWhatItCarries(checked);
  if (high < SCOPE.high - 0.01 || !heavy) return [];
  const wood = opened(
    weights(checked),
    stores(checked).map(({ motion }) => motion),
  );
  const hand = Math.min(high, HAND);
  const holds = wood.reduce((so, { kg, at }) => so + kg * (at[1] - feet.low[1]), 0);
  const pull = holds / hand;
  const check = { rule: "pulled-over", subject: "piece", value: pull, limit: PULL, unit: "kg", basis: BASIS };
  if (pull >= PULL) return [{ check: { ...check, verdict: "holds" } }];
  const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
  const deeper = Math.ceil((PULL * hand - holds) / total(wood) / STEP) * STEP;
  // As high as the highest hand-hold of the test, it falls on grown people too.
  const tall = high >= HAND;
  const told = {
    ...{ high: tell(high), hand: tell(hand), deeper: tell(deeper), strap: strapLine(checked) },
    pull: pull > 0 ? atLeastOne(massText(pull, design.units)) : null,
  };
  const finding = pulledOver(first.at, told, { severity: tall ? "warning" : "advice" });
  return [{ check: { ...check, verdict: "warns" }, finding }];
};

const atLeastOne = (mass: string): string => mass.replace(/^0 /, "less than 1 ");

const saysWhatItCarries = (checked: Checked): boolean =>
  [checked.design.carries, ...checked.design.parts.map(({ carries }) => carries)].some(
    (load) => load !== undefined && !("name" in load && load.name === "nothing"),
  );

/** It carries things, or has drawers or doors. */
const isStorage = (checked: Checked): boolean =>
  stores(checked).length > 0 ||
  saysWhatItCarries(checked) ||
  checked.design.joints.some(({ kind }) => kind === "resting");

/** A remedy is told to half an inch. */
const STEP = 12.7;
