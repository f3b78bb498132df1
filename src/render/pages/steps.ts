/** The steps: each a title, and a picture beside its text. Two go on a page where they fit; none is split from its picture. */
import type { Step } from "../../solve/build.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, GREY, onGrid, TYPE } from "../style.ts";
import { type Atom, baseline, list, paragraph } from "../typeset/atom.ts";
import type { FlowAtom, Section } from "../typeset/flow.ts";
import { breakLines, label, paintLine, type Rich } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import { cutStack, paintStack, type Stack, stack } from "../typeset/stack.ts";
import { type Picture, stepPictures } from "./pictures.ts";
import { type Plan, sectionHeading } from "./plan.ts";

/** From the line above a step to its title, and below the title. */
const TITLE_SPACE = 12;
const GAP = 20;
const BETWEEN = 24;
const FIRST = 12;

export function stepPages(plan: Plan): Section | null {
  const { build, frame } = plan;
  if (build.steps.length === 0) return null;
  const heading = sectionHeading("steps", "Step by step", frame.width);
  const above = heading.reduce((sum, atom) => sum + atom.height, 0) + FIRST;
  // Half of the first page, and so the same for all, so that pictures keep their size.
  const usual = onGrid((frame.height - above - BETWEEN) / 2 - TITLE_SPACE - TYPE.stepTitle.leading) - 4;
  const pictures = stepPictures(plan, { width: pictureWidth(plan), height: usual });
  const atoms = build.steps.flatMap((step, i) =>
    stepAtoms(
      plan,
      step,
      pictures[i] as Picture,
      i === 0 ? { above: FIRST, taken: above } : { above: BETWEEN, taken: 0 },
    ),
  );
  return { name: "steps", title: "Step by step", kind: "steps", start: "fits", atoms: [...heading, ...atoms] };
}

const pictureWidth = ({ frame }: Plan): number => Math.floor(frame.width * 0.45);

/** One atom; more where the text is longer than a page, each with the picture. `taken`: height of the first page that is in use. */
function stepAtoms(
  plan: Plan,
  step: Step,
  picture: Picture,
  { above, taken }: { readonly above: number; readonly taken: number },
): FlowAtom[] {
  const { frame } = plan;
  const column = pictureWidth(plan) + GAP;
  const atoms: FlowAtom[] = [];
  let rest: Stack | null = stack(stepText(step, frame.width - column));
  while (rest !== null) {
    const first = atoms.length === 0;
    const title = stepTitle(step, first, frame.width);
    const [now, later]: readonly [Stack, Stack | null] = cutStack(
      rest,
      frame.height - title.height - (first ? taken : 0),
    );
    atoms.push({
      height: title.height + onGrid(Math.max(picture.height, now.height)),
      above: first ? above : BETWEEN,
      keep: false,
      within: [],
      of: `step ${step.number}`,
      paint: (x, y) => [
        ...title.paint(x, y),
        picture.paint(x, y + title.height),
        ...paintStack(now, x + column, y + title.height),
      ],
    });
    rest = later;
  }
  return atoms;
}

function stepTitle(step: Step, first: boolean, width: number): Pick<Atom, "height" | "paint"> {
  const number = String(step.number);
  const after = measure(number, TYPE.stepNumber.font, TYPE.stepNumber.size) + 10;
  const aside = [step.copies > 1 ? `make ${step.copies}` : "", duration(step.bench)]
    .filter((t) => t !== "")
    .join(" · ");
  const asideWidth = measure(aside, TYPE.caption.font, TYPE.caption.size);
  const text = first ? step.title : `${step.title} (continued)`;
  const lines = breakLines(text, TYPE.stepTitle, width - after - asideWidth - 16);
  const bookmark = { title: `${number}. ${step.title}`, level: 2 } as const;
  return {
    height: TITLE_SPACE + lines.length * TYPE.stepTitle.leading,
    paint: (x, y) => {
      const base = y + 4 + baseline(TYPE.stepTitle);
      const title = lines.flatMap((l, i) => paintLine(l, TYPE.stepTitle, x + after, base + i * TYPE.stepTitle.leading));
      return [
        ...(first ? [{ kind: "anchor", name: `step-${number}`, y: Math.max(0, y - 8), bookmark } as const] : []),
        decoration(line(x, y, x + width, y, { width: 1, ink: BLACK })),
        { kind: "group", role: "heading 2", items: [label(number, TYPE.stepNumber, x, base), ...title] },
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
    },
  };
}

function stepText(step: Step, width: number): Atom[] {
  const asides = [
    ...(step.cautions.length === 0 ? [] : [run("Caution", step.cautions.join(" "))]),
    ...(step.reminders.length === 0 ? [] : [run("Remember", step.reminders.join(" "))]),
  ];
  return [
    ...sentences(step.text, width),
    ...asides.flatMap((rich) => barred(paragraph(rich, TYPE.step, width, { above: 8, indent: 10 }))),
  ];
}

/** Paragraphs; neighbours that begin with a dash are a list. */
function sentences(texts: readonly string[], width: number): Atom[] {
  const atoms: Atom[] = [];
  for (let i = 0; i < texts.length; ) {
    let end = i;
    while (texts[end]?.startsWith("– ") === true) end++;
    if (end > i) {
      const items = texts.slice(i, end).map((text) => text.slice(2));
      atoms.push(...list(items, TYPE.step, width, { above: 3, between: 3 }));
      i = end;
    } else {
      atoms.push(
        ...paragraph(texts[i] ?? "", TYPE.step, width, { above: 5, keep: texts[i + 1]?.startsWith("– ") === true }),
      );
      i++;
    }
  }
  return atoms;
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
