import { describe, expect, test } from "vitest";
import { volume } from "../../../src/geometry/index.ts";
import { ISOMETRIC, viewFrom } from "../../../src/geometry/picture/index.ts";
import { solidBox } from "../../../src/geometry/solid.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import type { Item } from "../../../src/render/document.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { Plate } from "../../../src/render/drawing/plate.ts";
import { captioned, offTheLine } from "../../../src/render/drawing/step/captions.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { sideSeen } from "../../../src/render/drawing/step/side-seen.ts";
import { ACCENT, METAL, TINT } from "../../../src/render/palette.ts";
import type { Blank, Build, Fastener, Step } from "../../../src/solve/build.ts";
import type { Hardware } from "../../../src/solve/design.ts";
import { toNumber } from "../../../src/units/index.ts";
import { inch, step } from "./fixture/making.ts";
import { at, bench, pen } from "./fixture.ts";
import { outside, paths, pointsOf, segmentsOf, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 255, height: 180 };
const CUBIC_INCH = 406_400 ** 3;
const filled = (items: readonly Item[], inks: readonly unknown[]) =>
  paths(items).filter(({ fill }) => inks.includes(fill));
const TINTS = Object.values(TINT);
const METALS = Object.values(METAL);

/** The apron from boards of 1 × 5 × 30 in, glued up from three. */
function shop() {
  const build = bench();
  const [first] = build.parts;
  if (!first) throw new Error("the bench has parts");
  const apron = build.parts.find(({ id }) => id === "front-apron") ?? first;
  const blanks = [1, 2, 3].map(
    (i): Blank => ({
      ...{ id: `b${i}`, part: apron.id, mark: "B", stock: "oak", grain: "length", why: "glue-up" },
      ...{ thickness: inch(1), width: inch(5), length: inch(30), jointed: inch(4.5) },
    }),
  );
  const line = {
    ...{ mark: "B", name: "Long apron", stock: "oak", parts: [apron.id], mirrorOf: null, notes: [] },
    ...{ thickness: inch(0.875), width: inch(12), length: inch(28) },
  };
  const parts = build.parts.map((each) =>
    each.id === apron.id
      ? {
          ...each,
          making: { boards: 3, layers: 1, banding: [], cut: "list", over: inch(0), strip: null, alike: null } as const,
        }
      : each,
  );
  const shows = (as: NonNullable<Step["shows"]["as"]>) => step(1, "At the bench", "B", { fresh: [apron.id], as });
  return { build: { ...build, parts, blanks, cutList: [line] }, shows };
}

describe("wood that is not yet what the piece holds", () => {
  const { build, shows } = shop();
  const volumes = (of: Step) => sceneOf(build, of).items.map(({ solid }) => toNumber(volume(solid)) / CUBIC_INCH);

  test("lies on the bench as the saw leaves it, apart, and is counted", () => {
    const { items } = sceneOf(build, shows("sawn"));
    // 1 × 5 × 30 in, three times.
    expect(volumes(shows("sawn")).map(Math.round)).toEqual([150, 150, 150]);
    const fronts = items.map(({ solid, shift = [0, 0, 0] }) => [solid.low[1] + shift[1], solid.high[1] + shift[1]]);
    for (const [i, [low = 0]] of fronts.entries()) if (i > 0) expect(low).toBeGreaterThan(fronts[i - 1]?.[1] ?? 0);
    expect(words(stepPicture(build, shows("sawn"), { frame, pen }).items)).toContain("B × 3");
  });

  test("glued up, its boards touch as wide as they are jointed, with a triangle over all of them", () => {
    const { items, pencil } = sceneOf(build, shows("glued"));
    expect(volumes(shows("glued")).map(Math.round)).toEqual([135, 135, 135]);
    const edges = items.map(({ solid, shift = [0, 0, 0] }) => [solid.low[1] + shift[1], solid.high[1] + shift[1]]);
    expect(edges[1]?.[0]).toBe(edges[0]?.[1]);
    expect(edges[2]?.[0]).toBe(edges[1]?.[1]);
    expect(pencil).toHaveLength(3);
    const across = pencil.flat().map(([, y]) => y);
    expect(Math.min(...across)).toBeLessThan(edges[0]?.[1] ?? 0);
    expect(Math.max(...across)).toBeGreaterThan(edges[2]?.[0] ?? 0);
  });

  test("in its size it is a plain box", () => {
    expect(volumes(shows("sized"))).toEqual([0.875 * 12 * 28]);
    expect(stepPicture(build, shows("sized"), { frame, pen }).key).not.toBe(
      stepPicture(build, shows("sawn"), { frame, pen }).key,
    );
  });
});

