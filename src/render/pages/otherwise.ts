/** Every other option with what it changes, and the sizes that may be changed. */
import type { Build, FreeSize, Otherwise } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Atom } from "../typeset/atom.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { table } from "../typeset/table.ts";
import { otherwise as lines } from "./choices.ts";
import { sayMass } from "./facts.ts";
import { body, capital, type Plan, type Printer, sectionHeading, subheading } from "./plan.ts";
import { duration } from "./step-title.ts";

const OPTIONS: readonly Column[] = [
  { head: "Instead", style: TYPE.strong },
  { head: "Weight", align: "right" },
  { head: "Parts", align: "right" },
  { head: "At the bench", align: "right" },
  { head: "Cost", align: "right" },
  { head: "Other things to buy", stretch: true },
];
const SIZES: readonly Column[] = [
  { head: "Size", stretch: true },
  { head: "Here", align: "right", style: TYPE.strong },
  { head: "From", align: "right" },
  { head: "To", align: "right" },
];
const SIZES_TITLE = "Sizes that you may change";
const SIZES_TEXT =
  "This plan holds for the sizes under “Here” only. For others within these bounds get a copy that is made for them before you cut: cut list, layouts and steps all change.";
/** So many things that differ are named; the rest is counted. */
const MOST = 6;

export function otherwise({ build, frame, printer }: Plan): Section | null {
  const { width } = frame;
  const { freeSizes = [] } = build;
  const choices = lines(build.design);
  if (choices.length + freeSizes.length === 0) return null;
  if (choices.length === 0)
    return {
      ...{ name: "otherwise", title: SIZES_TITLE, kind: "otherwise", start: "fits" },
      atoms: [
        ...sectionHeading("otherwise", SIZES_TITLE, width),
        ...body(SIZES_TEXT, width, { keep: true }),
        ...sizeTable(freeSizes, printer, width),
      ],
    };
  return {
    ...{ name: "otherwise", title: "If you had chosen otherwise", kind: "otherwise", start: "fits" },
    atoms: [
      ...sectionHeading("otherwise", "If you had chosen otherwise", width),
      ...body(
        "This plan holds for what was chosen. A copy for something else has other numbers; get one before you cut.",
        width,
        {
          keep: true,
        },
      ),
      ...optionRows(build, printer, width),
      ...(freeSizes.length === 0
        ? []
        : [...subheading(SIZES_TITLE, width, 16), ...sizeTable(freeSizes, printer, width)]),
    ],
  };
}

function optionRows({ design, otherwise = [] }: Build, printer: Printer, width: number): readonly Atom[] {
  const priced = otherwise.some(({ cost }) => cost !== undefined);
  const columns = OPTIONS.filter(({ head }) => priced || head !== "Cost");
  const rows = (design.choices ?? []).flatMap(({ name, ask, option: chosen, options }) => {
    const words = (option: string): string => options.find((each) => each.name === option)?.words ?? option;
    const own = options.filter((each) => each.name !== chosen);
    if (own.length === 0) return [];
    const head = `${ask === "" ? capital(name.replaceAll("-", " ")) : ask} Here: ${words(chosen)}.`;
    return [
      head,
      ...own.map((each): readonly Rich[] => {
        const found = otherwise.find(({ choice, option }) => choice === name && option === each.name);
        return found
          ? optionRow(words(each.name), found, printer, priced)
          : [words(each.name), "–", "–", "–", ...(priced ? ["–"] : []), ""];
      }),
    ];
  });
  return table({ columns, rows, width, above: 8 });
}

const more = (value: number, say: (size: number) => string): string =>
  value === 0 ? "same" : `${value > 0 ? "+" : "−"}\u202f${say(Math.abs(value))}`;

function optionRow(words: string, { mass, parts, bench, cost, buys }: Otherwise, printer: Printer, priced: boolean) {
  const weight = sayMass(mass < 0 ? -mass : mass, printer);
  const wanted = buys.filter(({ section }) => section !== "supplies");
  // A last one takes no more room than the words that it is left out.
  const shown = wanted.length === MOST + 1 ? wanted.length : MOST;
  const told = wanted.slice(0, shown).map(buyWords);
  const rest = wanted.length > shown ? [`and ${wanted.length - shown} other things`] : [];
  return [
    words,
    weight.startsWith("0") ? "same" : more(mass, () => weight),
    more(parts, String),
    more(bench, duration),
    ...(priced ? [cost === undefined ? "–" : more(cost, (size) => size.toFixed(2))] : []),
    told.length === 0 ? "the same" : capital([...told, ...rest].join("; ")),
  ];
}

/** "no butt hinge", "2 × cup hinge", "4 instead of 3 × 2×4 spruce, 8 ft" */
function buyWords({ item, unit, here, there }: Otherwise["buys"][number]): string {
  if (there === 0) return `no ${item}`;
  const number = here === 0 ? String(there) : `${there} instead of ${here}`;
  return unit === "piece" || unit === "pieces" ? `${number} × ${item}` : `${number} ${unit} ${item}`;
}

function sizeTable(sizes: readonly FreeSize[], printer: Printer, width: number): readonly Atom[] {
  const row = ({ name, ask, value, low, high }: FreeSize): readonly Rich[] => [
    ask === "" ? capital(name.replaceAll("-", " ")) : ask,
    ...[value, low, high].map(printer.say),
  ];
  return table({ columns: SIZES, rows: sizes.map(row), width, above: 4 });
}
