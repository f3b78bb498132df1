/** What to measure before the first cut, and which sizes follow from it. */
import type { ChangingSizes } from "../../solve/build.ts";
import type { Stock } from "../../solve/design.ts";
import { sayThickness } from "../../units/say-thickness.ts";
import { listed } from "../drawing/words.ts";
import { rectangle } from "../shapes.ts";
import { BLACK, TYPE } from "../style.ts";
import { type Atom, baseline, block, list } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { fit, label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading, subheading } from "./plan.ts";

/** For a plan with sheets, or with a stock whose thickness may vary. */
export function measureFirst(plan: Plan): Section | null {
  const { build, frame, printer } = plan;
  const { stock, parts } = build.design;
  const used = stock.filter(({ name }) => parts.some((part) => part.stock === name));
  const own = used.filter((each) => each.form === "sheet" || each.between || each.measured);
  if (own.length === 0) return null;
  const { width } = frame;
  const inch = printer.unit === "in";
  const housings = housingsOf(build);
  const ways = [
    `With a caliper: in six places, ${inch ? "an inch" : "25\u202fmm"} from the edges, which are often sanded thinner. The average decides the sizes of parts${housings.length > 0 ? `, the thickest place the widths of ${listed(housings)}` : ""}.`,
    "Without one: clamp ten offcuts into a stack, measure the stack, and divide by ten.",
  ];
  return {
    name: "measure",
    title: "Measure your stock first",
    kind: "measure",
    start: "fits",
    atoms: [
      ...sectionHeading("measure", "Measure your stock first", width),
      ...body(
        "What is sold under one name does not measure the same everywhere. Measure what you have before you cut anything, and write it down here.",
        width,
        { keep: true },
      ),
      ...list(ways, TYPE.body, width, { above: 4 }),
      ...own.map((each) => box(plan, each)),
      ...own.flatMap((each) => whatFollows(plan, each)),
      ...ofOneThickness(plan, own),
    ],
  };
}

const BOX = { width: 110, height: 24, above: 10 };

/** The stock, what the plan is drawn for, and a box to write in what was measured. */
function box({ build, frame, printer }: Plan, { label: name, thickness, measured }: Stock): Atom {
  const style = TYPE.strong;
  const said = sayThickness(thickness, { units: build.design.units, style: "typographic" });
  const drawn = measured ? `this copy is made for ${said}. Mine:` : `the plan is drawn for ${said}. Mine:`;
  const room = frame.width - BOX.width - 40 - measure(`: ${drawn}`, style.font, style.size);
  const text = `${fit(capital(name), style, room)}: ${drawn}`;
  const after = measure(text, style.font, style.size) + 10;
  const line = (y: number): number => y + (BOX.height - style.leading) / 2 + baseline(style);
  return block(
    BOX.height,
    (x, y) => [
      { kind: "group", role: "paragraph", items: [label(text, style, x, line(y))] },
      rectangle(x + after, y, BOX.width, BOX.height, { stroke: { width: 0.8, ink: BLACK } }),
      { kind: "group", role: "paragraph", items: [label(printer.unit, style, x + after + BOX.width + 6, line(y))] },
    ],
    { above: BOX.above },
  );
}

function whatFollows(plan: Plan, stock: Stock): FlowAtom[] {
  const { build, frame } = plan;
  const { width } = frame;
  const { name, label: called } = stock;
  const changing = (build.changing ?? []).find((each) => each.stock === name);
  if (stock.measured || !changing) return [];
  if (changing.shifting.length > 0) return anotherCopy(plan, stock, changing);
  const same =
    changing.rows.length === 0
      ? `No width or length on the cut list changes with the thickness of ${called}.`
      : "Every other width and length on the cut list is unchanged.";
  const housings = housingsOf(build);
  const housed = housings.length > 0;
  const test = `${capital(listed(housings))} are as wide as what goes into them is thick: cut one in scrap first. The other part should go in with the push of a hand.`;
  return [
    ...subheading(`Sizes that change with ${called}`, width),
    ...(changing.rows.length + changing.sticks.length === 0 ? [] : sizes(plan, changing)),
    ...moving(plan, changing),
    ...body(housed ? `${same} ${test}` : same, width, { above: 8 }),
  ];
}

/** Half of the step between two columns of the table: nearer stock is this stock. */
const NEAR = { inch: "1\u2044128\u202fin", mm: "0.2\u202fmm" } as const;

