/** Builds made by hand, in inches: a bench with tenoned aprons and slats, and a bookcase with dados. Only what drawings read is filled in. */
import { contact, solidBox, subtractBox, unite } from "../../../src/geometry/index.ts";
import type { Axis } from "../../../src/parse/draft.ts";
import type { Drawing, Pen } from "../../../src/render/drawing/drawing.ts";
import { measure } from "../../../src/render/typeset/measure.ts";
import type { Build, BuiltJoint, BuiltPart, Fastener, Layout, Placement, Step } from "../../../src/solve/build.ts";
import type { Direction, Point } from "../../../src/solve/design.ts";
import { inches, type Length, printLength, rational, subtract, ZERO } from "../../../src/units/index.ts";

const inch = (x: number): Length => inches(Math.round(x * 64), 64);
export const at = (x: number, y: number, z: number): Point => [inch(x), inch(y), inch(z)];
const span = { start: 0, end: 0, line: 1, column: 1 };

export const pen: Pen = {
  measure,
  print: (length) => printLength(length, { units: "inch", style: "typographic" }).text,
};

type Six = readonly [number, number, number, number, number, number];
const corners = ([x0, y0, z0, x1, y1, z1]: Six) => ({ low: at(x0, y0, z0), high: at(x1, y1, z1) });

interface Shape {
  readonly body: Six;
  /** Tenons and tongues. */
  readonly more?: readonly Six[];
  readonly cuts?: readonly Six[];
}

function part(id: string, mark: string, name: string, stock: string, { body, more = [], cuts = [] }: Shape): BuiltPart {
  const whole = [body, ...more];
  const blank: Six = [
    ...[0, 1, 2].map((i) => Math.min(...whole.map((b) => b[i] ?? 0))),
    ...[3, 4, 5].map((i) => Math.max(...whole.map((b) => b[i] ?? 0))),
  ] as unknown as Six;
  const names: readonly Axis[] = ["x", "y", "z"] as unknown as readonly Axis[];
  const box = corners(blank);
  const extents = ([0, 1, 2] as const)
    .map((i) => ({ axis: names[i] as Axis, size: subtract(box.high[i], box.low[i]) }))
    .sort((p, q) => Number(p.size.n * q.size.d - q.size.n * p.size.d));
  const [thickness, width, length] = extents as [(typeof extents)[0], (typeof extents)[0], (typeof extents)[0]];
  let solid = unite(whole.map((b) => solidBox(corners(b).low, corners(b).high)));
  for (const c of cuts) solid = subtractBox(solid, corners(c).low, corners(c).high);
  return {
    id,
    at: span,
    called: null,
    stock,
    body: corners(body),
    blank: box,
    axes: { thickness: thickness.axis, width: width.axis, length: length.axis },
    thickness: thickness.size,
    width: width.size,
    length: length.size,
    solid,
    features: [],
    holes: [],
    goodFace: null,
    mark,
    name,
    mass: 1,
  };
}

function joint(
  parts: readonly BuiltPart[],
  joined: string,
  other: string,
  insertion: Direction | null,
  method: BuiltJoint["method"],
  fasteners: readonly string[] = [],
): BuiltJoint {
  const solid = (id: string) => parts.find((p) => p.id === id)?.solid ?? solidBox(at(0, 0, 0), at(1, 1, 1));
  return {
    id: `${joined}/${other}`,
    at: span,
    parts: [joined, other],
    kind: "fixed",
    method,
    glue: true,
    gap: ZERO,
    contact: contact(solid(joined), solid(other)),
    insertion,
    arrangements: [],
    fasteners,
  };
}

function screw(
  id: string,
  of: string,
  head: Point,
  direction: Direction,
  length: number,
  through: string,
  into: string,
): Fastener {
  return {
    id,
    joint: of,
    kind: "wood screw",
    item: `#8 × ${length} in wood screw`,
    length: inch(length),
    rod: inch(0.1563),
    head: { at: head, diameter: inch(0.3125), height: inch(0.125), seat: "flush" },
    direction,
    through: [through],
    into,
    travelsWith: null,
  };
}

