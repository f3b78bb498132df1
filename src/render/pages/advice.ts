/** Short paragraphs, each with the few words that it is found by. */
import type { Advice } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { type Atom, list } from "../typeset/atom.ts";
import type { Section } from "../typeset/flow.ts";
import type { Rich } from "../typeset/lines.ts";
import { type Plan, sectionHeading } from "./plan.ts";

export const say = ({ head, text }: Advice): Rich => [
  { text: `${head} `, font: "bold" },
  { text, font: "regular" },
];

export const adviceList = (advice: readonly Advice[], width: number, above = 8): Atom[] =>
  list(advice.map(say), TYPE.body, width, { above, between: 6 });

const adviceSection =
  (name: string, title: string, of: (plan: Plan) => readonly Advice[] | undefined) =>
  (plan: Plan): Section | null => {
    const advice = of(plan) ?? [];
    const { width } = plan.frame;
    if (advice.length === 0) return null;
    return {
      ...{ name, title, kind: name, start: "fits" },
      atoms: [...sectionHeading(name, title, width), ...adviceList(advice, width)],
    };
  };

export const inTheRoom = adviceSection("in the room", "In the room", ({ build }) => build.advice?.room);
export const ifItDoesNotFit = adviceSection(
  "if it does not fit",
  "If it does not fit",
  ({ build }) => build.advice?.cures,
);