/** Where more than sizes changes, no table tells all of it. */
function anotherCopy({ build, frame }: Plan, { label: called, thickness }: Stock, { rows }: ChangingSizes) {
  const { units } = build.design;
  const drawn = sayThickness(thickness, { units, style: "typographic" });
  const sizes = rows.length === 0 ? "" : "sizes on the cut list change, and so do ";
  return [
    ...subheading(`Where ${called} is not ${drawn} thick`, frame.width),
    ...body(
      `With another thickness ${sizes}places in the drawings, steps and jigs${rows.length === 0 ? " change" : ""}: where something is cut or bored, how far it is cut, and where parts go. This copy holds for ${drawn}, and for ${NEAR[units]} more or less. If yours differs by more, do not work by it: ask whoever gave you this plan for a copy that is made for what yours measures.`,
      frame.width,
      { above: 4 },
    ),
  ];
}

/** From where on the drawings do not hold for a part of another size; parts of which the same is told together. */
function moving({ build, frame, printer }: Plan, changing: ChangingSizes): readonly FlowAtom[] {
  const told = new Map<string, string[]>();
  for (const { mark, size, from, near, far } of changing.moving) {
    const side = size === "length" ? "end" : "edge";
    const what = `from the ${far} ${side} what is ${printer.say(from)} and more from the ${near} ${side}.`;
    told.set(what, [...(told.get(what) ?? []), `the ${nameOf(build, mark)} (${mark})`]);
  }
  if (told.size === 0) return [];
  return [
    ...body(
      "Some of what is cut and bored goes with the far end or edge of such a part. Where yours has another size than the drawing, measure it from there; what the drawing leaves to that end or edge holds.",
      frame.width,
      { above: 8, keep: true },
    ),
    ...[...told].flatMap(([what, names]) => body(`On ${listed(names)}: ${what}`, frame.width, { above: 4 })),
  ];
}

const nameOf = (build: Plan["build"], mark: string): string =>
  build.cutList.find((line) => line.mark === mark)?.name.toLowerCase() ?? "";

/** What may differ without harm: about a shaving. Common practice, no source. */
const SHAVING = { inch: "1\u204464\u202fin", mm: "0.4\u202fmm" } as const;

/** All stock for whose thickness the plan does not say what changes. */
function ofOneThickness({ build, frame }: Plan, own: readonly Stock[]): FlowAtom[] {
  const fixed = own.filter(
    ({ name, measured }) => !measured && !(build.changing ?? []).some((each) => each.stock === name),
  );
  if (fixed.length === 0) return [];
  const names = listed(fixed.map(({ label: called }) => called));
  return body(
    `The sizes of this plan were worked out for one thickness of ${names}. Up to ${SHAVING[build.design.units]} more or less only makes what fits into it tighter or looser${build.steps.some(({ leaves }) => leaves) ? ", where rabbets are cut by what they leave standing, as the steps tell it" : ""}. If yours differs by more, use other stock, or ask whoever gave you this plan for a copy that is made for what yours measures.`,
    frame.width,
    { above: 12 },
  );
}

const HOUSINGS: ReadonlyMap<string, string> = new Map([
  ["dado", "dados"],
  ["groove", "grooves"],
  ["rabbet", "rabbets"],
]);

/** "dados", "grooves": those that there are. */
function housingsOf({ parts }: Plan["build"]): readonly string[] {
  const kinds = new Set<string>(parts.flatMap(({ features }) => features.map(({ kind }) => kind)));
  return [...HOUSINGS].flatMap(([kind, word]) => (kinds.has(kind) ? [word] : []));
}

/** A row for each size that changes, a column for each thickness. */
function sizes({ build, frame, printer }: Plan, { thicknesses, rows, sticks }: ChangingSizes): Atom[] {
  const columns: Column[] = [
    { head: "Mark", style: TYPE.mark },
    { head: "Part", style: TYPE.cell },
    { head: "Size", style: TYPE.cell, stretch: true },
    ...thicknesses.map((each) => ({ head: printer.exact(each), align: "length" as const, style: TYPE.cell })),
  ];
  const names = new Map(build.cutList.map(({ mark, name }) => [mark, name]));
  const unit = printer.unit === "in" ? "inches" : "millimetres";
  return [
    ...body(
      `Above each column stands the thickness, below it the sizes to cut, in ${unit}. If yours lies between two, take the nearer.`,
      frame.width,
      { keep: true },
    ),
    ...table({
      columns,
      rows: [
        ...rows.map(({ mark, size, sizes }) => [
          mark,
          names.get(mark) ?? "",
          capital(size),
          ...sizes.map(printer.exact),
        ]),
        ...sticks.map(({ step, sizes }) => ["", `Sticks of step ${step}`, "Length", ...sizes.map(printer.exact)]),
      ],
      width: frame.width,
      above: 8,
    }),
  ];
}
