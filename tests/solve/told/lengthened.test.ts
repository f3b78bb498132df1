import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { letInBoard } from "../design/let-in-board.ts";
import { textOfStep } from "./examples.ts";

test("shapes of a part that is let in are told from the end that there is", () => {
  const { build } = solveText(
    letInBoard("notch: { at: top front, wide: 4, deep: 3 }, bevel: { along: top back, wide: 2, deep: 1/2 }"),
  );
  const text = (build?.steps ?? []).map(textOfStep).join(" ");
  // 4 in below the shoulder, and 3/8 in that goes into the top.
  expect(text).toContain(
    "Cut a notch 4 3/8 in along the length and 3 in across it, right through the thickness: in the top end, flush with the front edge.",
  );
  expect(text).toContain("draw lines 1/2 in from the top on the back, and 2 in from that face on the top");
});