function step(
  number: number,
  title: string,
  unit: string,
  shows: Partial<Step["shows"]>,
  up: Direction = [0, 0, 1],
): Step {
  return {
    number,
    title,
    kind: "join",
    unit,
    copies: 1,
    up,
    after: [],
    bench: 10,
    waits: [],
    text: [],
    cautions: [],
    reminders: [],
    actions: [],
    shows: { fresh: [], present: [], travel: [], fasteners: [], ...shows },
  };
}

function build(
  title: string,
  parts: readonly BuiltPart[],
  joints: readonly BuiltJoint[],
  fasteners: readonly Fastener[],
  steps: readonly Step[],
  layouts: readonly Layout[],
): Build {
  return {
    design: {
      title,
      subtitle: "",
      by: "",
      summary: "",
      edition: "2024-01-01",
      units: "inch",
      precision: inches(1, 16),
      kerf: inches(1, 8),
      sizes: new Map(),
      stock: [],
      parts,
      joints,
      groups: [],
    },
    parts,
    cutList: [],
    blanks: [],
    joints,
    fasteners,
    holes: [],
    layouts,
    layoutProof: [],
    purchases: [],
    steps,
    tools: [],
    checks: [],
    findings: [],
  };
}

/** 42 × 14 × 18 in: four legs, two long and two short aprons with tenons, five slats screwed down from above. */
export function bench(): Build {
  const [w, d, h, leg, top, rail, inset] = [42, 14, 18, 2.5, 1, 3.5, 0.5];
  const z1 = h - top;
  const z0 = z1 - rail;
  const t = 0.875;
  const deep = 1;
  const x = { left: [1.5, 1.5 + leg], right: [w - 1.5 - leg, w - 1.5] } as const;
  const y = { front: [1, 1 + leg], back: [d - 1 - leg, d - 1] } as const;
  const tenonLong = (front: boolean): readonly Six[] => {
    const ya = (front ? y.front[0] : y.back[1] - t) + (front ? inset : -inset);
    const [m0, m1] = [ya + 0.25, ya + t - 0.25];
    return [
      [x.left[1] - deep, m0, z0 + 0.25, x.left[1], m1, z1 - 0.5],
      [x.right[0], m0, z0 + 0.25, x.right[0] + deep, m1, z1 - 0.5],
    ];
  };
  const tenonShort = (left: boolean): readonly Six[] => {
    const xa = (left ? x.left[0] : x.right[1] - t) + (left ? inset : -inset);
    const [m0, m1] = [xa + 0.25, xa + t - 0.25];
    return [
      [m0, y.front[1] - deep, z0 + 0.25, m1, y.front[1], z1 - 0.5],
      [m0, y.back[0], z0 + 0.25, m1, y.back[0] + deep, z1 - 0.5],
    ];
  };
  const long = (side: "front" | "back"): BuiltPart => {
    const ya = side === "front" ? y.front[0] + inset : y.back[1] - t - inset;
    return part(`${side}-apron`, "B", "Long apron", "oak", {
      body: [x.left[1], ya, z0, x.right[0], ya + t, z1],
      more: tenonLong(side === "front"),
    });
  };
  const short = (side: "left" | "right"): BuiltPart => {
    const xa = side === "left" ? x.left[0] + inset : x.right[1] - t - inset;
    return part(`${side}-end.apron`, "C", "Short apron", "oak", {
      body: [xa, y.front[1], z0, xa + t, y.back[0], z1],
      more: tenonShort(side === "left"),
    });
  };
  const legs = (["left", "right"] as const).flatMap((s) =>
    (["front", "back"] as const).map((f) =>
      part(`${s}-end.${f}-leg`, "A", "Leg", "oak", {
        body: [x[s][0], y[f][0], 0, x[s][1], y[f][1], z1],
        cuts: [...tenonLong(f === "front"), ...tenonShort(s === "left")],
      }),
    ),
  );
  const slatWide = 2.5;
  const gap = (d - 5 * slatWide) / 4;
  const slats = [0, 1, 2, 3, 4].map((i) =>
    part(`slat.${i + 1}`, "D", "Slat", "oak", {
      body: [0, i * (slatWide + gap), z1, w, i * (slatWide + gap) + slatWide, h],
    }),
  );
  const parts = [...legs, long("front"), long("back"), short("left"), short("right"), ...slats];
  const joints: BuiltJoint[] = [];
  for (const s of ["left", "right"] as const) {
    joints.push(
      joint(parts, `${s}-end.apron`, `${s}-end.front-leg`, [0, -1, 0], "mortise and tenon"),
      joint(parts, `${s}-end.apron`, `${s}-end.back-leg`, [0, 1, 0], "mortise and tenon"),
    );
    for (const f of ["front", "back"] as const)
      joints.push(
        joint(parts, `${f}-apron`, `${s}-end.${f}-leg`, s === "left" ? [-1, 0, 0] : [1, 0, 0], "mortise and tenon"),
      );
  }
  const fasteners: Fastener[] = [];
  for (const slat of slats) {
    const mid =
      (Number(slat.body.low[1].n) / Number(slat.body.low[1].d) +
        Number(slat.body.high[1].n) / Number(slat.body.high[1].d)) /
      2 /
      406400;
    for (const s of ["left", "right"] as const) {
      const under = `${s}-end.apron`;
      const xa = s === "left" ? x.left[0] + inset + t / 2 : x.right[1] - inset - t / 2;
      if (mid < y.front[1] || mid > y.back[0]) continue;
      fasteners.push(screw(`${slat.id}/${s}`, `${slat.id}/${under}`, at(xa, mid, h), [0, 0, -1], 2, slat.id, under));
    }
    for (const s of ["left", "right"] as const)
      joints.push(
        joint(
          parts,
          slat.id,
          `${s}-end.apron`,
          null,
          "screws",
          fasteners.filter((f) => f.joint === `${slat.id}/${s}-end.apron`).map((f) => f.id),
        ),
      );
  }
  const end = (s: "left" | "right") => legs.filter((l) => l.id.startsWith(s)).map((l) => l.id);
  const ends = (s: "left" | "right") => [...end(s), `${s}-end.apron`];
  const steps = [
    step(1, "Glue up an end", "left-end", {
      fresh: [`left-end.apron`, `left-end.back-leg`],
      present: [`left-end.front-leg`],
      travel: [
        { parts: ["left-end.apron"], along: [0, -1, 0] },
        { parts: ["left-end.back-leg"], along: [0, -1, 0] },
      ],
    }),
    step(2, "Glue up the other end", "right-end", {
      fresh: [`right-end.apron`, `right-end.back-leg`],
      present: [`right-end.front-leg`],
      travel: [
        { parts: ["right-end.apron"], along: [0, -1, 0] },
        { parts: ["right-end.back-leg"], along: [0, -1, 0] },
      ],
    }),
    step(3, "Join the ends", "piece", {
      fresh: ["front-apron", "back-apron", ...ends("right")],
      present: ends("left"),
      travel: [
        { parts: ["front-apron", "back-apron"], along: [-1, 0, 0] },
        { parts: ends("right"), along: [-1, 0, 0] },
      ],
    }),
    step(4, "Screw down the slats", "piece", {
      fresh: slats.map((s) => s.id),
      present: [...ends("left"), ...ends("right"), "front-apron", "back-apron"],
      travel: [{ parts: slats.map((s) => s.id), along: [0, 0, -1] }],
      fasteners: fasteners.map((f) => f.id),
    }),
  ];
  return build("Reading bench", parts, joints, fasteners, steps, [boardLayout()]);
}

