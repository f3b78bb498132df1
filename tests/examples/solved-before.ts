import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { deserialize, serialize } from "node:v8";
import { plane } from "../../src/geometry/plane.ts";
import type { Plane, Vertex } from "../../src/geometry/types.ts";
import { homogeneous } from "../../src/geometry/vertex.ts";

/** Where one file of tests leaves what others need again. Emptied before each run. */
const FOLDER = new URL("../../out/solved/", import.meta.url);

export const forgetAll = (): void => rmSync(FOLDER, { recursive: true, force: true });

/** A value that takes long to make, once for all files of tests: plain data, with its maps, sets and whole numbers of any size. */
export function madeBefore<T>(key: string, make: () => T): T {
  const file = new URL(createHash("sha256").update(key).digest("hex"), FOLDER);
  try {
    return keptOnce(deserialize(readFileSync(file)), new Map()) as T;
  } catch {
    const made = make();
    mkdirSync(FOLDER, { recursive: true });
    // Two files of tests may make it at the same time.
    const aside = new URL(`${file.href}.${process.pid}.${process.env.VITEST_POOL_ID ?? 0}`);
    writeFileSync(aside, serialize(made));
    renameSync(aside, file);
    return made;
  }
}

/** The same data with planes and corners that the geometry knows again: it keeps each of them once, and tells them apart as objects. */
function keptOnce(value: unknown, seen: Map<object, unknown>): unknown {
  if (typeof value !== "object" || value === null) return value;
  const before = seen.get(value);
  if (before !== undefined) return before;
  const known =
    "norm" in value && "A" in value ? planeOf(value as Plane) : "W" in value ? cornerOf(value as Vertex) : value;
  seen.set(value, known);
  if (known !== value) return known;
  if (Array.isArray(value)) for (const [i, each] of value.entries()) value[i] = keptOnce(each, seen);
  else if (value instanceof Map)
    replaceIn(
      value,
      [...value].map(([k, v]) => [keptOnce(k, seen), keptOnce(v, seen)]),
    );
  else if (value instanceof Set)
    replaceIn(
      value,
      [...value].map((each) => keptOnce(each, seen)),
    );
  else for (const [name, own] of Object.entries(value)) (value as Record<string, unknown>)[name] = keptOnce(own, seen);
  return value;
}

const planeOf = ({ A, B, C, D }: Plane): Plane => plane(A, B, C, D);
const cornerOf = ({ X, Y, Z, W }: Vertex): Vertex => homogeneous(X, Y, Z, W);

function replaceIn(group: Map<unknown, unknown> | Set<unknown>, all: readonly unknown[]): void {
  group.clear();
  for (const each of all) group instanceof Map ? group.set(...(each as [unknown, unknown])) : group.add(each);
}
