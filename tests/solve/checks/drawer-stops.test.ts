/** A button inside the back of a drawer stops it where, turned up, it reaches something that stands before it (common practice, no source). */
import { expect, test } from "vitest";
import { drawerExample } from "../../../src/findings/drawer-example.ts";
import { solveText } from "../../examples/compiled.ts";

const cabinet = ({ top = "rails", long = "14", stop = "drawer stop" } = {}): string =>
  drawerExample(
    ["  runs: { kind: side slide, load: 100 lb }", "  short-stop: { kind: drawer stop, long: 3/4 }"],
    ["join: screws", `join: screws, top panel: ${top}`],
    ["slides: runs", `runs on: cabinet.bottom-panel\n    long: ${long}\n    stop: ${stop}`],
  );

const told = (text: string) => solveText(text).findings.filter(({ rule }) => rule === "drawer-without-stop");

test("behind a rail it stops the drawer", () => {
  expect(solveText(cabinet()).build).toBeDefined();
  expect(told(cabinet())).toEqual([]);
});

test.each([
  [{ top: "yes" }, "cannot be turned up"],
  [{ long: "18" }, "cannot be turned up"],
  [{ stop: "short-stop" }, "catches behind nothing"],
])("with %o it does not", (change, why) => {
  expect(told(cabinet(change))[0]?.message).toContain(why);
});
