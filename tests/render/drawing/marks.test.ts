import { describe, expect, test } from "vitest";
import { viewFrom } from "../../../src/geometry/picture/index.ts";
import { solidBox } from "../../../src/geometry/solid.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import { extentOfItems, fitInto } from "../../../src/render/drawing/fit.ts";
import { takePicture } from "../../../src/render/drawing/picture.ts";
import { placeBalloons } from "../../../src/render/drawing/place-balloons.ts";
import { Plate } from "../../../src/render/drawing/plate.ts";
import { travelArrow } from "../../../src/render/drawing/step/arrows.ts";
import { marksOf } from "../../../src/render/drawing/step/marks.ts";
import type { Scene } from "../../../src/render/drawing/step/scene.ts";
import { ACCENT } from "../../../src/render/palette.ts";
import type { Step } from "../../../src/solve/build.ts";
import type { Point } from "../../../src/solve/design.ts";
import { inch, step } from "./fixture/making.ts";
import { pen } from "./fixture.ts";
import { paths, texts } from "./look.ts";

const frame = { x: 0, y: 0, width: 255, height: 180 };
const box = (id: string, mark: string, low: readonly number[], high: readonly number[]) => ({
  ...{ id, mark },
  solid: solidBox(low.map(inch) as unknown as Point, high.map(inch) as unknown as Point),
});
const board = box("board", "A", [0, 0, 0], [20, 1, 20]);
const shelf = box("shelf", "B", [0, -8, 9], [20, 0, 10]);
const front = box("front-hinge", "hinge", [8, -0.5, 15], [10, 0, 18]);
const back = box("back-hinge", "hinge", [8, 1, 15], [10, 1.5, 18]);
const scene = (of: Partial<Scene>): Scene => ({
  ...{ items: [shelf, board], fresh: new Set(["shelf"]), hardware: new Map(), open: [], shifts: new Map() },
  ...{ screws: [], groups: [], goes: new Set(), arms: [], pencil: [] },
  ...of,
});
const view = viewFrom("the front right and above", [1, -1, 1]);
function marked(of: Step, shown: Scene, isCloseUp = false, behind: ReadonlySet<string> = new Set()) {
  const fit = fitInto(extentOfItems(shown.items, view), frame, 60 / 6_502_400);
  const { sight } = takePicture(shown.items, view, fit, { clear: new Set() });
  return marksOf(of, shown, { faces: sight.faces(), view, fit, behind, isCloseUp });
}
const adds = (text: string): Step => ({
  ...step(1, "Glue in the shelf (B)", "piece", { fresh: ["shelf"], present: ["board"] }),
  text: [text],
  actions: [{ do: "add", parts: ["shelf"], to: ["board"], how: "straight", legs: [] }],
});

