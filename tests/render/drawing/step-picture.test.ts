import { describe, expect, test } from "vitest";
import { viewFrom } from "../../../src/geometry/picture/index.ts";
import { solidBox } from "../../../src/geometry/solid.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { chooseView } from "../../../src/render/drawing/step/views.ts";
import { ACCENT, BLACK, contrast, GREY, luminance, TINT, WHITE } from "../../../src/render/palette.ts";
import type { Point } from "../../../src/solve/design.ts";
import { inch } from "./fixture/making.ts";
import { bench, bookcase, pen } from "./fixture.ts";
import { paths, pointsOf, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 255, height: 290 };

describe("a step's picture", () => {
  const build = bench();
  const step = (of: typeof build, number: number) => {
    const found = of.steps[number - 1];
    if (!found) throw new Error(`the fixture has no step ${number}`);
    return found;
  };
  const [third, slats] = [step(build, 3), step(build, 4)];

  test("new parts in lines at least twice as wide as what is there, and tinted", () => {
    const { items } = stepPicture(build, third, { frame, pen });
    const solid = paths(items).filter(({ stroke, fill }) => stroke && !stroke.dash && !fill);
    const widths = new Set(solid.map(({ stroke }) => stroke?.width ?? 0));
    expect(widths).toContain(1);
    expect(widths).toContain(0.35);
    const tinted = paths(items).filter(({ fill }) => Object.values(TINT).some((t) => t === fill));
    expect(tinted.length).toBeGreaterThan(0);
  });

  test("only the unit in hand is shown", () => {
    const first = step(build, 1);
    const alone = { ...build, parts: build.parts.filter(({ id }) => id.startsWith("left-end")) };
    expect(stepPicture(build, first, { frame, pen }).items).toEqual(stepPicture(alone, first, { frame, pen }).items);
  });

  test("it lies as the words lay it, and says how", () => {
    const first = step(build, 1);
    const said = (up?: readonly [number, number, number]) =>
      words(stepPicture(build, { ...first, shows: { ...first.shows, ...(up && { up }) } }, { frame, pen }).items);
    expect(said().join(" ")).not.toContain("Upside down");
    expect(said([0, 0, -1]).join(" ")).toContain("Upside down");
    expect(said([-1, 0, 0]).join(" ")).toContain("Lying on its right side");
  });

  test("every screw is drawn: an axis, a head and a ring where it goes in", () => {
    const { items } = stepPicture(build, slats, { frame, pen });
    expect(slats.shows.fasteners).toHaveLength(6);
    const heads = paths(items).filter(({ stroke }) => stroke?.width === 1.5);
    expect(heads).toHaveLength(6);
    const rings = paths(items).filter(({ stroke, fill }) => stroke?.width === 0.6 && fill === WHITE);
    expect(rings).toHaveLength(6);
  });

  test("of many nails only a cross is drawn where each goes in, of few their length too", () => {
    const nails = (of: number) => {
      const made = build.fasteners.filter(({ id }) => slats.shows.fasteners.includes(id));
      const more = Array.from({ length: of }, (_, i) => ({ ...made[i % made.length], id: `nail ${i}`, kind: "brad" }));
      const fasteners = more.map(({ id }) => id);
      const own = { ...build, fasteners: more as unknown as typeof build.fasteners };
      return paths(stepPicture(own, { ...slats, shows: { ...slats.shows, fasteners } }, { frame, pen }).items);
    };
    const heads = (of: number) => nails(of).filter(({ stroke }) => stroke?.width === 1.5).length;
    const crosses = (of: number) => nails(of).filter(({ stroke, fill }) => stroke?.width === 0.6 && !fill).length;
    expect([heads(6), crosses(6)]).toEqual([6, 0]);
    expect([heads(12), crosses(12)]).toEqual([0, 12]);
  });

  test("an arrow for each way that something travels", () => {
    const arrows = (shown: typeof third) =>
      paths(stepPicture(build, shown, { frame, pen }).items).filter(({ fill }) => fill === ACCENT).length;
    expect(arrows(third)).toBe(1);
    const [one, two] = third.shows.travel;
    if (!one || !two) throw new Error("two groups travel in the third step");
    const back = { ...two, along: [-two.along[0], -two.along[1], -two.along[2]] as const };
    expect(arrows({ ...third, shows: { ...third.shows, travel: [one, back] } })).toBe(2);
    expect(arrows(slats)).toBe(1);
  });

  test("what comes off is drawn off its place with an arrow that leads it, what goes on again with one behind it", () => {
    const [off] = slats.shows.fresh;
    if (!off) throw new Error("the fixture has no slat");
    const rest = slats.shows.present;
    const out = [0, 0, 1] as const;
    const bare = {
      ...slats,
      kind: "take-off",
      shows: { fresh: [off], present: rest, travel: [], fasteners: [] },
    } as const;
    const legs = (along: readonly [number, number, number]) => [{ along, distance: null }] as const;
    const takeOff: typeof third = {
      ...bare,
      actions: [{ do: "remove", parts: [off], from: rest, legs: legs(out), undrives: [] }],
    };
    const again: typeof third = {
      ...{ ...bare, number: slats.number + 1, kind: "fit" },
      actions: [{ do: "add", parts: [off], to: rest, how: "straight", legs: legs([0, 0, -1]) }],
    };
    const both: typeof build = { ...build, steps: [takeOff, again] };
    const [gone, back] = [sceneOf(both, takeOff), sceneOf(both, again)];
    expect(gone.shifts.get(off)?.[2]).toBeGreaterThan(0);
    expect(back.shifts.get(off)?.[2]).toBe(gone.shifts.get(off)?.[2]);
    expect([gone, back].map(({ groups }) => groups.map(({ along, leaves }) => [along[2], leaves]))).toEqual([
      [[1, true]],
      [[-1, false]],
    ]);
    const pictures = [takeOff, again].map((of) => stepPicture(both, of, { frame, pen }));
    expect(pictures[0]?.key).not.toBe(pictures[1]?.key);
    const tips = pictures.map(({ items }) => paths(items).filter(({ fill }) => fill === ACCENT));
    expect(tips.map((arrows) => arrows.length)).toEqual([1, 1]);
  });

  test("the same with a lower frame shows the same, and no higher", () => {
    const full = stepPicture(build, third, { frame, pen });
    const low = full.within({ height: 150 });
    const high = (items: Parameters<typeof paths>[0]) => {
      const ys = paths(items).flatMap((item) => pointsOf(item).map(([, y]) => y));
      return Math.max(...ys) - Math.min(...ys);
    };
    const said = (alt = "") => alt.replace(/\d+ times larger/, "larger");
    expect(said(low?.alt)).toBe(said(full.alt));
    expect(high(low?.items ?? [])).toBeLessThanOrEqual(150);
    expect(high(low?.items ?? [])).toBeLessThan(high(full.items));
  });

  test("groups that go one way side by side share an arrow", () => {
    const alone = slats.shows.fresh.map((id) => ({ parts: [id], along: [0, 0, -1] as const }));
    const each = { ...slats, shows: { ...slats.shows, travel: alone } };
    const arrows = (of: typeof slats) =>
      paths(stepPicture(build, of, { frame, pen }).items).filter(({ fill }) => fill === ACCENT).length;
    expect(arrows(each)).toBe(1);
    const apart = each.shows.travel.map((t, i) => (i === 2 ? { ...t, along: [0, 0, 1] as const } : t));
    expect(arrows({ ...each, shows: { ...each.shows, travel: apart } })).toBeGreaterThan(1);
  });

  test("view and size stay from step to step of one unit", () => {
    const before = stepPicture(build, third, { frame, pen }).take;
    const next = stepPicture(build, slats, { frame, pen, before }).take;
    expect(next?.view.towards).toEqual(before?.view.towards);
  });

  test("what lies on its face is drawn so, and a back seen from behind", () => {
    const cabinet = bookcase();
    const last = step(cabinet, 3);
    const { take } = stepPicture(cabinet, last, { frame, pen });
    // The back of the piece points to the ceiling, and the back is what is new.
    expect(take?.view.towards[1]).toBeGreaterThan(0);
    expect(take?.view.up[1]).toBeGreaterThan(0);
  });

  test("a step without parts has no picture", () => {
    const empty = { ...third, shows: { fresh: [], present: [], travel: [], fasteners: [] } };
    expect(stepPicture(build, empty, { frame, pen }).items).toEqual([]);
  });
});

