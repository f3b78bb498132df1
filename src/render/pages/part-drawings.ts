/** Drawings of the parts that are no plain rectangles or have holes, and are not drawn beside a step. */

import type { BuiltPart, CutLine } from "../../solve/build.ts";
import { needsDrawing } from "../drawing/part/lying.ts";
import { onceFor } from "../once.ts";
import { TYPE } from "../style.ts";
import { block, paragraph } from "../typeset/atom.ts";
import { columnWidth, type Unit } from "../typeset/columns.ts";
import type { Section } from "../typeset/flow.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { type Drawn, drawingOf, drawnPart, PART_DRAWINGS, partInStep } from "./drawn-part.ts";
import { body, type Plan, sectionHeading } from "./plan.ts";

const GAP = 24;

export function partDrawings(plan: Plan): Section | null {
  const { build, frame } = plan;
  const beside = new Set(build.steps.map((step) => partInStep(plan, step)?.part.mark));
  const narrow = columnWidth(frame.width, GAP);
  const wide: FlowAtom[] = [];
  const units: Unit[] = [];
  for (const line of build.cutList) {
    const part = build.parts.find(({ id }) => id === line.parts[0]);
    if (!part || !needsDrawing(part, build.holes)) continue;
    const drawn = drawnPart(plan, line, part, { width: narrow, noted: true });
    if (drawn && beside.has(line.mark)) continue;
    const whole = drawn ? null : drawnPart(plan, line, part, { width: frame.width, noted: true });
    if (drawn) units.push([titled(line, drawn, narrow)]);
    if (whole)
      wide.push({ ...titled(line, whole, frame.width), lower: onceFor((height) => lower(plan, line, part, height)) });
  }
  if (units.length === 0 && wide.length === 0) return null;
  return {
    name: "drawings",
    title: PART_DRAWINGS,
    kind: "part drawings",
    start: "fits",
    atoms: [
      ...sectionHeading("drawings", PART_DRAWINGS, frame.width),
      ...body("Those of the parts that are not drawn beside a step.", frame.width, { keep: true }),
      ...wide,
    ],
    columns: { gap: GAP, between: 18, units },
  };
}

/** Over the width of the page in a lower frame; null where it loses a number by that. */
function lower(plan: Plan, line: CutLine, part: BuiltPart, height: number): FlowAtom | null {
  const { width } = plan.frame;
  const around = titled(line, { height: 0, paint: () => [] }, width).height;
  const most = (height - around) / plan.frame.height;
  const drawn = drawnPart(plan, line, part, { width, noted: true, most });
  return drawn && titled(line, drawn, width);
}

function titled({ mark, name, parts }: CutLine, { height, paint, key = [] }: Drawn, width: number): FlowAtom {
  const many = parts.length > 1 ? ` × ${parts.length}` : "";
  const head = stack(paragraph(`${mark}\u2002${name}${many}`, TYPE.heading, width, { role: "heading 2" }));
  const below = stack(key);
  return {
    ...block(
      head.height + height + below.height,
      (x, y) => [
        { kind: "anchor", name: drawingOf(mark), y: Math.max(0, y - 8) },
        ...paintStack(head, x, y),
        ...paint(x, y + head.height),
        ...paintStack(below, x, y + head.height + height),
      ],
      { above: 18 },
    ),
    of: mark,
  };
}
