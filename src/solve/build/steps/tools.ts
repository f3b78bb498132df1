import type { Length } from "../../../units/length.ts";
import { compare, ZERO } from "../../../units/rational.ts";
import type { Action, Step, Tool } from "../../build.ts";
import type { Feature } from "../../design.ts";
import { hingedIn } from "../order/links.ts";
import { askedBeside, askedFor } from "./asked.ts";
import { bits, blockBores } from "./boring-tools.ts";
import { markedFrom, matingsOf } from "./dowelled.ts";
import { type Need, pluralOf, series, type Work } from "./draft.ts";
import { usedIn } from "./used.ts";
import { groupedBy } from "./wishes/own-key.ts";
import { inOneUnit } from "./words/one-unit.ts";

const DRIVERS: Readonly<Partial<Record<Tool, Need>>> = {
  straight: { tool: "Drill and driver, bits 6 in (150 mm) long", why: "to drive the screws" },
  long: { tool: "Screwdriver bit 12 in (300 mm) long", why: "for screws that an ordinary bit does not reach" },
  angle: { tool: "Right-angle driver", why: "for screws with little room behind them" },
  stubby: { tool: "Stubby screwdriver", why: "for screws with little room behind them" },
  stapler: { tool: "Stapler", why: "to drive staples" },
};

/** Told with what they drive here. */
const DRIVING: Readonly<Partial<Record<Tool, Need>>> = {
  wrench: { tool: "Two wrenches or a ratchet", why: "to turn" },
  hammer: { tool: "Hammer and nail set", why: "to drive" },
};

const SEATS: Need = { tool: "Chisels", why: "to cut seats for hinge leaves" };

const CUTTERS: Readonly<Partial<Record<Feature["kind"], Need>>> = {
  mortise: { tool: "Mortise chisel or router", why: "to cut mortises" },
  tenon: { tool: "Tenon saw or table saw", why: "to cut tenons" },
  groove: { tool: "Plough plane, router or table saw", why: "to cut grooves" },
  dado: { tool: "Router or saw and chisel", why: "to cut dados" },
  rabbet: { tool: "Router or rabbet plane", why: "to cut rabbets" },
  "half lap": { tool: "Saw and chisel, or router", why: "to cut half laps" },
  cheek: { tool: "Tenon saw or table saw", why: "to cut tenons" },
  bridle: { tool: "Tenon saw or table saw", why: "to cut tenons" },
  socket: { tool: "Fine saw, chisels and marking gauge", why: "to cut fingers, tails and pins" },
  slot: { tool: "Router with a slot cutter, or saw, drill and chisel", why: "to cut slots" },
  mitre: { tool: "Mitre saw, or saw with a mitre gauge", why: "to cut mitres" },
  tongue: { tool: "Plough plane, router or table saw", why: "to cut grooves" },
  haunch: { tool: "Tenon saw or table saw", why: "to cut tenons" },
  notch: { tool: "Fine saw and chisel", why: "to cut notches" },
  taper: { tool: "Hand plane", why: "to taper" },
  chamfer: { tool: "Hand plane", why: "to chamfer and bevel" },
  bevel: { tool: "Hand plane", why: "to chamfer and bevel" },
  "angled end": { tool: "Sliding bevel and mitre saw", why: "to cut ends at an angle" },
  arch: { tool: "Jigsaw or coping saw, rasp and file", why: "to cut curves" },
  "cut-out": { tool: "Jigsaw or coping saw, rasp and file", why: "to cut curves" },
  "rounded corner": { tool: "Jigsaw or coping saw, rasp and file", why: "to cut curves" },
  "round-over": { tool: "Router or hand plane", why: "to round edges" },
};

/** "Hammer" is not told beside "Hammer and nail set", nor "Drill" beside "Drill and driver". */
const isNoOther = (need: Need, _: number, all: readonly Need[]): boolean =>
  all.every(({ tool }) => !tool.startsWith(`${need.tool} and `));

/** What the steps really use. */
export function toolsFor(work: Work, steps: readonly Step[]): readonly Need[] {
  const actions = steps.flatMap((step) => step.actions);
  const features = actions.flatMap((action) =>
    action.do === "machine" ? action.features.flatMap((i) => work.part(action.part).features[i] ?? []) : [],
  );
  const hinged = hingedIn(work.design);
  const drivers = actions.flatMap((action) => (action.do === "drive" ? [action.tool] : []));
  const all: readonly (Need | undefined)[] = [
    { tool: "Tape measure, rule, square, pencil and marking knife", why: "to mark out" },
    { tool: "Saw with a stop for equal lengths", why: "to cut the parts to size" },
    ...features.map((each) => (each.for !== null && hinged.has(each.for) ? SEATS : CUTTERS[each.kind])),
    ...cutterWidths(work, actions),
    ...bits(work),
    ...dowelling(work),
    ...drivers.map((tool) => DRIVERS[tool]),
    ...driving(work, actions),
    clampNeed(work, steps),
    ...blockBores(steps),
    ...shims(steps),
    ...askedFor(steps),
    ...askedBeside(work),
  ];
  const named = all.filter((need) => need !== undefined).filter(isNoOther);
  // One tool may be for several things.
  return groupedBy(named, ({ tool }) => tool).map((own) => ({
    tool: inOneUnit(own[0]?.tool ?? "", work.design.units),
    why: [...new Set(own.map(({ why }) => why))].join("; "),
  }));
}

