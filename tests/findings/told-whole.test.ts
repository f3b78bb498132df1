import { expect, test } from "vitest";
import { attitudeDisagrees } from "../../src/findings/rules/attitude-disagrees.ts";
import { doorWithoutCatch } from "../../src/findings/rules/door-without-catch.ts";

const AT = { file: "test.yaml", start: 0, end: 1, line: 1, column: 1 } as never;

test("words of the language are set apart from the sentence that they stand in", () => {
  expect(attitudeDisagrees(AT, { name: "shelf", words: ["as", "grain"] }).message).toBe(
    "shelf cannot lie as `as` and `grain` say together",
  );
});

test("a line to write has no blank: where nothing is to be screwed to, it tells what to put there", () => {
  const help = (line: string | null) =>
    doorWithoutCatch(AT, { doors: [{ name: "the door", part: "door.slab", line }] }).help ?? "";
  expect(help(null)).toContain("`- { fit: catch, to: block, against: door.slab }`; nothing lies behind the free edge");
  expect(help("{ fit: catch, to: rail }")).toBe("add a catch, under `fittings`: `- { fit: catch, to: rail }`");
});
