import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { said, solvedOnce, textOf } from "../../examples/compiled.ts";
import { wordsOf } from "../boxes.ts";

/** Minutes of "6 h 30 min"; "a few min" are none. */
const minutesOf = (text: string): number =>
  60 * Number(/(\d+) h/u.exec(text)?.[1] ?? 0) + Number(/(\d+) min/u.exec(text)?.[1] ?? 0);

/** A step is told to 5 minutes, from an hour on to 10; days and the whole are sums of what is told. */
test("the days add up to the time that is told of the whole", () => {
  const { build, findings } = solvedOnce(textOf("dining-bench"))();
  if (!build) throw new Error(said(findings).join("\n"));
  expect(build.timeline.days.flatMap(({ bench }) => (bench > 0 ? [bench] : []))).toEqual([
    125, 395, 250, 50, 30, 30, 55,
  ]);
  const pages = render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  const words = pages
    .map(wordsOf)
    .join(" ")
    .replaceAll(/[\s\u202f]+/gu, " ");
  const [, total = "", table = ""] =
    /About ([\dhmin ]+) at the bench for one person: .*?when the day is over (.*?)Dining bench/u.exec(words) ?? [];
  const days = [...`${table.trim()} End`.matchAll(/ ((?:\d+ h)?(?: ?\d+ min)?|a few min) (?=[A-Z])/gu)].map(
    ([, time = ""]) => time.trim(),
  );
  expect(days.filter((time) => time !== "")).toEqual([
    "2 h 5 min",
    "6 h 35 min",
    "4 h 10 min",
    "50 min",
    "30 min",
    "30 min",
    "55 min",
  ]);
  expect(days.reduce((so, time) => so + minutesOf(time), 0)).toBe(minutesOf(total));
  expect(minutesOf(total)).toBe(935);
});
