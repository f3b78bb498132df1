/** What the reference says that the parts of each assembly are called, against what plans are opened into. */
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { catalogue } from "../../../src/findings/catalogue.ts";
import { ALL } from "../../../src/parse/assemblies/index.ts";
import { openTree, readTree } from "../../../src/parse/index.ts";
import type { MapNode } from "../../../src/parse/yaml/nodes.ts";

const folder = (path: string): readonly string[] => {
  const url = new URL(`../../../${path}/`, import.meta.url);
  return readdirSync(url)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => readFileSync(new URL(name, url), "utf8"));
};
/** What only some plans have. */
const MORE = `plan: 1
title: All that is seldom
outside: { width: 40, depth: 20, height: 30 }
stock: { ply: { sold as: 3/4 birch plywood, measures: 23/32 } }
piece:
  a: { kind: case, made of: ply, back: ply, back rails: {}, top rails: {}, shelves: { count: 1, loose: 1 }, sides: { posts: { made of: ply }, rails: { made of: ply, wide: 2 } } }
  b: { kind: table, legs: { made of: ply }, aprons: { made of: ply, wide: 3 }, bearer: { wide: 2 }, stretchers: { made of: ply, wide: 2, up: 3, where: all, middle: yes }, lower shelf: { made of: ply }, drawer: { wide: 9, opening: 3, made of: ply } }
  c: { kind: base, made of: ply, form: feet }
  d: { kind: base, made of: ply, bearers: 2 }
  e: { kind: frame, made of: ply, facing: left, panel: ply }
  f: { kind: frame, made of: ply, as: lying flat }
  g: { kind: chest-lid, made of: ply, form: slab with battens, hinged to: a.back-panel }
  h: { kind: chest-lid, made of: ply, form: frame and panel, hinged to: a.back-panel }
  i: { kind: bench, made of: ply, seat: ply, stretchers: { count: 2 } }
  j: { kind: trim, made of: ply, round: a }
  k: { kind: trim, made of: ply, round: a, along: top edges, edges: [front, back, left, right] }
  l: { kind: cleat, made of: ply, case: a }
  m: { kind: cleat, made of: ply, case: a, form: bevelled pair }
  n: { kind: case, made of: ply, openings: { down: [ { high: 9, across: [equal, { divider: rail and panel }, equal] }, { divider: rail and panel }, { high: the rest, shelves: { count: 1, loose: 1 }, drawers: { count: 2, made of: ply } } ] } }
  o: { kind: face-frame, made of: ply, case: n, openings: { down: [ { high: 9, across: [equal, { wide: equal, drawers: { count: 2, made of: ply } }] }, { high: the rest, door: { made of: ply, pair: yes } } ] } }
  p: { kind: face-frame, made of: ply, openings: { across: [ { wide: equal, drawer: { made of: ply, packing: { made of: ply }, front: ply } }, { wide: equal, drawer: { made of: ply, runners: { made of: ply } } } ] } }
  q: { kind: door, in: a.inside, walls: { left: a.left-side, right: a.right-side }, made of: ply, strips: { made of: ply } }
`;

/** Names by kind of assembly, numbers as 1; parts of an assembly inside another belong to that. */
function namesOf(text: string, names: Map<string, Set<string>>): void {
  const { value } = readTree({ name: "plan.yaml", bytes: new TextEncoder().encode(text) });
  if (!value) return;
  const put = (node: MapNode, kind: string | undefined, path: readonly string[]): void => {
    for (const { key, value: inner } of node.entries) {
      if (inner.kind !== "map") continue;
      const here = inner.opened ? [key.text] : [...path, key.text];
      if (kind && inner.entries.length > 0) {
        const name = [...path, key.text].join(".").replaceAll(/\d+/g, "1");
        const copies = inner.entries.some((entry) => entry.key.text === "count") ? `${name}.1` : name;
        for (const each of [name, copies]) names.set(kind, (names.get(kind) ?? new Set()).add(each));
      }
      put(inner, inner.opened ?? kind, inner.opened ? [] : kind ? here : []);
    }
  };
  const { tree } = openTree(value, {}, []);
  if (tree.kind === "map") put(tree, undefined, []);
}

const names = new Map<string, Set<string>>();
for (const text of [
  ...folder("examples"),
  ...folder("tests/solve/design/plans"),
  ...catalogue.map(({ right }) => right),
  MORE,
])
  namesOf(text, names);

test.each(ALL.filter(({ makes }) => makes).map((each) => [each.kind, each.makes as string] as const))(
  "%s: every name that the reference gives is that of a part or space",
  (kind, makes) => {
    const said = [...makes.matchAll(/`([^`]+)`/g)].map(([, name]) => name as string);
    const found = [...(names.get(kind) ?? [])];
    expect(said.filter((name) => !found.some((each) => each === name || each.startsWith(`${name}.`)))).toEqual([]);
    const called = [...makes.matchAll(/NAME(-[a-z-]+(?:1)?)/g)].map(([, end]) => end as string);
    expect(called.filter((end) => !found.some((each) => each.endsWith(end)))).toEqual([]);
  },
);
