import type { Source } from "../compile.ts";
import type { Finding } from "../findings/finding.ts";
import { printedSource, printJson, printShort, printTerminal, summary } from "../findings/print/index.ts";
import { wrap } from "../findings/print/width.ts";
import { paletteFor } from "./palette.ts";
import type { Stream, World } from "./world.ts";

export interface ReportOptions {
  readonly format: "text" | "short" | "json";
  /** False with --no-color. */
  readonly color: boolean;
}

export interface Report {
  readonly findings: readonly Finding[];
  readonly source: Source;
  readonly workshop?: Source | undefined;
  /** What came of it, a sentence for people. */
  readonly result: string;
}

/** Prints findings in the form that was asked for. */
export async function report(about: Report, options: ReportOptions, to: Stream, world: World): Promise<void> {
  await to.write(printed(about, options, to, world));
}

function printed(
  { findings, source, workshop, result }: Report,
  options: ReportOptions,
  to: Stream,
  world: World,
): string {
  if (options.format === "json") return printJson(findings, source.name);
  if (options.format === "short") return printShort(findings, source.name);
  const palette = paletteFor(to, options.color, world);
  const width = Math.min(to.columns, 100);
  const text = { ...printedSource(source.name, textOf(source.bytes)), others: otherFiles(source, workshop) };
  const body = printTerminal(findings, text, { width, palette });
  return `${body}${body === "" ? "" : "\n"}${wrap(summary(findings, result), width).join("\n")}`;
}

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** Lines of the files that the plan includes, and of the workshop's. */
const otherFiles = (source: Source, workshop: Source | undefined): ReadonlyMap<string, readonly string[]> =>
  new Map(
    [...(source.files ?? []), ...(workshop ? [[workshop.name, workshop.bytes] as const] : [])].map(([name, bytes]) => [
      name,
      printedSource(name, textOf(bytes)).lines,
    ]),
  );
