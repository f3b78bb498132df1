/** Stick-on labels for the parts: one for each, on the usual sheets. */
import type { Build, BuiltPart } from "../solve/build.ts";
import type { Document, Item, Page, Paper } from "./document.ts";
import type { RenderOptions } from "./index.ts";
import { makePlan, type Printer } from "./pages/plan.ts";
import { A4, content, LETTER, TYPE } from "./style.ts";
import { fit, label } from "./typeset/lines.ts";
import { measure } from "./typeset/measure.ts";

/** A sheet of labels, in points: the first label's corner, what a label measures, and from label to label. */
interface Sheet {
  readonly paper: Paper;
  readonly columns: number;
  readonly rows: number;
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
  readonly pitch: readonly [number, number];
}

const MM = 72 / 25.4;
/** 2 5/8 × 1 in, 30 on a sheet, with 1/8 in between the columns; 70 × 37 mm, 24 on a sheet without gaps. Common practice, no source. */
const SHEETS: Readonly<Record<Paper["name"], Sheet>> = {
  letter: { paper: LETTER, columns: 3, rows: 10, at: [13.5, 36], size: [189, 72], pitch: [198, 72] },
  a4: {
    ...{ paper: A4, columns: 3, rows: 8, at: [0, 0.5 * MM] },
    ...{ size: [70 * MM, 37 * MM], pitch: [70 * MM, 37 * MM] },
  },
};

/** Printers feed a sheet a little off its place, and leave 1/4 in of paper blank. */
const INSET = 19;
const MARK = { ...TYPE.title, size: 24 };
const NAME = { ...TYPE.strong, size: 11 };
const SIZE = { ...TYPE.caption, ink: TYPE.body.ink };

export function labels(build: Build, options: RenderOptions): Document {
  const sheet = SHEETS[options.paper];
  const { columns, rows, paper } = sheet;
  const { printer } = makePlan(build, content(paper));
  const each = columns * rows;
  const pages = Array.from({ length: Math.ceil(build.parts.length / each) }, (_, i): Page => {
    const parts = build.parts.slice(i * each, (i + 1) * each);
    const items = parts.map((part, n) => {
      const [x, y] = [
        sheet.at[0] + (n % columns) * sheet.pitch[0],
        sheet.at[1] + Math.floor(n / columns) * sheet.pitch[1],
      ];
      return oneLabel(build, part, printer, { x, y, width: sheet.size[0], height: sheet.size[1] });
    });
    return { number: i + 1, kind: "labels", of: parts.map(({ mark }) => mark), items };
  });
  const { title, by } = build.design;
  return {
    ...{ title: `${title}: labels`, author: by, subject: `Labels for the parts of ${title}` },
    ...{ language: "en-US", date: options.date, producer: `Boardwright ${options.version}`, paper, pages },
  };
}

function oneLabel(
  build: Build,
  part: BuiltPart,
  printer: Printer,
  { x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Item {
  const line = build.cutList.find(({ mark }) => mark === part.mark);
  const [own, all] = [(line?.parts.indexOf(part.id) ?? 0) + 1, line?.parts.length ?? 1];
  const size = [part.thickness, part.width, part.length].map(printer.exact).join(" × ");
  const middle = y + height / 2;
  const left = x + INSET;
  const text = left + Math.max(34, measure(part.mark, MARK.font, MARK.size) + 8);
  const room = x + width - 10 - text;
  const number = all > 1 ? ` (${own} of ${all})` : "";
  return {
    kind: "group",
    role: "paragraph",
    items: [
      label(part.mark, MARK, left, middle + 9),
      label(`${fit(part.name, NAME, room - measure(number, NAME.font, NAME.size))}${number}`, NAME, text, middle - 9),
      label(fit(`${size}\u202f${printer.unit}`, SIZE, room), SIZE, text, middle + 4),
      label(fit(build.design.title, TYPE.caption, room), TYPE.caption, text, middle + 17),
    ],
  };
}