/** A knob of ½ in on the front apron, and the step that puts it on. */
function knobbed(): { build: Build; fit: Step } {
  const build = bench();
  const apron = build.parts.find(({ id }) => id === "front-apron");
  if (!apron) throw new Error("the bench has aprons");
  const [x, y, z] = [21, toNumber(apron.body.low[1]) / 406_400, 15];
  const knob: Hardware = {
    ...{ id: "knob", joint: null, carriedBy: apron.id, at: at(x, y, z) },
    solid: solidBox(at(x, y - 0.5, z), at(x + 0.5, y, z + 0.5)),
    item: {
      ...{ name: "knob", kind: "knob", label: "knob", said: new Set(), decides: [], price: null },
      ...{ measures: new Map(), ranges: new Map(), lists: new Map(), numbers: new Map(), words: new Map() },
    },
  };
  const rest = build.parts.map(({ id }) => id).filter((id) => !id.startsWith("slat"));
  const fit: Step = {
    ...step(5, "Fit the knob", "fit knob", { present: rest }),
    ...{ kind: "fit", actions: [{ do: "fit", hardware: ["knob"], to: [apron.id] }] },
  };
  return { build: { ...build, hardware: [knob], steps: [...build.steps, fit] }, fit };
}

describe("hardware that is put on", () => {
  const { build, fit } = knobbed();

  test("is tinted and named, what carries it is white", () => {
    const { items } = stepPicture(build, fit, { frame, pen });
    expect(filled(items, METALS).length).toBeGreaterThan(0);
    expect(filled(items, TINTS)).toEqual([]);
    expect(words(items)).toContain("knob");
  });

  test("small as it is, its surroundings are drawn in a border, larger than in the whole, which stands beside them", () => {
    const { items, alt } = stepPicture(build, fit, { frame, pen });
    expect(alt).toContain("Only what is around it is drawn.");
    expect(outside(items, frame)).toEqual([]);
    const reach = (ink: unknown) => {
      const xs = filled(items, [ink]).map((each) => pointsOf(each).map(([px]) => px));
      return xs.map((some) => Math.max(...some) - Math.min(...some));
    };
    // A knob of half an inch on a bench of 42 in: drawn whole at this width it would be 3 points wide.
    expect(Math.max(...METALS.flatMap(reach))).toBeGreaterThan(5);
  });

  test("stays on, untinted, in what follows", () => {
    const after = { ...fit, number: 6, actions: [] };
    const scene = sceneOf({ ...build, steps: [...build.steps, after] }, after);
    expect(scene.hardware.size).toBe(0);
    expect(scene.items.some(({ id }) => id === "knob")).toBe(true);
  });
});

test("dowels stand out of the part that they travel in, clear of the other", () => {
  const build = bench();
  const [first] = build.steps;
  const joined = build.joints.find(({ id }) => id === "left-end.apron/left-end.front-leg");
  const apron = build.parts.find(({ id }) => id === "left-end.apron");
  if (!first || !joined || !apron) throw new Error("the fixture has an end");
  // Inside the apron by 1 in, 2 in long, towards the front leg.
  const [x, y, z] = [0, 1, 2].map((i) => toNumber(apron.body.low[i as 0 | 1 | 2]) / 406_400) as [
    number,
    number,
    number,
  ];
  const dowel: Fastener = {
    ...{ id: "dowel", joint: joined.id, kind: "dowel", item: "dowel 3/8 in × 2 in", length: inch(2), rod: inch(0.375) },
    head: { at: at(x + 0.4, y + 1, z + 1.5), diameter: inch(0.375), height: inch(0), seat: "sunk" },
    ...{ direction: [0, -1, 0], through: [apron.id], into: "left-end.front-leg", travelsWith: apron.id },
  };
  const joints = build.joints.map((each) => (each === joined ? { ...each, method: "dowels" as const } : each));
  const { screws, shifts } = sceneOf({ ...build, joints, fasteners: [dowel] }, first);
  const [peg] = screws;
  expect(peg?.isDowel).toBe(true);
  const moved = shifts.get(apron.id)?.[1] ?? 0;
  const end = toNumber(apron.body.low[1]) + moved;
  expect(peg?.point[1]).toBeCloseTo(end - 406_400, 0);
  // The face of the leg that it goes into.
  const leg = build.parts.find(({ id }) => id === "left-end.front-leg");
  expect(peg?.point[1]).toBeGreaterThan(toNumber(leg?.body.high[1] ?? inch(0)));
});

