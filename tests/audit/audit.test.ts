import { expect, test } from "vitest";
import { importsOf } from "../tidy/imports.ts";
import { filesBelow } from "../tidy/source.ts";
import { counts } from "./broken/counts.ts";
import { driving } from "./broken/driving.ts";
import { finish } from "./broken/finish.ts";
import { fits } from "./broken/fits.ts";
import { form } from "./broken/form.ts";
import { hanging } from "./broken/hanging.ts";
import { holes } from "./broken/holes.ts";
import { layouts } from "./broken/layouts.ts";
import { lists } from "./broken/lists.ts";
import { making } from "./broken/making.ts";
import { motions } from "./broken/motions.ts";
import { replay } from "./broken/replay.ts";
import { travel } from "./broken/travel.ts";
import { verdicts } from "./broken/verdicts.ts";
import { audit, sameBytes } from "./index.ts";
import { SOUND } from "./sample/sound.ts";
import { weigh } from "./sample/weigh.ts";
import { CHECKS } from "./violation.ts";

const MASSES = "masses are those of the solids";
const ROWS = [
  ...form,
  ...fits,
  ...lists,
  ...counts,
  ...replay,
  ...travel,
  ...driving,
  ...holes,
  ...motions,
  ...layouts,
  ...verdicts,
  ...making,
  ...finish,
  ...hanging,
];

test.each(SOUND)("a sound record keeps every promise: %s", (_, sample) => {
  expect(audit(sample())).toEqual([]);
});

test.each(ROWS.map(([what, ...rest]) => [what, rest] as const))("found: %s", (_, [sample, spoil, ...expected]) => {
  const record = sample();
  spoil(record);
  // A part of another shape weighs as much as that shape, unless it is the weight that is wrong.
  if (!expected.includes(MASSES)) weigh(record);
  const found = new Set(audit(record).map((violation) => violation.check));
  expect([...found].sort()).toEqual([...expected].sort());
});

test("bytes that differ are found, and where", () => {
  const bytes = (text: string) => new TextEncoder().encode(text);
  expect(sameBytes("record", bytes("same"), bytes("same"))).toEqual([]);
  expect(sameBytes("record", bytes("same"), bytes("some"))[0]?.message).toContain("byte 1");
  expect(sameBytes("record", bytes("same"), bytes("same\n"))[0]?.check).toBe("same source, same bytes");
});

test("every check has been seen to fail", () => {
  const seen = new Set([...ROWS.flatMap(([, , , ...expected]) => expected), "same source, same bytes"]);
  expect(Object.keys(CHECKS).filter((check) => !seen.has(check))).toEqual([]);
});

test("the auditor shares no code with the program", () => {
  const imports = filesBelow("tests/audit", ".ts").flatMap(importsOf);
  expect(imports.length).toBeGreaterThan(50);
  const outside = ["vitest", "fast-check", "tests/tidy/imports.ts", "tests/tidy/source.ts"];
  expect(imports.filter(({ to }) => !to.startsWith("tests/audit/") && !outside.includes(to))).toEqual([]);
});