/** 30 × 11 × 48 in: sides with dados and a rabbet, four shelves, a top, a back. */
export function bookcase(): Build {
  const [w, d, h, t, into] = [30, 11, 48, 0.75, 0.25];
  const zs = [3, 14.5, 26, 37];
  const back = 0.25;
  const side = (s: "left" | "right"): BuiltPart => {
    const [x0, x1] = s === "left" ? [0, t] : [w - t, w];
    const inner = (deep: number, z0: number, z1: number, y0 = -1, y1 = d + 1): Six =>
      s === "left" ? [t - deep, y0, z0, t + 1, y1, z1] : [w - t - 1, y0, z0, w - t + deep, y1, z1];
    return part(`${s}-side`, s === "left" ? "A" : "B", s === "left" ? "Left side" : "Right side", "ply", {
      body: [x0, 0, 0, x1, d, h],
      cuts: [
        ...zs.map((z) => inner(into, z, z + t)),
        inner(0.375, -1, h + 1, d - back, d + 1),
        [x0 - 1, -1, -1, x1 + 1, 2, 2.5],
      ],
    });
  };
  const notched = (s: "left" | "right"): BuiltPart => ({
    ...side(s),
    features: [
      {
        kind: "notch",
        for: null,
        origin: at(s === "left" ? 0 : w - t, 0, 0),
        along: [1, 0, 0],
        across: [0, 0, 1],
        into: [0, 1, 0],
        size: [inch(t), inch(2.5), inch(2)],
      },
    ],
  });
  const shelves = zs.map((z, i) =>
    part(`shelf.${i + 1}`, "C", "Shelf", "ply", {
      body: [t, 0, z, w - t, d - back, z + t],
      more: [
        [t - into, 0, z, t, d - back, z + t],
        [w - t, 0, z, w - t + into, d - back, z + t],
      ],
    }),
  );
  const parts = [
    notched("left"),
    notched("right"),
    ...shelves,
    part("top", "D", "Top", "ply", { body: [t, 0, h - t, w - t, d - back, h] }),
    part("back", "E", "Back", "back ply", { body: [t - 0.375, d - back, 3, w - t + 0.375, d, h] }),
    part("toe-kick", "F", "Toe kick", "ply", { body: [t, 2, 0, w - t, 2 + t, 3] }),
  ];
  const joints = [...shelves.map((s) => s.id), "top", "toe-kick", "back"].flatMap((id) => {
    const dado = id.startsWith("shelf");
    return [
      joint(parts, id, "left-side", dado ? [-1, 0, 0] : null, dado ? "dado" : "screws"),
      joint(parts, id, "right-side", dado ? [1, 0, 0] : null, dado ? "dado" : "screws"),
    ];
  });
  const inner = [...shelves.map((s) => s.id), "top", "toe-kick"];
  const screws = ["left", "right"].flatMap((s) =>
    [1.5, 9].map((y, i) =>
      screw(
        `top/${s}/${i}`,
        `top/${s}-side`,
        at(s === "left" ? 0 : w, y, h - t / 2),
        s === "left" ? [1, 0, 0] : [-1, 0, 0],
        1.625,
        `${s}-side`,
        "top",
      ),
    ),
  );
  const steps = [
    step(1, "Set the shelves into the left side", "piece", {
      fresh: inner,
      present: ["left-side"],
      travel: [{ parts: inner, along: [-1, 0, 0] }],
      fasteners: screws.filter((s) => s.id.includes("left")).map((s) => s.id),
    }),
    step(2, "Add the right side", "piece", {
      fresh: ["right-side"],
      present: ["left-side", ...inner],
      travel: [{ parts: ["right-side"], along: [-1, 0, 0] }],
      fasteners: screws.filter((s) => s.id.includes("right")).map((s) => s.id),
    }),
    step(
      3,
      "Nail on the back",
      "piece",
      {
        fresh: ["back"],
        present: ["left-side", ...inner, "right-side"],
        travel: [{ parts: ["back"], along: [0, -1, 0] }],
      },
      [0, -1, 0].map((x) => -x + 0) as unknown as Direction,
    ),
  ];
  return build("Bookcase", parts, joints, screws, steps, [sheetLayout()]);
}

