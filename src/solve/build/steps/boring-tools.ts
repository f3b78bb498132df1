/** What holes are bored with: those of the tables, and those of jigs, walls and blocks that no table lists. */
import type { Length } from "../../../units/length.ts";
import { compare } from "../../../units/rational.ts";
import type { Step } from "../../build.ts";
import { type Bit, bitFor } from "../../design/boring/bits.ts";
import { isSoldForGrooves } from "../checks/cutter-does-not-exist.ts";
import { type Need, series, type Work } from "./draft.ts";
import { fencePilot } from "./jigs.ts";
import { longerBit } from "./long-bits.ts";
import { usedIn } from "./used.ts";
import { buttonBits } from "./words/buttons.ts";
import { boredIntoStuds, studPilot } from "./words/fitted.ts";
import { leadBits } from "./words/lead-holes.ts";

/** One bit for each diameter, thinnest first, also for the pilots that are drilled in place. */
export function bits(work: Work): readonly Need[] {
  const { plan, drill } = work;
  const { holes } = plan;
  const more = besides(work);
  const stages = [
    ...holes.flatMap((hole) => hole.stages.map(({ diameter }, i) => ({ bit: bitFor(hole, i), diameter }))),
    ...more.flatMap((each) => each.bits).map((diameter) => ({ bit: "drill" as const, diameter })),
  ].map((stage) => ({ ...stage, size: drill(stage.diameter) }));
  const also = more.length === 0 ? "" : `, and those ${series(more.map(({ where }) => where))}`;
  const slots = holes.filter(({ slot }) => slot).flatMap(({ stages: own }) => own.map(({ diameter }) => diameter));
  const sold = slots.every((width) => isSoldForGrooves(width, work.design.units));
  const routed = sold ? series([...new Set(slots.toSorted(compare).map(drill))]) : "";
  const sizes = (bit: Bit): string => {
    const own = stages.filter((stage) => stage.bit === bit).toSorted((a, b) => compare(a.diameter, b.diameter));
    const told = own.map(({ size, diameter }) => {
      const long = bit === "drill" ? longerBit(work, diameter) : null;
      return long ? `${size} (at least ${work.print(long)} long)` : size;
    });
    return [...new Set(told)].join(", ");
  };
  const [drills, forstner] = [sizes("drill"), sizes("Forstner bit")];
  const shorter = drills.includes(" long)")
    ? "; with a shorter one mark through the part on top, take that off, and bore from there"
    : "";
  const has = (bit: Bit): boolean => stages.some((stage) => stage.bit === bit);
  const blind = holes.some((hole) => !hole.through);
  return [
    ...(stages.length === 0 ? [] : [{ tool: "Drill", why: "to bore the holes" }]),
    ...(drills === ""
      ? []
      : [{ tool: `Drill bits: ${drills}`, why: `for the holes listed in the plan${also}${shorter}` }]),
    ...(forstner === "" ? [] : [{ tool: `Forstner bits: ${forstner}`, why: "for wide holes, flat at the bottom" }]),
    ...(has("pocket bit") ? [{ tool: "Jig for pocket holes, with its stepped bit", why: "to bore the pockets" }] : []),
    ...(holes.some((hole) => hole.slot)
      ? [
          {
            tool: `${routed === "" ? "Drill" : `Router with a bit of ${routed}, or drill`} and round file`,
            why: "to cut the slots",
          },
        ]
      : []),
    ...(blind ? [{ tool: "Drill stop, or tape round the bit", why: "so that no hole goes too deep" }] : []),
    ...(has("countersink") ? [{ tool: "Countersink", why: "so that screw heads lie flush" }] : []),
  ];
}

/** Of blocks that are set over dowels: of a diameter that the holes of the piece need not have. */
export function blockBores(steps: readonly Step[]): readonly Need[] {
  const sizes = [...new Set(usedIn(steps, "bit for blocks").map(({ size }) => size))];
  return sizes.length === 0
    ? []
    : [
        {
          tool: `Drill bits of ${series(sizes)} for blocks`,
          why: "so that they go over dowels and clamps press beside",
        },
      ];
}

/** What no table of holes lists, with the words for where it is. */
const BESIDES: readonly (readonly [where: string, of: (work: Work) => readonly Length[]])[] = [
  [
    "in the wall",
    ({ plan, design }) =>
      plan.hardware.some(({ item }) => boredIntoStuds(item.kind, design)) ? [studPilot(design.units)] : [],
  ],
  [
    "in jigs",
    ({ jigs, design }) => (jigs.some(({ laid }) => laid === "in the corner") ? [fencePilot(design.units)] : []),
  ],
  ["that lead nails", leadBits],
  ["in wooden buttons", buttonBits],
];
const besides = (work: Work) =>
  BESIDES.map(([where, of]) => ({ where, bits: of(work) })).filter((each) => each.bits.length > 0);
