/** The stool with its right upright cut when the rest stands; and one whose top is banded at the front and an end. */
import type { BuildRecord } from "../record.ts";
import { stool } from "./stool.ts";
import { step } from "./wood.ts";

/** The upright is sawn 3 mm over, and cut in a step of its own after the top and the left upright are together. */
export function fitted(): BuildRecord {
  const record = stool();
  for (const part of record.parts.slice(2))
    Object.assign(part, { mark: "C", name: "right", cut: "piece", cutAfterStep: 2 });
  const [top, both] = record.cutList;
  if (!top || !both) throw new Error("the stool has two lines");
  const left = { ...both, name: "left", quantity: 1, parts: ["left"] };
  record.cutList = [top, left, { ...both, mark: "C", name: "right", quantity: 1, parts: ["right"], cut: "piece" }];
  for (const part of record.parts.slice(1, 2)) part.name = "left";
  for (const blank of record.blanks.slice(2)) Object.assign(blank, { width: 203, length: 303, why: "cut later" });
  const [sheet] = record.layouts;
  for (const placement of sheet?.placements.slice(2) ?? [])
    Object.assign(placement, { mark: "C", width: 203, length: 303 });
  if (sheet) {
    for (const cut of sheet.cuts.slice(1, 2)) Object.assign(cut, { from: [409, 3], to: [409, 800], fence: 203 });
    for (const cut of sheet.cuts.slice(4)) Object.assign(cut, { from: [206, 306], to: [409, 306], fence: 303 });
    sheet.offcuts = [
      { x: 206, y: 309, width: 203, length: 491 },
      { x: 412, y: 3, width: 198, length: 797 },
    ];
  }
  const [make, join, close, feet] = record.steps;
  if (!make || !join || !close || !feet) throw new Error("the stool has four steps");
  for (const action of make.actions) if (action.do === "make") action.blanks = ["blank of top", "blank of left"];
  record.steps = [
    make,
    join,
    step(3, "fit", [{ do: "make", blanks: ["blank of right"] }]),
    { ...close, number: 4, after: [2, 3] },
    { ...feet, number: 5, after: [4] },
  ];
  return record;
}

/** The top gets bands of 1 mm at its left end and its front, both deducted: it is sawn 399 × 199. */
export function banded(): BuildRecord {
  const record = stool();
  for (const part of record.parts.slice(0, 1))
    part.edgeBanding = ["left", "front"].map((edge) => ({ edge, item: "birch tape", thickness: 1, deducted: true }));
  for (const blank of record.blanks.slice(0, 1)) Object.assign(blank, { width: 199, length: 399 });
  const [sheet] = record.layouts;
  if (sheet) {
    for (const placement of sheet.placements.slice(0, 1)) Object.assign(placement, { width: 199, length: 399 });
    for (const placement of sheet.placements.slice(1, 2)) Object.assign(placement, { y: 405 });
    // The strip stays 200 wide for the upright; the top is ripped once more.
    sheet.cuts = [
      ...sheet.cuts.slice(0, 2),
      { number: 3, kind: "crosscut", from: [3, 402], to: [203, 402], fence: 399 },
      { number: 4, kind: "crosscut", from: [3, 705], to: [203, 705], fence: 300 },
      { number: 5, kind: "crosscut", from: [206, 303], to: [406, 303], fence: 300 },
      { number: 6, kind: "rip", from: [202, 3], to: [202, 402], fence: 199 },
    ];
  }
  for (const action of record.steps.flatMap(({ actions }) => actions))
    if (action.do === "band") action.edges = ["left", "front"];
  return record;
}