describe("choosing a view", () => {
  const parts = bookcase().parts;
  const items = parts.map(({ id, solid }) => ({ id, solid }));
  const subject = (id: string) => ({ items, fresh: new Set([id]), mouths: [] });

  test("turns to what is new, and not without need", () => {
    expect(chooseView(subject("right-side"), [0, 0, 1], null).towards).toEqual([1, -1, 1]);
    expect(chooseView(subject("left-side"), [0, 0, 1], null).towards[0]).toBe(-1);
    expect(chooseView(subject("back"), [0, 0, 1], null).towards[1]).toBe(1);
    const left = viewFrom("the front left and above", [-1, -1, 1]);
    expect(chooseView(subject("top"), [0, 0, 1], left)).toBe(left);
  });

  test("screws must be seen going in", () => {
    const screws = [{ at: [-100, 5 * 406_400, 5 * 406_400] as const, direction: [1, 0, 0] as const }];
    // The top shows from everywhere: only the screws, in from the left, turn the view.
    expect(chooseView({ items, fresh: new Set(["top"]), mouths: screws }, [0, 0, 1], null).towards[0]).toBe(-1);
    expect(chooseView({ items, fresh: new Set(["top"]), mouths: [] }, [0, 0, 1], null).towards[0]).toBe(1);
  });
});

