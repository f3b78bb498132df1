/** What is sanded and finished before it is shut in, what comes off before, and what has its coats already (common practice, no source). */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const titles = (name: string): readonly string[] => built(name).steps.map(({ title }) => plain(title));
const place = (name: string, title: RegExp): number => {
  const at = titles(name).findIndex((each) => title.test(each));
  if (at < 0) throw new Error(`no step ${title.source} in ${titles(name).join("; ")}`);
  return at;
};

test("shelves that do not pass each other have all their coats before they go in, and are sanded no more", () => {
  const name = "spice-cabinet";
  const early = place(name, /^Finish four loose shelves .* before they are built in$/u);
  expect(early).toBeLessThan(place(name, /^Add the four loose shelves/u));
  expect(textOfStep(stepWith(built(name), /^Finish four loose shelves/u))).toContain(
    "Once the piece is closed they do not come out for that",
  );
  // One of them is drawn, with the lip that is glued to it.
  const { parts, steps } = built(name);
  const { shows } = steps[early] as (typeof steps)[number];
  expect(shows.fresh.map((id) => parts.find((part) => part.id === id)?.mark)).toEqual(["D", "O"]);
  const last = textOfStep(stepWith(built(name), /^Finish the piece/u));
  expect(last).toContain("Sand what has no coats yet and will be seen");
  expect(last).toContain("on all that has none yet.");
});

test("a panel that floats in its frame is sanded before it is built in, also where the plan says nothing of finish", () => {
  const name = "old-plans/medicine-cabinet";
  expect(place(name, /^Sand the back panel .* before it is built in$/u)).toBeLessThan(
    place(name, /^Add the back panel/u),
  );
});

test("what hangs comes off before a finish that the plan leaves open, and goes on after it", () => {
  const name = "old-plans/medicine-cabinet";
  const order = [/^Hang the door/u, /^Take off the door/u, /^Sand the /u, /^Put the door on again/u];
  const places = order.slice(0, 2).map((title) => place(name, title));
  const sanded = titles(name).findIndex((title, i) => i > (places[1] as number) && /^Sand the/u.test(title));
  const all = [...places, sanded, place(name, /^Put the door on again/u)];
  expect(all).toEqual(all.toSorted((a, b) => a - b));
  // What was taken off is not drawn where it is no more.
  const { steps } = built(name);
  const off = steps[places[1] as number]?.shows.fresh ?? [];
  const there = new Set(steps[sanded]?.shows.present);
  expect(off.length).toBeGreaterThan(0);
  expect(there.size).toBeGreaterThan(0);
  expect(off.filter((id) => there.has(id))).toEqual([]);
});

test("where all else stands before the part that is finished ahead goes on, all is finished in one round", () => {
  const coats = built("dining-bench").steps.filter(({ actions }) => actions.some((action) => action.do === "finish"));
  expect(coats).toHaveLength(1);
  const join = place("dining-bench", /^Join the slab/u);
  expect(coats[0]?.number).toBeLessThan(join + 1);
});

test("slides that were set stay on for the finish, whatever that is", () => {
  const { steps } = built("index-cabinet");
  expect(textOfStep(stepWith(built("index-cabinet"), /^Take off/u))).toContain(
    "drive a screw there: nothing may shift it",
  );
  expect(steps.flatMap(({ text }) => text).some((line) => line.startsWith("The halves of the slides stay on"))).toBe(
    true,
  );
});

test("shelf pins that stay in are kept free of the finish, and their holes are told of once", () => {
  const { steps, finishSchedule } = built("spice-cabinet");
  const last = steps.filter(({ title }) => title.startsWith("Finish the piece")).flatMap(({ text }) => text);
  expect(last.map(plain)).toContain("The shelf pins stay in: tape them, or wipe off at once what gets on them.");
  expect(last.some((text) => /^What lies loose on them stays in too: lift it off its pins/u.test(text))).toBe(true);
  expect(finishSchedule?.free.filter((each) => /pin holes|holes of shelf pins/iu.test(each))).toHaveLength(1);
});
