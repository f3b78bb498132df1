import { expect, test, vi } from "vitest";

/** Everything that a fresh copy of the program finds out about a small scene, as text. */
async function report(before: (geometry: typeof import("../../src/geometry/index.ts")) => void): Promise<string> {
  vi.resetModules();
  const g = await import("../../src/geometry/index.ts");
  const { rational } = await import("../../src/units/rational.ts");
  const at = (x: number, y: number, z: number) =>
    [rational(x * 1000, 7), rational(y * 1000), rational(z * 1000, 3)] as const;
  before(g);
  const side = [1, 2, 3].reduce(
    (so, i) => g.subtractBox(so, at(40, -1, i * 900), at(70, 400, i * 900 + 70)),
    g.solidBox(at(0, 0, 0), at(60, 300, 4000)),
  );
  const slope = g.plane(13n, 5n, 29n, 40_000_000n);
  const parts = [
    side,
    g.cut(side, slope),
    ...[1, 2, 3].map((i) => g.solidBox(at(40, 0, i * 900), at(500, 300, i * 900 + 70))),
    g.mirror(side, 0, rational(270_000, 7)),
    g.cut(g.solidBox(at(0, 0, 0), at(900, 300, 5000)), g.flip(slope)),
  ];
  const pairs = parts.flatMap((a, i) => parts.slice(i + 1).map((b) => [a, b] as const));
  const frame = { length: 2, width: 1, thickness: 0 } as const;
  const found = {
    parts: parts.map((part) => [part, g.volume(part), g.centroid(part)]),
    pairs: pairs.map(([a, b]) => [
      g.contact(a, b),
      g.overlapDepth(a, b),
      g.distance(a, b),
      g.blocks(a, b, [1, 0, 0]),
      g.congruence({ solid: a, frame, marks: [] }, { solid: b, frame, marks: [] }),
    ]),
  };
  return JSON.stringify(found, (_, value) => (typeof value === "bigint" ? `${value}` : value));
}

test("a result is the same to the last digit whatever was made before", async () => {
  const plain = await report(() => {});
  const after = await report((g) => {
    // Other work, then planes and corners of the scene itself, in another order and turned round.
    let other = g.solidBox([one(0), one(0), one(0)], [one(9), one(9), one(9)]);
    for (let i = 1n; i < 40n; i++) other = g.cut(other, g.plane(i % 7n, i % 5n, i % 3n, 200n + i));
    g.flip(g.plane(-13n, -5n, -29n, -40_000_000n));
    for (let z = 5000; z >= 0; z -= 100)
      g.vertexAt([
        { n: 0n, d: 1n },
        { n: 0n, d: 1n },
        { n: BigInt(z) * 1000n, d: 1n },
      ]);
    for (const x of [500n, 70n, 60n, 40n, 0n]) g.flip(g.plane(-7n, 0n, 0n, -1000n * x));
  });
  expect(after).toBe(plain);
  expect(plain.length).toBeGreaterThan(20_000);
});

const one = (n: number) => ({ n: BigInt(n), d: 1n });
