/** The steps as Markdown for a web page, each with its picture beside it as a file. */
import type { Build, Step } from "../../solve/build.ts";

/** `picture` gives the name of a step's picture and its alternative in words. */
export function articleOf(
  { design, steps }: Pick<Build, "design" | "steps">,
  picture: (step: Step) => { readonly file: string; readonly alt: string } | null,
): string {
  const head = [
    `# ${plain(design.title)}`,
    ...[design.subtitle, design.summary].filter((text) => text !== "").map(plain),
  ];
  const body = steps.flatMap((step): readonly string[] => {
    const shown = picture(step);
    return [
      `## ${step.number}. ${plain(step.title)}`,
      ...(shown ? [`![${plain(shown.alt)}](${shown.file})`] : []),
      ...step.cautions.map((text) => `**Caution:** ${plain(text)}`),
      numbered(step.text),
      ...step.reminders.map((text) => `*${plain(text)}*`),
    ].filter((text) => text !== "");
  });
  return `${[...head, ...body].join("\n\n")}\n`;
}

/** Sentences in their order; what begins with a dash belongs to the one before it. */
function numbered(sentences: readonly string[]): string {
  let number = 0;
  return sentences
    .map((text) => {
      if (text.startsWith("– ")) return `   - ${plain(text.slice(2))}`;
      number += 1;
      return `${number}. ${plain(text)}`;
    })
    .join("\n");
}

/** What Markdown would read as its own is escaped. */
const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#|]/g, (each) => `\\${each}`);
