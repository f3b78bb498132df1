/** The whole compiler: text to Draft to Design to Build to Document to bytes. Pure. */
import { andThen, failed, hasErrors, type Outcome } from "./findings/outcome.ts";
import { parse, type Source } from "./parse/index.ts";
import type { Document, Font, Paper } from "./render/document.ts";
import { build } from "./solve/build/index.ts";
import type { Build } from "./solve/build.ts";
import { type DesignOptions, design } from "./solve/design/index.ts";

export type { Source };

export interface PrintOptions {
  /** Absent: letter for a plan in inches, else A4. */
  readonly paper?: Paper["name"];
  /** ISO date for the file's properties. */
  readonly date: string;
  readonly version: string;
}

/** Checks a plan and works everything out. Loads nothing that only drawing needs. */
export function solve(source: Source, options: DesignOptions): Outcome<Build> {
  const draft = parse(source);
  const designed = andThen(draft, (d) => design(d, options));
  return andThen(designed, build);
}

/** Draws the pages of a plan without errors. */
export async function compile(solved: Outcome<Build>, options: PrintOptions): Promise<Outcome<Document>> {
  if (hasErrors(solved.findings)) return failed(solved.findings);
  const { render } = await import("./render/index.ts");
  return andThen(solved, (b) =>
    render(b, { ...options, paper: options.paper ?? (b.design.units === "inch" ? "letter" : "a4") }),
  );
}

/** The pages as a PDF. */
export async function toPdf(document: Document, fonts: Readonly<Record<Font, Uint8Array>>): Promise<Uint8Array> {
  const { writePdf } = await import("./render/write/pdf.ts");
  return writePdf(document, fonts);
}
