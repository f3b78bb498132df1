import { join } from "node:path";
import type { Document } from "../render/document.ts";
import { articleOf } from "../render/write/article.ts";
import { tablesOf } from "../render/write/csv.ts";
import { figuresOf } from "../render/write/gather.ts";
import { svgOf } from "../render/write/svg.ts";
import type { Build } from "../solve/build.ts";
import type { Output } from "./world.ts";

export interface ExportOptions {
  readonly pictures?: string;
  readonly tables?: string;
  readonly article?: string;
}

/** What is written into folders beside the plan: drawings, tables, and the steps as a page for the web. */
export function exportsOf(build: Build, document: Document, options: ExportOptions): readonly Output[] {
  const { pictures, tables, article } = options;
  const figures = figuresOf(document);
  const svg = (folder: string, wanted: (name: string) => boolean): readonly Output[] =>
    figures
      .filter(({ name }) => wanted(name))
      .map(({ name, figure }) => ({ path: join(folder, `${name}.svg`), bytes: utf8(svgOf(figure)) }));
  const isStep = (name: string): boolean => /^step-\d+$/.test(name);
  const steps = new Map(figures.filter(({ name }) => isStep(name)).map(({ name, figure }) => [name, figure.alt ?? ""]));
  const text = articleOf(build, ({ number }) => {
    const name = `step-${number}`;
    const alt = steps.get(name);
    return alt === undefined ? null : { file: `${name}.svg`, alt };
  });
  return [
    ...(pictures === undefined ? [] : svg(pictures, () => true)),
    ...(tables === undefined
      ? []
      : tablesOf(document).map(({ name, text: csv }) => ({ path: join(tables, `${name}.csv`), bytes: utf8(csv) }))),
    ...(article === undefined
      ? []
      : [...svg(article, isStep), { path: join(article, "article.md"), bytes: utf8(text) }]),
  ];
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
