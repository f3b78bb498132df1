import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith } from "./examples.ts";

// Its shelves do not come out once it is closed: whoever carries it carries them.
test("what is carried weighs the same where it is carried as where that is told ahead", () => {
  const build = built("old-plans/bookcase");
  const ahead = build.advice?.room.find(({ head }) => head === "On the way.")?.text ?? "";
  const step = build.steps.flatMap(({ text }) => text).find((text) => /carry the piece to its room/u.test(text)) ?? "";
  const weight = (text: string): string | undefined => /weighs about (\d+ lb)/u.exec(plain(text))?.[1];
  expect(weight(step)).toMatch(/^\d+ lb$/u);
  expect(weight(ahead)).toBe(weight(step));
  const ids = build.liesIn ?? [];
  expect(ids.toSorted()).toEqual(["shelf.1", "shelf.2", "shelf.3"]);
});

// Poplar 4 in wide, 0.0029 of its width for each per cent (Wood Handbook FPL-GTR-190, Table 13-5), 6 to 10 %: 0.046 in, to the next 1/32.
test("boards one against the other are put in apart when they are dry, where a last one is cut to what stays open", () => {
  const { text } = stepWith(built("old-plans/bookcase"), /^Add eleven lower backings/u);
  expect(plain(text.join(" "))).toContain("In dry weather leave 1/16 in between one and the next");
});
