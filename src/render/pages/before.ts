/** What to know before the first cut. */
import { TYPE } from "../style.ts";
import { list } from "../typeset/atom.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { otherwise } from "./choices.ts";
import { body, type Plan, sectionHeading, subheading } from "./plan.ts";

const say = (head: string, text: string): Rich => [
  { text: `${head} `, font: "bold" },
  { text, font: "regular" },
];

const cautions: readonly Rich[] = [
  say("Eyes and ears.", "Wear safety glasses for every cut and every hole, and hearing protection beside machines."),
  say("Lungs.", "Saw and sand where the air moves, and wear a dust mask."),
  say(
    "Blades.",
    "Leave the guards on, and use a push stick for narrow pieces. Unplug a machine before you change its blade or bit. Keep your hands out of the line of the cut, and hold small parts with a clamp.",
  ),
  say("Tools, glues and finishes.", "Their makers’ instructions come before anything that this plan says."),
];

const rags = say(
  "Rags.",
  "Rags that are wet with an oil finish can catch fire by themselves. Dry them spread out of doors, or drown them in a closed metal can.",
);

const codes =
  "This plan cannot know the rules where you live, nor your walls and floors. Where people could be hurt – things high up, heavy loads, small children, fixing to a wall – ask someone who knows the local codes.";

export function beforeYouStart({ build, frame, printer }: Plan): Section {
  const { width } = frame;
  const { design } = build;
  const finishing = build.steps.some((step) => step.kind === "finish");
  const longNames = printer.unit === "in" ? "inches" : "millimetres";
  const others = otherwise(design);
  const reading: Rich[] = [
    say(
      "Marks.",
      "Every part has a mark, a letter or a letter and a number. Write it on the part as soon as it is cut.",
    ),
    say(
      "Sizes",
      `are in ${longNames}, thickness × width × length, and rounded to ${printer.exact(design.precision)} ${printer.unit}. The length runs along the grain.`,
    ),
    say(
      "Pictures.",
      "In the steps, what is new is tinted and has thick lines; what is there already has thin lines. Arrows show which way a part goes.",
    ),
    say("Left, right, front and back", "are those of the finished piece as you stand before it."),
  ];
  return {
    name: "before",
    title: "Before you start",
    kind: "before you start",
    start: "fits",
    atoms: [
      ...sectionHeading("before", "Before you start", width),
      ...list(finishing ? [...cautions, rags] : cautions, TYPE.body, width, { above: 8 }),
      ...body(codes, width, { above: 8 }),
      ...subheading("Reading this plan", width),
      ...list(reading, TYPE.body, width, { above: 4 }),
      ...(others.length === 0
        ? []
        : [
            ...subheading("If you had chosen otherwise", width),
            ...list(others, TYPE.body, width, { above: 4 }),
            ...body("Sizes, boards and screws may then be others. This plan holds for what was chosen.", width, {
              above: 4,
            }),
          ]),
    ],
  };
}
