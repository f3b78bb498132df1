/** The steps: each a title, and a picture beside its text. Two go on a page where they fit; none is split from its picture. */
import type { Step } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, GREY, onGrid, TYPE } from "../style.ts";
import { type Atom, baseline, paragraph } from "../typeset/atom.ts";
import type { FlowAtom, Section } from "../typeset/flow.ts";
import { fit, label, type Rich } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import { cutStack, paintStack, type Stack, stack } from "../typeset/stack.ts";
import { stepPicture } from "./pictures.ts";
import { type Plan, sectionHeading } from "./plan.ts";

const TITLE = 32;
const GAP = 20;
const BETWEEN = 28;

export function stepPages(plan: Plan): Section | null {
  const { build, frame } = plan;
  if (build.steps.length === 0) return null;
  const heading = sectionHeading("steps", "Step by step", frame.width);
  const above = heading.reduce((sum, atom) => sum + atom.height, 0) + 12;
  // Half of the first page, and so the same for all, so that pictures keep their size.
  const usual = onGrid((frame.height - above - BETWEEN) / 2 - TITLE) - 4;
  return {
    name: "steps",
    title: "Step by step",
    kind: "steps",
    start: "page",
    atoms: [...heading, ...build.steps.flatMap((step, i) => stepAtoms(plan, step, usual, i === 0 ? 12 : BETWEEN))],
  };
}

/** One atom; more where the text is longer than a page, each with the picture. */
function stepAtoms(plan: Plan, step: Step, usual: number, above: number): FlowAtom[] {
  const { frame } = plan;
  const most = frame.height - TITLE;
  const pictureWidth = Math.floor(frame.width * 0.5);
  const textWidth = frame.width - pictureWidth - GAP;
  const picture = stepPicture(plan, step, { width: pictureWidth, height: usual });
  const atoms: FlowAtom[] = [];
  let rest: Stack | null = stack(stepText(step, textWidth));
  while (rest !== null) {
    const [now, later]: readonly [Stack, Stack | null] = cutStack(rest, most);
    const height = onGrid(Math.max(usual, now.height));
    const first = atoms.length === 0;
    atoms.push({
      height: TITLE + height,
      above: first ? above : BETWEEN,
      keep: false,
      within: [],
      of: `step ${step.number}`,
      paint: (x, y) => [
        ...titleItems(step, first, frame.width, x, y),
        picture.paint(x, y + TITLE),
        ...paintStack(now, x + pictureWidth + GAP, y + TITLE),
      ],
    });
    rest = later;
  }
  return atoms;
}

function titleItems(step: Step, first: boolean, width: number, x: number, y: number): Item[] {
  const base = y + 4 + baseline(TYPE.stepTitle);
  const number = String(step.number);
  const after = measure(number, TYPE.stepNumber.font, TYPE.stepNumber.size) + 10;
  const aside = [step.copies > 1 ? `make ${step.copies}` : "", duration(step.bench)]
    .filter((text) => text !== "")
    .join(" · ");
  const asideWidth = measure(aside, TYPE.caption.font, TYPE.caption.size);
  const title = fit(first ? step.title : `${step.title} (continued)`, TYPE.stepTitle, width - after - asideWidth - 16);
  const name = `step-${step.number}`;
  const anchor: Item = {
    kind: "anchor",
    name,
    y: Math.max(0, y - 8),
    bookmark: { title: `${number}. ${step.title}`, level: 2 },
  };
  return [
    ...(first ? [anchor] : []),
    decoration(line(x, y, x + width, y, { width: 1, ink: BLACK })),
    {
      kind: "group",
      role: "heading 2",
      items: [label(number, TYPE.stepNumber, x, base), label(title, TYPE.stepTitle, x + after, base)],
    },
    ...(aside === ""
      ? []
      : [
          {
            kind: "group",
            role: "paragraph",
            items: [label(aside, TYPE.caption, x + width, base, "right")],
          } as const,
        ]),
  ];
}

function stepText(step: Step, width: number): Atom[] {
  const plain = step.text.flatMap((text, i) => paragraph(text, TYPE.step, width, { above: i === 0 ? 0 : 6 }));
  const waits = step.waits.map(
    (wait): Rich => run("Wait", `${duration(wait.minutes)} for ${wait.for.replace(/^for /, "")}.`),
  );
  const asides = [
    ...step.cautions.map((text) => run("Caution", text)),
    ...step.reminders.map((text) => run("Remember", text)),
    ...waits,
  ];
  return [...plain, ...asides.flatMap((rich) => barred(paragraph(rich, TYPE.step, width, { above: 10, indent: 10 })))];
}

const run = (head: string, text: string): Rich => [
  { text: `${head}: `, font: "bold" },
  { text, font: "regular" },
];

/** A bar in the margin of a paragraph. */
const barred = (atoms: readonly Atom[]): Atom[] =>
  atoms.map((atom) => ({
    ...atom,
    paint: (x, y) => [decoration(line(x + 1, y, x + 1, y + atom.height, { width: 2, ink: GREY })), ...atom.paint(x, y)],
  }));

/** "20 min", "1 h 30 min". */
export function duration(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  const parts = [hours > 0 ? `${hours}\u202fh` : "", rest > 0 ? `${rest}\u202fmin` : ""];
  return parts.filter((part) => part !== "").join(" ");
}
