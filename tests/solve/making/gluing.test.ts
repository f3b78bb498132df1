/** What a glue-up has to be told besides what is joined: before the glue is on, and before it has set. Common practice, no source. */
import { describe, expect, it } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";

const { build } = solveText(textOf("overalls-chest"));
const steps = build?.steps ?? [];
const plain = (text: string): string =>
  text.replaceAll("\u202f", " ").replaceAll("\u00a0", " ").replaceAll("\u2044", "/");
const step = (title: RegExp) => {
  const found = steps.filter((each) => title.test(each.title));
  expect(found, String(title)).toHaveLength(1);
  return found.flatMap(({ text }) => text.map(plain));
};

describe("a glue-up", () => {
  // What is as in an earlier step, or mirrored from it, is told there.
  const inFull = ({ text }: (typeof steps)[number]): boolean =>
    !text.some((each) => /^(?:Do as in|As) step \d/u.test(each));

  it("has its clamps set and its parts tried dry before there is glue on anything", () => {
    const all = steps.filter((each) => each.kind === "glue-up" && each.unit !== "plugs" && inFull(each));
    expect(all.length).toBeGreaterThan(3);
    for (const { title, text } of all) {
      const dry = text.findIndex((each) => /^(?:First: |Then )set /u.test(each));
      const glue = text.findIndex((each) => /^(?:Brush|Spread|Put) glue /u.test(each));
      expect([title, dry >= 0 && (glue < 0 || dry < glue)]).toEqual([title, true]);
    }
  });

  it("has what it closes in sanded before", () => {
    const text = step(/^Build the five overalls drawers/u);
    const sanded = text.findIndex((each) => each.startsWith("First: sand the inside faces"));
    expect(text.filter((each) => each.startsWith("First: "))).toHaveLength(1);
    expect([sanded >= 0, sanded < text.findIndex((each) => each.startsWith("Brush glue"))]).toEqual([true, true]);
  });

  // Panels 1 1/32 in behind their posts.
  it("has a panel sanded that comes to lie behind its posts", () => {
    expect(step(/^Build the left side/u)[0]).toMatch(
      /^First: sand the left face of the left side panel \(A\) with 120/u,
    );
    const others = steps.filter(({ text }) => text.some((each) => each.includes("badly reached later")));
    expect(others.map(({ title }) => title).filter((title) => !/^Build the (?:left|right) side/u.test(title))).toEqual(
      [],
    );
  });

  // 29 between the panels, less 2 × 12.9 to 2 × 13.2 mm: the middle of that is 26.1 mm, 1 1/32 in the nearest 1/32.
  it("tells how wide a drawer box is outside, and what decides that", () => {
    expect(step(/^Build the five overalls drawers/u).join(" ")).toContain(
      "1 1/32 in less, for both slides, than you measured between the left side panel (A) and the right side panel (B); 27 31/32 in where that is 29 in",
    );
    expect(step(/^Add the right side/u).join(" ")).toContain(
      "in front, in the middle and behind, above and below: 29 in everywhere",
    );
  });

  // 2 in of dowel in a hole of 1 1/16 in.
  it("has blocks where dowels stand out under the clamps, which open by so much more", () => {
    const text = step(/^Glue in the bottom panel/u);
    expect(text.join(" ")).toContain("Dowels stand out up to 15/16 in on the right");
    // 15/16 and 1/16. Between dowels 7 49/64 apart and 5/16 thick there are 7 29/64.
    expect(text.join(" ")).toMatch(/at least 1 in thick, .* up to 7 1\/4 in wide on the bottom panel \(D\)/u);
    // From the left of the post to the right end of the rails 1 3/4 + 29 less what lies within the post, pads of 1 in, and 15/16.
    expect(text.join(" ")).toMatch(/clamps that open 33 in/u);
  });

  // 8 dowels for the bolted joints stand out of the ends of the rails, and the clamps press on their edges.
  it("has none where no clamp presses on the dowels, and no dowels are tapped into a frame that was glued", () => {
    const cart = solveText(textOf("workbench-cart")).build?.steps ?? [];
    const at = (title: RegExp): string =>
      cart
        .filter((each) => title.test(plain(each.title)))
        .flatMap(({ text }) => text.map(plain))
        .join(" ");
    expect(at(/^Glue up the back upper rail/u)).toContain(
      "Take the back upper rail (D) and the back lower rail (E), and tap the dowels in without glue, though they stand free until a later step: nothing that is glued is hammered at.",
    );
    expect(at(/^Add the left end/u)).toContain(
      "The back upper rail (D) and the back lower rail (E) have their dowels already.",
    );
    expect(at(/^Add the left end/u)).not.toContain("tap the dowels");
    expect(at(/^Glue up the back upper rail/u)).toMatch(/set 2 clamps/u);
    expect(at(/^Glue up the back upper rail/u)).not.toContain("Dowels stand out");
  });

  // Rails 3 wide lie over posts of 1 3/4, with dowels 3/8 thick at 7/16 and 1 5/16: 1/2 in between them over the post, 1 1/2 in beside it.
  it("has blocks bored where there is no room beside the dowels in line with the joint, and lists the bit for them", () => {
    expect(step(/^Glue in the bottom panel/u).join(" ")).toContain(
      "On two top rails (L) there is no room beside them in line with the joint: bore the block through 7/16 in wide",
    );
    const listed = (of: typeof build): boolean =>
      of?.tools.some(({ tool }) => plain(tool).includes("7/16 in")) ?? false;
    expect(listed(build)).toBe(true);
  });

  // Aprons 4 wide that meet the leg over all of that, with dowels 3/8 thick 1 in from their edges: 1 5/8 in between them.
  it("has blocks between dowels where there is room over the joint", () => {
    const desk =
      solveText(textOf("loan-desk"))
        .build?.steps.flatMap(({ text }) => text.map(plain))
        .join(" ") ?? "";
    expect(desk).toContain("there is room for blocks up to 1 1/2 in wide on two long aprons (C).");
    expect(desk).not.toContain("bore the block through");
  });

  // Into panels 23/32 thick a dowel 2 in long would come through: 1 1/16 in the end leaves 15/16.
  it("tells which holes have the short dowels, and spreads glue on the ends that are joined now", () => {
    const text = step(/^Glue in the bottom panel/u);
    const line = (start: string): string => text.find((each) => each.startsWith(start)) ?? "";
    expect(line("Use 6 dowels 5/16 in × 1 1/2 in, ")).toContain("the middle three of the seven");
    expect(line("Use 6 dowels 5/16 in × 1 1/2 in, ")).toContain(
      "meets the left side panel (A) and the right side panel (B)",
    );
    expect(line("Use 8 dowels 5/16 in × 2 in, ")).toContain("the two at either side of the middle three");
    expect(line("Use 8 dowels 3/8 in × 2 in, ")).toBe("Use 8 dowels 3/8 in × 2 in, in two top rails (L).");
    expect(line("Spread a thin coat")).toContain("along the left edge of the bottom panel (D) too");
    expect(step(/^Add the right side/u).join(" ")).toContain("along the right edge of the bottom panel (D) too");
  });

  // Rabbets 3/16 deep for a front 1/2 thick: its end is the larger of two faces, and nothing is pressed along the sides.
  it("presses a rabbeted corner by the larger of its faces, on a part that lies flat", () => {
    const text = step(/^Build the five overalls drawers/u);
    expect(text.join(" ")).toContain("set 2 clamps that open 30 in, and try");
    expect(text).toContain("Set the clamps so: one on the box front (E) and one on the box back (F).");
    const [lies, glue] = [/^Lay the left side \(G\) flat/u, /^Brush glue/u].map((said) =>
      text.findIndex((each) => said.test(each)),
    ) as [number, number];
    expect([lies >= 0, lies < glue]).toEqual([true, true]);
  });

  // 7 dowels of the bottom panel and 2 of each rail.
  it("lies flat for what stands up from it, and has two people where many dowels go home at once", () => {
    expect(step(/^Build the left side/u)).toContain(
      "Put it together lying flat, on two straight battens, with the right side down, where all is flush.",
    );
    // The left points up then, in the picture too; everything else of the step is told as it stands.
    const left = steps.find(({ title }) => /^Build the left side/u.test(title));
    expect([left?.up, left?.shows.up]).toEqual([
      [0, 0, 1],
      [-1, 0, 0],
    ]);
    expect(step(/^Glue in the bottom panel/u)).toContain("Lay the left side flat on battens, inside up.");
    const right = steps.find(({ title }) => /^Add the right side/u.test(title));
    expect(right?.hands).toBe(2);
    expect(right?.text.join(" ")).toContain("with a second person: 11 dowels");
    expect(step(/^Glue in the bottom panel/u).join(" ")).toContain(
      "one on each of two top rails (L) and three on the bottom panel (D)",
    );
    expect(step(/^Glue in the bottom panel/u).join(" ")).toMatch(
      /Check with a square, .* the bottom panel \(D\) and the two/u,
    );
  });

  // Panels 23/32 thick are flush inside with posts 1 3/4 thick, 29 apart: pads on the posts are an inch, and dowels stand out 15/16.
  it("presses on a panel that lies behind its posts where a jaw has room between those", () => {
    const text = step(/^Glue in the bottom panel/u).join(" ");
    expect(text).toContain("set 2 clamps that open 34 in, and 3 clamps that open 33 in");
    expect(text).not.toContain("behind the chest post");
  });

  it("says that the work is stood up before it is measured", () => {
    // The back was put on with the work laid down; then it stands for all that is measured.
    expect(step(/^Cut the parts of five drawers/u)[0]).toBe("Stand the work up.");
    expect(step(/^Cut five false fronts/u)[0]).toMatch(/^Measure /u);
    // Nothing is turned that lies as it is wanted.
    const turned = steps.filter(({ text }) => text.some((each) => /^Turn the work the right way up/u.test(each)));
    expect(turned.map(({ title }) => title)).toEqual(["Put in the five overalls drawers"]);
  });

  // The bottom panel's row goes into both posts of a side and the panel between them; a rail's into one post.
  it("tries what goes into several of its parts at once while they are dry", () => {
    const tried = (title: RegExp): readonly string[] => step(title).filter((each) => /^While it is dry/u.test(each));
    expect(tried(/^Build the left side/u)).toHaveLength(1);
    expect(tried(/^Build the left side/u)[0]).toMatch(
      /holes for the bottom panel \(D\) uppermost, put its dowels into them.* into several of these parts/u,
    );
    expect(step(/^Build the right side/u).join(" ")).toMatch(/While it is dry|As step \d+, mirrored/u);
    for (const later of [/^Glue in the bottom panel/u, /^Add the right side/u]) expect(tried(later)).toEqual([]);
  });

  it("is proved with a square where nothing closes it, and the frame again before its back goes on", () => {
    expect(step(/^Glue in the bottom panel/u).join(" ")).toMatch(/Check with a square/u);
    expect(step(/^Screw on the back panel/u)[0]).toMatch(
      /^First: measure across its front from corner to corner once more, 52 5\/16 in/u,
    );
    expect(step(/^Build the left side/u).join(" ")).toMatch(/clamps in line with the left side panel \(A\)/u);
  });

  it("waits for the clamps that the one before it has", () => {
    const [left, right] = [/^Build the left side/u, /^Build the right side/u].map((title) =>
      steps.find((each) => title.test(each.title)),
    );
    expect(right?.text[0]).toContain(`those of step ${left?.number} are free, 45 minutes`);
  });
});

// 0.68 m² twice, and 16 clamps, against the 8 minutes of ordinary glue.
it("layers that take longer than usual glue stays open are told to be glued with one that sets slowly", () => {
  const cart = solveText(textOf("workbench-cart")).build;
  const [top] = cart?.steps.filter(({ title }) => title.startsWith("Glue up the plywood top")) ?? [];
  expect(top?.text.map(plain).join(" ")).toContain("take glue that sets slowly, or spread it with a helper");
  expect(cart?.purchases.some(({ note }) => note?.includes(`step ${top?.number}`))).toBe(true);
});
