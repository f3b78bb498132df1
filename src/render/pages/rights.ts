/** Who may do what with the plan, who made it, and where to ask. */
import { sayThickness } from "../../units/say-thickness.ts";
import { TYPE } from "../style.ts";
import { type Atom, list } from "../typeset/atom.ts";
import type { Section } from "../typeset/flow.ts";
import { madeFor } from "./choices.ts";
import { body, type Plan, sectionHeading, subheading } from "./plan.ts";

export function rights({ build, frame, buyer }: Plan): Section | null {
  const { design } = build;
  const { rights: allowed, support, credits = [], edition, by, units } = design;
  const { width } = frame;
  if (allowed === undefined && support === undefined && credits.length === 0 && buyer === "") return null;
  const measured = design.stock
    .filter((stock) => stock.measured)
    .map(
      ({ label, thickness }) => `${label} that measures ${sayThickness(thickness, { units, style: "typographic" })}`,
    );
  const told = [
    edition === "" ? "" : `This is edition ${edition.replace(/^edition\s+/iu, "")}.`,
    madeFor(design),
    measured.length === 0 ? "" : `It was made for ${measured.join(", ")}.`,
  ].filter((text) => text !== "");
  const paragraphs = (title: string, texts: readonly string[]): Atom[] =>
    texts.length === 0
      ? []
      : [...subheading(title, width, 12), ...texts.flatMap((text) => body(text, width, { above: 4 }))];
  const owner = buyer === "" ? [] : [`This copy was made for ${buyer}.`];
  return {
    ...{ name: "rights", title: "Rights, edition and support", kind: "rights", start: "fits" },
    atoms: [
      ...sectionHeading("rights", "Rights, edition and support", width),
      ...paragraphs("What is allowed", [...owner, ...lines(allowed)]),
      ...paragraphs("This edition", told),
      ...paragraphs("Where to ask", [
        ...lines(support),
        ...(support === undefined
          ? []
          : [
              "Say which edition you have, what you chose and what your stock measures, and the mark of the part or the number of the step.",
            ]),
      ]),
      ...(credits.length === 0 && (by === "" || allowed === undefined)
        ? []
        : [
            ...subheading("Who made it", width, 12),
            ...list(by === "" ? credits : [by, ...credits], TYPE.body, width, { above: 4 }),
          ]),
    ],
  };
}

/** The paragraphs of a text of the maker's. */
const lines = (text = ""): readonly string[] =>
  text
    .split(/\n+/u)
    .map((line) => line.trim())
    .filter((line) => line !== "");