const HOUSED: ReadonlySet<Feature["kind"]> = new Set<Feature["kind"]>(["groove", "dado", "slot"]);

/** The widths of grooves, dados and slots: no cutter may be wider. */
function cutterWidths(work: Work, actions: readonly Step["actions"][number][]): readonly Need[] {
  const cuts = actions.flatMap((action) =>
    action.do === "machine"
      ? action.features.flatMap((i) => {
          const feature = work.part(action.part).features[i];
          return feature && HOUSED.has(feature.kind) && "size" in feature
            ? [{ width: feature.size[1], kind: pluralOf(feature.kind) }]
            : [];
        })
      : [],
  );
  const widths = groupedBy(
    cuts.toSorted((a, b) => compare(a.width, b.width)),
    ({ width }) => work.print(width),
  ).map((own) => ({
    width: work.print(own[0]?.width ?? ZERO),
    kinds: series([...new Set(own.map(({ kind }) => kind))]),
  }));
  const told = groupedBy(widths, ({ kinds }) => kinds).map(
    (own) => `${own.map(({ width }) => width).join(" or ")} for ${own[0]?.kinds}`,
  );
  return told.length === 0
    ? []
    : [{ tool: `Router bits or saw blades no wider than ${told.join(", ")}`, why: "in one pass or several" }];
}

/** "Hammer and nail set": to drive nails and brads. */
function driving(work: Work, actions: readonly Action[]): readonly Need[] {
  const kinds = new Map(work.plan.fasteners.map(({ id, kind }) => [id, kind]));
  return Object.entries(DRIVING).flatMap(([tool, need]) => {
    const own = actions.flatMap((action) => (action.do === "drive" && action.tool === tool ? action.fasteners : []));
    const driven = [...new Set(own.flatMap((id) => kinds.get(id) ?? []))];
    return driven.length === 0 ? [] : [{ tool: need.tool, why: `${need.why} ${series(driven.map(pluralOf))}` }];
  });
}

/** What brings the two holes of a dowel into one line. */
function dowelling(work: Work): readonly Need[] {
  const all = new Set(matingsOf(work).map(({ joint }) => joint.id));
  if (all.size === 0) return [];
  const marked = new Set(markedFrom(work).map(({ joint }) => joint.id));
  const rods = work.plan.fasteners.filter(({ joint }) => marked.has(joint)).toSorted((a, b) => compare(a.rod, b.rod));
  const sizes = [...new Set(rods.map(({ rod }) => work.drill(rod)))].map((size) => {
    const own = [...marked].map(
      (joint) => rods.filter((each) => each.joint === joint && work.drill(each.rod) === size).length,
    );
    return `${Math.max(...own)} of ${size}`;
  });
  return [
    { tool: "Dowelling jig", why: "so that holes in ends and edges stand square, all from one face" },
    { tool: "Drill guide, or a block bored square under a drill press", why: "so that holes in faces stand square" },
    ...(sizes.length > 0
      ? [{ tool: `Dowel centres: ${sizes.join(", ")}`, why: "to mark holes from those that they meet" }]
      : []),
  ];
}

/** As thick as the sentences say that ask for them. */
function shims(steps: readonly Step[]): readonly Need[] {
  const told = usedIn(steps, "shims");
  if (told.length === 0) return [];
  const sizes = [...new Set(told.flatMap(({ thick }) => thick))];
  const thick = sizes.length === 0 ? "as thick as the gaps" : `${series(sizes)} thick`;
  return [{ tool: `Shims or cards ${thick}`, why: "to keep gaps even" }];
}

/** The fewest that every glue-up can be done with: of each reach as many as any of them has on at once that open so far or further. */
function clampNeed(work: Work, steps: readonly Step[]): Need | undefined {
  const all = steps.map(({ clamps = [] }) => clamps).filter(({ length }) => length > 0);
  const reaches = all
    .flat()
    .map(({ opening }) => opening)
    .toSorted((a, b) => compare(b, a));
  const wanted = (reach: Length): number =>
    Math.max(
      ...all.map((own) => own.reduce((so, { opening, count }) => (compare(opening, reach) < 0 ? so : so + count), 0)),
    );
  const counts: { readonly reach: Length; readonly count: number }[] = [];
  for (const reach of reaches) {
    const more = wanted(reach) - counts.reduce((so, { count }) => so + count, 0);
    if (more > 0) counts.push({ reach, count: more });
  }
  if (counts.length === 0) return undefined;
  const told = counts.map(({ reach, count }) => `${count} that ${count === 1 ? "opens" : "open"} ${work.print(reach)}`);
  return { tool: `Clamps: ${series(told)}`, why: "for the largest glue-ups, all on at once" };
}
