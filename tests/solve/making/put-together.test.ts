import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";

const said = (name: string, title: string): readonly string[] =>
  built(name).steps.find((step) => step.title.startsWith(title))?.text ?? [];

test("no screw is driven from below where the work can stand", () => {
  // Three on either side of a shelf between two rails.
  const [shelf] = built("old-plans/plant-stand").steps.filter(({ title }) => title === "Screw on the shelf (G)");
  expect(shelf?.up).toEqual([0, 0, 1]);
  expect(shelf?.text.some((line) => line.includes("head from the left and the right"))).toBe(true);
});

test("a side with dados and rabbets goes over all at once, and has its glue before that", () => {
  const lines = built("manuals-bookcase").steps.flatMap(({ text }) => text);
  const glue = lines.indexOf(
    "Brush glue into the rabbets and the dados in the left side (A) and the right side (B) that are filled now, and into no others.",
  );
  expect(glue).toBeGreaterThan(0);
  expect(lines.slice(glue + 1, glue + 2).join(" ")).toContain(
    "The left shelf (G) lies flush with the front of the left side (A).",
  );
  expect(lines[glue + 2]).toMatch(
    /^Bring the rabbets and the dados in the left side \(A\) and the right side \(B\) over /u,
  );
});

test("what lies between posts that reach past it is clamped in as the work stands, and turned over with it", () => {
  const lines = built("old-plans/china-closet").steps.flatMap(({ text }) => text);
  const of = lines.filter((line) => line.includes("clamp it there, and turn the work upside down with it."));
  expect(of).toHaveLength(1);
  // That at the top is told as that at the bottom.
  const top = built("old-plans/china-closet").steps.find(({ title }) =>
    /^Screw on the bottom\/top board.*at\sthe\stop$/u.test(title),
  );
  expect(top?.text[0]).toMatch(/^Do as in\sstep/u);
  expect(lines.some((line) => line.includes("bottom/top board (J) on a blanket"))).toBe(false);
});

test("a lid is held as high above its chest as it lets air in", () => {
  // `air gap: 1/2` in the plan.
  expect(said("rope-chest", "Hang the lid").join(" ")).toMatch(
    /Try it shut in its place on shims 1\u20442\sin\sthick; then open it/u,
  );
});

/** How the work lies when something is put to it (geometry). */
test("what was built for the work to stand on is lifted under it, as a chest onto its plinth", () => {
  const text = said("rope-chest", "Add the plinth");
  expect(text).toContain("Lift the work onto the plinth, the bottom panel (K) on top.");
  // A panel alone is no work yet.
  const lines = said("manuals-bookcase", "Screw the bottom panel (D) and the plinth");
  expect(lines).toContain("Set the bottom panel (D) on the plinth.");
});

test("the arrow goes with what the words move: the panel down onto the plinth, not the plinth up to it", () => {
  const { parts, steps } = built("manuals-bookcase");
  const panel = parts.filter(({ mark }) => mark === "D").map(({ id }) => id);
  const travel = steps.find(({ title }) => title.startsWith("Screw the bottom panel (D) and the plinth"))?.shows.travel;
  expect(travel).toEqual([{ parts: panel, along: [0, 0, -1] }]);
});

test("what comes from above is set on what is there, and what comes from a side against it", () => {
  // Upside down, the frame of a bench comes from above.
  expect(built("dining-bench").steps.flatMap(({ text }) => text)).toContain("Set the frame on the slab (A).");
  const lines = built("old-plans/library-table").steps.flatMap(({ text }) => text);
  expect(lines).toContain("Set the lower brace (E) on two shelves (H).");
  expect(lines).toContain("Set the left end piece (F) against two shelves (H).");
  // A board that fills a frame does not lie on it.
  expect(said("old-plans/cedar-chest", "Nail on the lid board (C)").join(" ")).not.toContain(
    "Set the lid board (C) on",
  );
});

test("tenons through a stile and others in it go home together, with one coat of glue", () => {
  const steps = built("old-plans/bookcase").steps.filter(({ title }) => title.startsWith("Glue in the door stile"));
  expect(steps.length).toBeGreaterThan(0);
  for (const { text } of steps) expect(text.filter((line) => line.startsWith("Brush glue")).length).toBeLessThan(2);
});

test("of several of one mark the text says on which a part goes", () => {
  // Two shelves at each end of the table, one above the other.
  const lines = built("old-plans/library-table").steps.flatMap(({ text }) => text);
  expect(
    lines.some((line) =>
      line.endsWith("of the upper left shelf (H) and flush with the bottom of the lower left shelf (H)."),
    ),
  ).toBe(true);
});

// The second frame of the table closes two rails with dowels and four shelves without, in one push.
test("of mixed joints that close in one push all the glue is told first, and the clamps last", () => {
  const text = said("old-plans/library-table", "Add the frame from step");
  const at = (words: string): number => text.findIndex((line) => line.includes(words));
  expect(at("Spread glue where the frame from step")).toBeGreaterThan(0);
  expect(at("Spread glue where the frame from step")).toBeLessThan(at("Push the frame from step"));
  expect(text[at("Push the frame from step")]).not.toContain("clamp");
  expect(text[at("Set the frame from step")]).toContain("against four shelves (H) and clamp.");
});

// Two posts of one end: two joints each, closed from the front and from the back.
test("what closes both ends of the same rails is glued on at once", () => {
  const titles = built("old-plans/piano-bench").steps.map(({ title }) => title);
  expect(titles).toContain("Glue in the post (A) and the frame post (B)");
  expect(said("old-plans/piano-bench", "Glue in the post (A) and").join(" ")).not.toContain("bare tenon");
});

// The middle of five clamps on a rail of 28 3/4 would press on the top of a post 45 3/4 high, 52 in away.
test("a clamp in a row stands beside the post that is in its way", () => {
  const text = said("old-plans/bookcase", "Add the bottom board (K)").map((line) => line.replaceAll("\u00a0", " "));
  expect(text.join(" ")).toContain("set 5 clamps that open 7");
  expect(text.join(" ")).not.toContain("bare tenon");
});

// Two pairs of bars that cross: four laps, 3 3/8 in and more from each other, each with a clamp of its own.
test("as many clamps are set as there are laps to be clamped", () => {
  const [lattices] = built("old-plans/bookcase").steps.filter(({ title }) => title === "Build the two lattices");
  expect(lattices?.text.some((line) => line.startsWith("Clamp each lap"))).toBe(true);
  expect(lattices?.clamps?.map(({ count }) => count)).toEqual([4]);
});

// The bottom board is glued along its front, and the plan holds the sides there too; the top board is held by a tenon in its middle.
test("what other joints or the plan hold at an edge is told to move from there", () => {
  expect(said("old-plans/bookcase", "Add the bottom board (K)")).toContain(
    "It is held at its front, and moves from there.",
  );
  expect(said("old-plans/bookcase", "Screw on the left side (A)")).toContain(
    "It is held at its front, and moves from there.",
  );
  expect(said("old-plans/bookcase", "Screw on the top cleat (T)")).toContain(
    "It is free to move both ways from its middle.",
  );
});
