import { squash } from "../names.ts";
import type { AnyAssembly } from "./assembly.ts";
import { base } from "./base.ts";
import { bench } from "./bench.ts";
import { box } from "./box.ts";
import { boxBed } from "./box-bed.ts";
import { carcase } from "./case.ts";
import { cleat } from "./cleat.ts";
import { door } from "./door.ts";
import { drawer } from "./drawer.ts";
import { faceFrame } from "./face-frame.ts";
import { feet } from "./feet.ts";
import { frame } from "./frame.ts";
import { lid } from "./lid.ts";
import { table } from "./table.ts";
import { top } from "./top.ts";
import { trim } from "./trim.ts";

/** The kinds of assembly that the language has, in the order of the reference. */
export const ALL: readonly AnyAssembly[] = [
  ...[carcase, top, table, base, frame, box, lid, feet],
  ...[boxBed, bench, trim, faceFrame, door, drawer, cleat],
];

/** By squashed name. */
export const BUILT_IN: ReadonlyMap<string, AnyAssembly> = new Map(
  ALL.flatMap((each) => [each.kind, ...each.also].map((name) => [squash(name), each] as const)),
);