describe("a view that is kept from the step before", () => {
  const block = {
    id: "block",
    solid: solidBox([0, 0, 0].map(inch) as unknown as Point, [10, 10, 10].map(inch) as unknown as Point),
  };
  const subject = { items: [block], fresh: new Set(["block"]), mouths: [] };
  // As the step before saw it, lying on its left side: its top points aslant up the page.
  const lying = viewFrom("the front right and below", [1, -1, -1], [1, 0, 0]);

  test("is not kept when the work is turned the right way up", () => {
    expect(lying.up[2]).toBeGreaterThan(0);
    const { right } = chooseView(subject, [0, 0, 1], lying);
    expect(Math.abs(right[2])).toBe(0);
  });

  test("is kept while the work lies as it lay", () => {
    expect(chooseView(subject, [1, 0, 0], lying)).toBe(lying);
  });

  test("what lies on its side is first seen from the front", () => {
    expect(chooseView(subject, [1, 0, 0], null).towards[1]).toBe(-1);
    expect(chooseView(subject, [-1, 0, 0], null).towards[1]).toBe(-1);
  });

  test("hardware turns it, of which one half is enough", () => {
    const [hinge, leaf] = (["hinge", "leaf"] as const).map((id, i) => ({
      id,
      solid: solidBox([4, 10, 6 + i].map(inch) as unknown as Point, [6, 10.5, 7 + i].map(inch) as unknown as Point),
    }));
    const items = [block, hinge, leaf] as never;
    const front = viewFrom("the front right and above", [1, -1, 1]);
    const put = { ...subject, items };
    expect(chooseView(put, [0, 0, 1], front)).toBe(front);
    expect(chooseView({ ...put, hardware: [["hinge", "leaf"]] }, [0, 0, 1], front).towards[1]).toBe(1);
  });
});

describe("palette", () => {
  // WCAG 2.1: #767676 is the lightest grey with 4.5 : 1 on white (4.54), black on white is 21 : 1.
  test("contrast after WCAG 2.1", () => {
    expect(contrast([0, 0, 0], [1, 1, 1])).toBeCloseTo(21, 9);
    expect(contrast([0x76 / 255, 0x76 / 255, 0x76 / 255], [1, 1, 1])).toBeCloseTo(4.54, 2);
    expect(luminance([0.5, 0.25, 0.75])).toBeCloseTo(
      0.2126 * ((0.5 + 0.055) / 1.055) ** 2.4 +
        0.7152 * ((0.25 + 0.055) / 1.055) ** 2.4 +
        0.0722 * ((0.75 + 0.055) / 1.055) ** 2.4,
      12,
    );
  });

  test("texts read on every ground, and the tints tell from paper without colour", () => {
    for (const ink of [BLACK, GREY, ACCENT]) expect(contrast(ink, WHITE)).toBeGreaterThan(4.5);
    for (const tint of Object.values(TINT)) expect(contrast(BLACK, tint)).toBeGreaterThan(7);
    expect(luminance(TINT.light)).toBeLessThan(0.85);
    expect(luminance(TINT.middle)).toBeLessThan(0.85 * luminance(TINT.light));
    expect(luminance(TINT.dark)).toBeLessThan(0.85 * luminance(TINT.middle));
  });
});
