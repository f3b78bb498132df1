import { expect, test } from "vitest";
import { doorExample, framed } from "../../../src/findings/door-example.ts";
import { whatDecides } from "../../../src/render/pages/hardware.ts";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("screws for hinge plates are bought by thickness, length and head, as the holes for them ask", () => {
  const screws = ({ purchases }: Pick<ReturnType<typeof built>, "purchases">) =>
    purchases.filter(({ note = "" }) => note.includes("cup hinges")).map(({ item }) => plain(item));
  // The catalogue's holes for plates on a face frame: 3/32 in, those of a #6 in hardwood, 11 mm deep; a plate is 2 mm thick: 13 mm, of the
  // lengths sold 5/8 in, as the screws of the cups are.
  expect(screws(built("index-cabinet"))).toEqual(["wood screw #6 × 5/8 in, countersunk"]);
  // Holes of 5 mm take a thread of 6.3 mm, 13 mm long: pages of hinge makers, from memory.
  const { build } = solveText(doorExample(...framed("")));
  expect(screws(build as ReturnType<typeof built>)).toEqual([
    "screw for a hinge plate 6.3 mm × 13 mm, countersunk, for holes 5 mm across",
    "wood screw #6 × 5/8 in, countersunk",
  ]);
});

test("a hinge says what holds its door shut", () => {
  const hinge = built("index-cabinet").purchases.find(({ item }) => item.startsWith("cup hinge"));
  expect(plain(hinge?.item ?? "")).toContain("opens 110°, shuts by its own spring");
  expect(
    JSON.stringify(
      built("index-cabinet").hardware.map(({ item }) => item.decides),
      (_, v) => (typeof v === "bigint" ? String(v) : v),
    ),
  ).toContain('{"name":"shuts","value":"by its own spring"}');
});

test("the holes for wall screws are told in the step as the drilling table has them", () => {
  const text = (name: string) => textOfStep(stepWith(built(name), /to the wall$/u));
  // The spice cabinet's screws are 5 mm thick, their heads 13 x 3 mm and sunk, in the next wider bit; half a millimetre of play, common practice, no source.
  expect(text("spice-cabinet")).toContain("14 mm across and 3 mm deep, then 5.5 mm right through");
  expect(textOfStep(stepWith(built("key-cabinet"), /^Finish the piece/u))).toMatch(
    /bore (?:its holes through, \d+\/\d+ in across|for each screw a seat .* deep, then)/u,
  );
});

test("what another make has to agree in is told in a whole sentence", () => {
  const words = JSON.stringify(whatDecides(built("key-cabinet"), 500), (_, value: unknown) =>
    typeof value === "bigint" ? String(value) : value,
  );
  expect(whatDecides(built("key-cabinet"), 500).length).toBeGreaterThan(1);
  expect(words).not.toContain("another will do");
});

// Two hinges of two leaves with three screws each; a catch with two holes in either half (common practice, no source).
test("the step in which hardware is screwed on names its screws by number and size, and the shopping list what they are for", () => {
  const { purchases } = built("key-cabinet");
  const text = (title: RegExp) => textOfStep(stepWith(built("key-cabinet"), title));
  expect(text(/^Hang the door/u)).toContain("The hinges take 12 wood screws #6 × 5/8 in, countersunk, in all.");
  expect(text(/^Fit the catch/u)).toContain("It takes 4 screws #6 × 1/2 in.");
  expect(purchases.find(({ item }) => /^wood screw #6/u.test(item))?.note).toContain("for the butt hinges");
});

test("hardware without a hole is told how it stays", () => {
  expect(textOfStep(stepWith(built("rope-chest"), /^Fit the bumpers/u))).toContain(
    "No hole is bored for this: stick it on",
  );
});

// The screws are 5/16 in under a board, and the front rail is as high, 6 3/4 in away: no head of a right-angle driver is so small (17 mm about its axis,
// as the record states it).
test("of two rails of one mark the step says which, and what to do where no drill gets behind a screw", () => {
  const text = textOfStep(
    stepWith(built("old-plans/medicine-cabinet"), /^Screw the upper back long rail \([A-Z]\) to the wall$/u),
  );
  expect(text).toMatch(
    /Fix them to the front face of the upper back long rail \(.\), the middle of one 7\/16 in from the bottom edge and 2 in from/u,
  );
  expect(text).toContain("No drill goes in behind the heads: turn the screws by hand");
  // They are bored once: at the bench, from where a drill goes in, before anything is put on or finished; the wall is marked through them.
  expect(text).not.toContain("7/32 in");
  expect(text).toContain("mark the wall through the holes");
  const { steps } = built("old-plans/medicine-cabinet");
  const bare = stepWith(built("old-plans/medicine-cabinet"), /^Sand the rest of the piece/u);
  expect(textOfStep(bare)).toMatch(
    /^First: while the wood is bare, bore for the wall screws, if .* masonry: into the back face of the upper back long rail \(.\), .* 7\/32 in across, from behind, the work lying on its front on a blanket\./u,
  );
  expect(steps.findIndex(({ title }) => title === "Fit the knob")).toBeGreaterThan(steps.indexOf(bare));
  const own = built("old-plans/medicine-cabinet").drilling.find(({ what }) => what.includes("wall screw"));
  expect(own?.backing).toBe("scrap");
  expect([own?.when, own?.into.map(({ side }) => side)]).toEqual(["on the bench", ["back face"]]);
  const cleat = built("key-cabinet").drilling.find(({ what }) => what.includes("wall screw"));
  expect([cleat?.when, cleat?.into.map(({ side }) => side)]).toEqual(["on the bench", ["front face"]]);
  expect(built("old-plans/wall-shelf").drilling.find(({ what }) => what.includes("wall screw"))?.backing).toBe(
    "the wall",
  );
  // Before the wall cleat nothing stands.
  expect(textOfStep(stepWith(built("key-cabinet"), /to the wall$/u))).not.toContain("behind the heads");
});

// Three drawers of two slides, of two halves each with three screws: 36.
test("slides name their screws where they are screwed on", () => {
  const text = built("index-cabinet")
    .steps.flatMap((step) => textOfStep(step))
    .join(" ");
  expect(text).toMatch(/The slides take 36 screws #6,[^.]*: three for each half\./u);
});

test("bolt holes are guided square, tried with their cross dowels, and widened where they go right through", () => {
  const build = built("workbench-cart");
  const [rail, leg] = [/^Drill the back upper rail/u, /^Drill the legs \(A\)/u].map((title) =>
    textOfStep(stepWith(build, title)),
  );
  expect(rail).toContain("Guide the drill square for the bolt holes and the cross dowel holes");
  expect(rail).not.toContain("widen the one");
  expect(leg).toContain("widen the one that goes right through, by 1 mm at most");
  expect(build.tools.map(({ tool }) => tool)).toContain("Drill guide, or a block bored square under a drill press");
});

// Three screws a leaf; a catch with two holes in its body and two in its strike, as the drilling table has them.
test("holes that are bored before the hardware is at hand are told of hinges and of second halves too", () => {
  const text = textOfStep(stepWith(built("old-plans/china-closet"), /^Have the hardware/u));
  expect(text).toContain("– butt hinge: three holes 43/64 in apart, in either half.");
  expect(text).toContain("– catch: two holes 5/8 in apart; in its other half two holes 9/16 in apart.");
  const cups = textOfStep(stepWith(built("index-cabinet"), /^Have the hardware/u));
  expect(cups).toContain("cup hinges for a face frame lie elsewhere");
});
