/** Drawings of the parts that are no plain rectangles or have holes, several on a page. */
import type { BuiltPart, CutLine } from "../../solve/build.ts";
import { inches, millimetres, printLength } from "../../units/index.ts";
import { needsDrawing } from "../drawing/part/lying.ts";
import { type PartDrawing, partDrawing } from "../drawing/part/part-drawing.ts";
import { TYPE } from "../style.ts";
import { block, paragraph } from "../typeset/atom.ts";
import type { FlowAtom, Section } from "../typeset/flow.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { holeSize } from "./holes.ts";
import { picture } from "./pictures.ts";
import { body, capital, type Plan, sectionHeading } from "./plan.ts";

/** No drawing takes more of a page. */
const MOST = 0.36;

export function partDrawings(plan: Plan): Section | null {
  const { build, frame } = plan;
  const drawn = build.cutList.flatMap((line) => {
    const part = build.parts.find(({ id }) => id === line.parts[0]);
    return part && needsDrawing(part, build.holes) ? [{ line, part }] : [];
  });
  if (drawn.length === 0) return null;
  const text =
    "Numbers run from the end and from the edge marked 0: lay one rule there for all of them. Broken lines lie behind or inside. Long parts are drawn with a gap where nothing changes. Holes are told by their letters; only those bored before assembly are drawn.";
  return {
    name: "drawings",
    title: "Part drawings",
    kind: "part drawings",
    start: "fits",
    atoms: [
      ...sectionHeading("drawings", "Part drawings", frame.width),
      ...body(text, frame.width, { keep: true }),
      ...drawn.map(({ line, part }) => drawing(plan, line, part)),
    ],
  };
}

function drawing(plan: Plan, line: CutLine, part: BuiltPart): FlowAtom {
  const { build, frame, printer } = plan;
  const units = build.design.units;
  const precision = units === "inch" ? inches(1, 64) : millimetres(1, 10);
  const pen = {
    ...plan.pen,
    print: (length: typeof precision) => printLength(length, { units, precision, style: "typographic" }).text,
  };
  const size = { x: 0, y: 0, width: frame.width, height: Math.floor(frame.height * MOST) };
  const made = partDrawing(build, part, { frame: size, pen });
  const shown = picture(made);
  const many = line.parts.length > 1 ? ` × ${line.parts.length}` : "";
  const later = build.later?.some(({ mark }) => mark === line.mark)
    ? ["Cut it when the piece tells its size: what is drawn is what to expect."]
    : [];
  const mirror = line.mirrorOf === null ? [] : [`Mirror image of ${line.mirrorOf}.`];
  const words = [...mirror, made.lies, ...later, ...line.notes.map((note) => `${capital(note)}.`)].join(" ");
  const head = stack([
    ...paragraph(`${line.mark}\u2002${line.name}${many}`, TYPE.heading, frame.width, { role: "heading 2" }),
    ...paragraph(words, TYPE.caption, frame.width),
  ]);
  const key = stack(
    made.bores.flatMap((bore) => paragraph(boreWords(bore, printer), TYPE.caption, frame.width, { above: 0 })),
  );
  return {
    ...block(
      head.height + shown.height + 6 + key.height,
      (x, y) => [
        ...paintStack(head, x, y),
        shown.paint(x, y + head.height),
        ...paintStack(key, x, y + head.height + shown.height + 6),
      ],
      { above: 18 },
    ),
    of: line.mark,
  };
}

function boreWords({ letter, holes, side }: PartDrawing["bores"][number], printer: Plan["printer"]) {
  const [first] = holes;
  if (!first) return "";
  return [
    { text: letter, font: "italic" as const },
    {
      text: `\u2002${holes.length} × ${holeSize(first, printer)}, ${first.kind}, into the ${side}`,
      font: "regular" as const,
    },
  ];
}