describe("the marks of a step's picture", () => {
  test("what is new, and, finer, what it goes on, where the words name it", () => {
    const found = marked(adds("Set the shelf (B) against the board (A)."), scene({}));
    expect(found.map(({ mark, isPresent = false }) => [mark, isPresent])).toEqual([
      ["B", false],
      ["A", true],
    ]);
    expect(marked(adds("Set it where it belongs."), scene({})).map(({ mark }) => mark)).toEqual(["B"]);
    const letters = texts(placeBalloons(found, new Plate(frame), pen, () => 0));
    expect(letters.map(({ text, font }) => [text, font])).toEqual([
      ["B", "bold"],
      ["A", "regular"],
    ]);
  });

  test("what is drawn in hidden lines has one too, with a broken leader; alone in a picture what is not seen has none", () => {
    const cleat = box("cleat", "C", [4, 1, 4], [16, 2, 5]);
    const shown = scene({ items: [cleat, board], fresh: new Set(["cleat"]) });
    const of = { ...adds("Screw on the cleat (C)."), shows: { ...adds("").shows, fresh: ["cleat"] } };
    const hidden = marked(of, shown, true, new Set(["cleat"])).map(({ mark, hidden }) => [mark, hidden]);
    expect(hidden).toEqual([["C", true]]);
    expect(marked(of, shown, true).map(({ mark }) => mark)).toEqual([]);
  });

  test("of a body of many parts only those of which the words speak have one, all where they speak of none", () => {
    const many = [..."CDEFGHIJK"].map((mark, i) => box(mark, mark, [2 * i, -8, 9], [2 * i + 1.5, 0, 10]));
    const shown = scene({ items: [...many, board], fresh: new Set(many.map(({ id }) => id)) });
    const of = (text: string) => {
      const all = many.map(({ id }) => id);
      const own = step(1, "Add the door", "piece", { fresh: all, present: ["board"] });
      return marked(
        { ...own, text: [text], actions: [{ do: "add", parts: all, to: ["board"], how: "straight", legs: [] }] },
        shown,
      ).map(({ mark }) => mark);
    };
    expect(of("Screw the stile (D) to the board (A).")).toEqual(["D", "A"]);
    expect(of("Screw it on.")).toEqual(many.map(({ mark }) => mark));
  });

  test("what it goes on has no mark where there is no room for one", () => {
    const found = marked(adds("Set the shelf (B) against the board (A)."), scene({}));
    const full = new Plate(frame);
    full.addBox({ left: 0, top: 0, right: 255, bottom: 180 });
    expect(texts(placeBalloons(found, full, pen, () => 0)).map(({ text }) => text)).not.toContain("A");
  });

  test("of what comes off what the words call by its mark, and nothing else", () => {
    const off = (title: string): Step => ({
      ...step(1, title, "piece", { fresh: ["shelf"], present: ["board"] }),
      text: [],
    });
    const goes = new Set(["shelf", "board"]);
    const fresh = goes;
    expect(
      marked(off("Take off the board (A) and the shelf (B)"), scene({ goes, fresh })).map(({ mark }) => mark),
    ).toEqual(["B", "A"]);
    expect(marked(off("Take off the frame"), scene({ goes, fresh }))).toEqual([]);
    // Of too many none: one of them alone would contradict the words.
    const bars = Array.from({ length: 9 }, (_, i) =>
      box(`bar ${i}`, "JKLMNOPQR"[i] as string, [i, -9, 0], [i + 0.5, -8, 9]),
    );
    const names = bars.map(({ mark }) => `(${mark})`).join(", ");
    const all = new Set(bars.map(({ id }) => id));
    expect(marked(off(`Take off ${names}`), scene({ items: bars, goes: all, fresh: all }))).toEqual([]);
  });

  test("hardware that is hidden is counted, and no line is led to it", () => {
    const fit: Step = { ...step(1, "Fit the hinges", "piece", { fresh: [], present: [] }), text: [] };
    const put = (...hinges: readonly (typeof front)[]) =>
      scene({
        items: [...hinges, board],
        fresh: new Set(hinges.map(({ id }) => id)),
        hardware: new Map(hinges.map(({ id }) => [id, id])),
      });
    expect(marked(fit, put(front, back)).map(({ mark, hidden }) => [mark, hidden])).toEqual([["hinge × 2", false]]);
    expect(marked(fit, put(back))).toEqual([]);
  });
});

test("an arrow that has no room beside what moves stands farther off, at the end of a line", () => {
  const along: Vec = [1, 0, 0];
  const ahead = viewFrom("the front", [0, -1, 0]);
  const edge = [
    [150, 80],
    [150, 100],
  ] as const;
  const mover = { id: "shelf", middle: [160, 90], edges: [edge] } as const;
  const draw = (width: number) => {
    const plate = new Plate(frame);
    if (width > 0) plate.addBox({ left: 150 - width, top: 0, right: 150, bottom: 180 });
    return travelArrow({ parts: ["shelf"], along, leaves: false }, [mover], ahead, plate, () => 0);
  };
  const kinds = (width: number) =>
    paths(draw(width)).map(({ fill, stroke }) => (fill === ACCENT ? "arrow" : stroke?.dash ? "line" : ""));
  expect(kinds(0)).toEqual(["arrow"]);
  expect(kinds(20)).toEqual(["line", "arrow"]);
  expect(kinds(140)).toEqual([]);
});