const placement = (mark: string, x: number, y: number, width: number, length: number): Placement => ({
  blank: `${mark} ${x} ${y}`,
  mark,
  x: inch(x),
  y: inch(y),
  width: inch(width),
  length: inch(length),
  turned: false,
});

/** A 48 × 96 in sheet: two sides, four shelves, a top. */
export function sheetLayout(): Layout {
  const k = 0.125;
  const [a, b] = [0.25, 0.25];
  const x = [a, a + 11 + k, a + 22 + 2 * k];
  const rip = (number: number, x: number, y0: number, y1: number) =>
    ({ number, kind: "rip", from: [inch(x), inch(y0)], to: [inch(x), inch(y1)], fence: inch(x) }) as const;
  const cross = (number: number, y: number, x0: number, x1: number) =>
    ({ number, kind: "crosscut", from: [inch(x0), inch(y)], to: [inch(x1), inch(y)], fence: inch(y) }) as const;
  const [x0 = 0, x1 = 0, x2 = 0] = x;
  return {
    stock: "ply",
    kind: "sheet",
    source: "buy",
    thickness: inch(0.75),
    width: inch(48),
    length: inch(96),
    kerf: inch(k),
    squaring: inch(0.25),
    placements: [
      placement("A", x0, b, 11, 48),
      placement("B", x1, b, 11, 48),
      ...[0, 1, 2].map((i) => placement("C", x2, b + i * (29 + k), 10.75, 29)),
      placement("C", x0, b + 48 + k, 10.75, 29),
      placement("D", x1, b + 48 + k, 10.75, 28.5),
      placement("F", x2 + 10.75 + k, b, 3, 28.5),
    ],
    cuts: [
      rip(1, x0 + 11, 0, 96),
      rip(2, x1 + 11, 0, 96),
      cross(3, b + 48, 0, x0 + 11),
      cross(4, b + 48, x1, x1 + 11),
      rip(5, x2 + 10.75, 0, 96),
      cross(6, b + 29, x2, x2 + 10.75),
      cross(7, b + 58 + k, x2, x2 + 10.75),
      cross(8, b + 87 + 2 * k, x2, x2 + 10.75),
      rip(9, x2 + 13.75 + k, 0, 96),
      cross(10, b + 28.5, x2 + 10.75 + k, x2 + 13.75 + k),
    ],
    offcuts: [{ x: inch(x2 + 14 + k), y: inch(b), width: inch(48 - x2 - 14.25), length: inch(95.5) }],
  };
}

