import type { Length } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import { isInPlace } from "../../design/shapes/in-place.ts";
import { standsOut } from "../../design/shapes/kinds.ts";
import { inRuns } from "../../design/shapes/runs.ts";
import { onBench } from "../../design/turning.ts";
import type { Feature, Hole, Part } from "../../design.ts";
import { angledEndsNote } from "../steps/words/angled-ends.ts";
import { LEAF_SEAT } from "../steps/words/cut-names.ts";

const PLURALS: Readonly<Record<Feature["kind"], string>> = {
  dado: "dados",
  "dovetail housing": "dovetail housings",
  groove: "grooves",
  rabbet: "rabbets",
  notch: "notches",
  mortise: "mortises",
  "half lap": "half laps",
  cheek: "cheeks",
  bridle: "bridles",
  socket: "sockets",
  slot: "slots",
  tenon: "tenons",
  tongue: "tongues",
  haunch: "haunches",
  tail: "tails",
  mitre: "mitres",
  taper: "tapered",
  chamfer: "chamfered",
  bevel: "bevelled",
  "angled end": "angled ends",
  arch: "arches",
  "cut-out": "cut-outs",
  "rounded corner": "rounded corners",
  "round-over": "rounded edges",
};

/** What has to be known beside the size: what the size includes, and what will be done to the part. `hinged`: joints of what opens on hinges. */
export function notesOf(
  part: Part,
  holes: readonly Hole[],
  hinged: ReadonlySet<string>,
  print: (length: Length) => string,
): readonly string[] {
  const included = (kind: "tenon" | "tongue" | "tail", size: "length" | "size"): readonly string[] => {
    const all = part.features.filter((feature) => feature.kind === kind);
    const [first] = all;
    return first
      ? [`${count(all.length, kind, PLURALS[kind])} ${print(reach(first))} long, included in the ${size}`]
      : [];
  };
  const grown = lengthened(part) ? ["size includes what is let into the other parts"] : [];
  const seats = part.features.filter((feature) => feature.for !== null && hinged.has(feature.for));
  const cut = part.features.filter(
    (feature) =>
      !standsOut(feature) && !isInPlace(feature) && feature.kind !== "angled end" && !seats.includes(feature),
  );
  const kinds = [...new Set(cut.map((feature) => feature.kind))];
  const work = kinds.map((kind) => {
    const n = inRuns(cut.filter((feature) => feature.kind === kind)).length;
    if (kind === "taper" || kind === "chamfer" || kind === "bevel") return PLURALS[kind];
    return count(n, kind === "round-over" ? "rounded edge" : kind, PLURALS[kind]);
  });
  const told = seats.length > 0 ? [...work, count(seats.length, LEAF_SEAT.one, LEAF_SEAT.many)] : work;
  const ends = angledEndsNote(onBench(part));
  return [
    ...included("tenon", "length"),
    ...included("tongue", "size"),
    ...included("tail", "size"),
    ...grown,
    ...(ends ? [ends] : []),
    ...(told.length > 0 ? [told.join(", ")] : []),
    ...holesNote(part, holes, print),
  ];
}

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

const reach = (feature: Feature): Length => ("size" in feature ? feature.size[2] : { n: 0n, d: 1n });

/** Let in over the whole section: the blank is larger than the body without a tenon. A loose shelf is smaller: it has play. */
const lengthened = (part: Part): boolean =>
  ([0, 1, 2] as const).some(
    (i) => less(part.blank.low[i], part.body.low[i]) || less(part.body.high[i], part.blank.high[i]),
  ) && !part.features.some(standsOut);

/** Holes that are no part of a joint, such as one for a cable: those of the drilling table go without saying. */
function holesNote(part: Part, holes: readonly Hole[], print: (length: Length) => string): readonly string[] {
  const own = holes.filter(({ part: id, for: of }) => id === part.id && of === null);
  const across = own.flatMap(({ stages }) => stages.map(({ diameter }) => print(diameter)).slice(0, 1));
  return [...new Set(across)].map((size) => {
    const n = across.filter((each) => each === size).length;
    return `${count(n, "hole", "holes")} ${size} across`;
  });
}
