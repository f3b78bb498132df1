/** What to know before the first cut. */
import type { Advice } from "../../solve/build.ts";
import { less } from "../../units/rational.ts";
import { needsDrawing } from "../drawing/part/lying.ts";
import type { Section } from "../typeset/flow.ts";
import { adviceList } from "./advice.ts";
import { HOW_TO_READ } from "./drawn-part.ts";
import { type Plan, sectionHeading, subheading } from "./plan.ts";

export function beforeYouStart({ build, frame, printer }: Plan): Section {
  const { width } = frame;
  const { design } = build;
  const inHand = build.steps.find(({ kind }) => kind === "buy");
  const first: readonly Advice[] = inHand
    ? [
        {
          head: "Hardware first.",
          text: `Have it in the hand before the first cut: step ${inHand.number} tells what to measure, and what is bored for it ahead.`,
        },
      ]
    : [];
  const longNames = printer.unit === "in" ? "inches" : "millimetres";
  const finer = less(design.fits, design.precision)
    ? `, what has to fit to ${printer.exact(design.fits)} ${printer.unit}`
    : "";
  // Nothing told has a finer mark; a caliper reads it.
  const finest = design.units === "inch" ? "1\u204464 in" : "0.1 mm";
  const reading: Advice[] = [
    {
      head: "Marks.",
      text: "Every part has a mark, a letter or a letter and a number. Write it on the part as soon as it is cut.",
    },
    {
      head: "Sizes",
      text: `are in ${longNames}, thickness × width × length. The length runs along the grain. Widths and lengths of parts are rounded to ${printer.exact(design.precision)} ${printer.unit}${finer}. What has its size from the room that other parts leave is rounded down. Thicknesses as they are bought, places and depths of holes, gaps, hardware and drills are told as fine as they are, to ${finest}: there a coarser figure would not fit.`,
    },
    {
      head: "Pictures.",
      text: "In the steps, what is new is tinted and has thick lines; what is there already has thin lines. Arrows show which way a part goes. A circle shows a joint or hardware larger; a border, that only the surroundings are drawn, with the whole small beside them. Dash-dot lines lead to where a part goes. “E × 5” points at one of five parts alike. A line over both columns, or “17, continued”: a step goes on at the right.",
    },
    ...(build.parts.some((part) => needsDrawing(part, build.holes))
      ? [{ head: "Parts with joints or holes", text: `are drawn beside the step that makes them. ${HOW_TO_READ}` }]
      : []),
    {
      head: "Drawings",
      text: "are to the scale that stands with them only if the printer does not fit pages to the paper. Take sizes from the figures, never from the drawing.",
    },
    {
      head: "Left, right, front and back, top and bottom",
      text: "are those of the finished piece as it stands or hangs and you stand before it, also where the work lies on a side or upside down.",
    },
  ];
  return {
    name: "before",
    title: "Before you start",
    kind: "before you start",
    start: "fits",
    atoms: [
      ...sectionHeading("before", "Before you start", width),
      ...adviceList([...first, ...(build.advice?.cautions ?? [])], width),
      ...subheading("Reading this plan", width),
      ...adviceList(reading, width, 4),
    ],
  };
}