/** An 8 ft board, 5 1/2 in wide: long parts first, then short ones ripped from the rest. */
export function boardLayout(): Layout {
  const k = 0.125;
  const cross = (number: number, y: number, x0 = 0, x1 = 5.5) =>
    ({ number, kind: "crosscut", from: [inch(x0), inch(y)], to: [inch(x1), inch(y)], fence: inch(y) }) as const;
  const pieces = [34, 34, 9];
  let y = 0.5;
  const placements: Placement[] = [];
  const cuts: Layout["cuts"][number][] = [cross(1, 0.5 - k)];
  pieces.forEach((length, i) => {
    placements.push(placement(i < 2 ? "B" : "C", 0, y, 3.5, length));
    cuts.push(cross(i + 2, y + length));
    y += length + k;
  });
  cuts.push({ number: 5, kind: "rip", from: [inch(3.5), inch(0.5)], to: [inch(3.5), inch(34.5)], fence: inch(3.5) });
  return {
    stock: "oak",
    kind: "board",
    source: "buy",
    thickness: inch(0.875),
    width: inch(5.5),
    length: inch(96),
    kerf: inch(k),
    squaring: rational(0),
    placements,
    cuts,
    offcuts: [
      { x: ZERO, y: inch(y), width: inch(5.5), length: inch(96 - y) },
      { x: inch(3.5 + k), y: inch(0.5), width: inch(5.5 - 3.5 - k), length: inch(34) },
    ],
  };
}

export type { Drawing };
