import { expect, test } from "vitest";
import { notYetParted } from "../../../src/render/drawing/step/not-yet-parted.ts";
import type { Blank, Build } from "../../../src/solve/build.ts";
import { makingOf } from "../../../src/solve/design/making/plain.ts";
import { inch, step } from "./fixture/making.ts";
import { bench } from "./fixture.ts";

test("what is cut to fit later stays in the piece that it is planed in with others, in its new thickness", () => {
  const build = bench();
  const parts = ["front-apron", "back-apron"];
  const size = { beside: 3, inLine: 1, width: inch(5), length: inch(30) };
  const whole: Blank = {
    ...{
      id: "b1",
      part: "front-apron",
      alsoParts: ["back-apron"],
      mark: "B",
      stock: "oak",
      grain: "length",
      why: "rough",
    },
    ...{ thickness: inch(1), width: inch(5), length: inch(30), planedWhole: size },
  };
  const line = {
    ...{ mark: "B", name: "Long apron", stock: "oak", parts, mirrorOf: null, notes: [] },
    ...{ thickness: inch(0.875), width: inch(1), length: inch(28) },
  };
  const cut = (as: "list" | "piece", blank = whole): Build => ({
    ...build,
    blanks: [blank],
    parts: build.parts.map((each) => ({ ...each, making: { ...makingOf(each), cut: as } })),
  });
  const at = (kind: "mill" | "fit") => ({ ...step(1, "To size", "oak", { fresh: parts, as: "sized" }), kind });
  const sizes = (of: Build, kind: "mill" | "fit") =>
    notYetParted(of, at(kind), line).map(({ thickness, width, length }) => [thickness, width, length]);
  expect(sizes(cut("piece"), "mill")).toEqual([[inch(0.875), inch(5), inch(30)]]);
  // Cut from the list it is parted now; when it is fitted it is parted too.
  expect(sizes(cut("list"), "mill")).toEqual([]);
  expect(sizes(cut("piece"), "fit")).toEqual([]);
  const { planedWhole: _, ...alone } = whole;
  expect(sizes(cut("piece", alone), "mill")).toEqual([]);
});