/** From a spot to a segment. */
function distance(
  [x, y]: readonly [number, number] = [0, 0],
  [x1, y1, x2, y2]: readonly [number, number, number, number],
): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const t = Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - x1 - t * dx, y - y1 - t * dy);
}

test("an arrow has its tip near an edge of what moves", () => {
  const build = bench();
  for (const of of build.steps) {
    const { items } = stepPicture(build, of, { frame, pen });
    const edges = paths(items)
      .filter(({ stroke }) => stroke?.width === 1 || stroke?.width === 0.55)
      .flatMap(segmentsOf);
    for (const arrow of filled(items, [ACCENT])) {
      const [tip] = pointsOf(arrow);
      expect(Math.min(...edges.map((edge) => distance(tip, edge)))).toBeLessThan(14);
    }
  }
});

test("the side that faces the reader is named where it is not the front from above", () => {
  const name = "the back right and below";
  expect(sideSeen(ISOMETRIC, [0, 0, 1])).toBeNull();
  expect(sideSeen(viewFrom(name, [1, 1, -1]), [0, 0, 1])).toBe(`Seen from ${name}`);
  // Turned over on the bench, its underside is up, and is seen from above.
  expect(sideSeen(viewFrom(name, [1, -1, -1], [0, 0, -1]), [0, 0, -1])).toBe("Upside down");
  expect(sideSeen(viewFrom(name, [1, -1, 1], [0, -1, 0]), [0, -1, 0])).toBe("Lying on its back, top towards you");
  // What lies is told from the side that is turned to the reader, what is turned about as it stands too.
  const lies: Vec = [1, 0, 0];
  expect(sideSeen(viewFrom(name, [1, -1, 1], lies), lies)).toBe("Lying on its left side, front towards you");
  expect(sideSeen(viewFrom(name, [1, 1, 1], lies), lies)).toBe("Lying on its left side, back towards you");
  expect(sideSeen(viewFrom("the front left and above", [-1, -1, 1]), [0, 0, 1])).toBe(
    "Seen from the front left and above",
  );
});

test("words below a picture stand in another corner where something would be close beside them", () => {
  const frame = { x: 0, y: 0, width: 255, height: 120 };
  const free = captioned("Upside down", 100, new Plate(frame), pen).box;
  const { right = 0, top = 0, bottom = 0, left = 0 } = free ?? {};
  const beside = (gap: number): Plate => {
    const plate = new Plate(frame);
    plate.addBox({ left: right + gap, right: right + gap + 10, top, bottom });
    return plate;
  };
  expect(captioned("Upside down", 100, beside(20), pen).box?.left).toBe(left);
  // The other corner is on the same level, and never above the picture.
  const other = captioned("Upside down", 100, beside(3), pen).box;
  expect(other?.left).toBeGreaterThan(right);
  expect(other?.top).toBe(top);
  const full = new Plate(frame);
  full.addLine([
    [0, top + 5],
    [255, top + 5],
  ]);
  expect(captioned("Upside down", 100, full, pen).box?.top).toBeGreaterThanOrEqual(frame.height);
});

test("a name does not stand where it would be read on with the words below a picture", () => {
  const plate = new Plate({ x: 0, y: 0, width: 255, height: 120 });
  const caption = captioned("Seen from the front left and above", 100, plate, pen);
  const toll = offTheLine(caption, pen);
  const { right = 0, top = 0, bottom = 0 } = caption.box ?? {};
  const middle = (top + bottom) / 2;
  const at = (mark: string, x: number, y: number): number =>
    toll(
      { mark, targets: [], hidden: false },
      [x, y],
      [
        [x, y],
        [x, y],
      ],
    );
  expect(at("butt hinge", right + 40, middle)).toBeGreaterThan(0);
  expect(at("butt hinge", right + 40, middle - 20)).toBe(0);
  // The mark of a part in its circle is no word.
  expect(at("A", right + 40, middle)).toBe(0);
});
