/** What a step that lays work down tells for the one that needs it so. */
import { expect, test } from "vitest";
import type { StepDraft } from "../../../src/solve/build/steps/draft.ts";
import { laidFor, stillOn } from "../../../src/solve/build/steps/laid-for.ts";
import { onceLaid } from "../../../src/solve/build/steps/sentence.ts";

const FRONT_DOWN = [0, 1, 0] as const;
const BLOCKS = onceLaid(["blocks"], "Lay blocks 1 in high under the side (A).");
const NEXT = "First: measure across its front once more: what goes on next keeps it as it finds it.";
const CHECK = "First: measure across its front once more: what goes on now keeps it as it finds it.";
const draft = (own: Partial<StepDraft>): StepDraft =>
  ({ kind: "join", up: FRONT_DOWN, text: [], shows: { present: ["a"], fresh: ["b"] }, ...own }) as never;
const cut = draft({ kind: "fit" });

test("blocks of the next joining, where it lies the same way", () => {
  const put = draft({ laidOn: [BLOCKS] });
  expect(laidFor([put], ["a"], cut, FRONT_DOWN)).toEqual({ first: [], on: [BLOCKS] });
  expect(laidFor([put], ["other"], cut, FRONT_DOWN).on).toEqual([]);
  expect(laidFor([{ ...put, up: [0, 0, 1] }, put], ["a"], cut, FRONT_DOWN).on).toEqual([]);
  expect(laidFor([put], ["a"], put, FRONT_DOWN).on).toEqual([]);
});

test("a side that no other stands for is measured before it lies on the bench", () => {
  const hidden = draft({ proof: { turned: CHECK, next: NEXT, lying: null } });
  expect(laidFor([hidden], ["a"], cut, FRONT_DOWN).first).toEqual([NEXT]);
  const seen = draft({ proof: { turned: CHECK, next: NEXT, lying: "First: measure across its back." } });
  expect(laidFor([seen], ["a"], cut, FRONT_DOWN).first).toEqual([]);
});

test("what was told is told no more, and other blocks still are", () => {
  const other = onceLaid(["battens"], "Lay battens 2 in high under the shelf (B).");
  expect(stillOn([BLOCKS], draft({ text: ["Set it.", BLOCKS, other] })).text).toEqual([
    "Set it.",
    "The work lies on its blocks still.",
    other,
  ]);
  expect(stillOn([BLOCKS, other], draft({ text: [BLOCKS, other] })).text).toEqual([
    "The work lies on its battens and blocks still.",
  ]);
});
