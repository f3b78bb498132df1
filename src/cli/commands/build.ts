import { basename, dirname, normalize } from "node:path";
import { compile, solve, toPdf } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { escapeText } from "../../findings/print/index.ts";
import type { Document } from "../../render/document.ts";
import { deliver, STANDARD } from "../deliver.ts";
import { editionDate } from "../edition-date.ts";
import { EXIT, type Exit, Misuse } from "../exit.ts";
import type { ExportOptions } from "../exports.ts";
import { readPlan } from "../read-plan.ts";
import { readWorkshop } from "../read-workshop.ts";
import { recordOf } from "../record-of.ts";
import { report } from "../report.ts";
import type { Output, World } from "../world.ts";
import { type CheckOptions, solveOptions } from "./check.ts";

export interface BuildOptions extends CheckOptions, ExportOptions {
  readonly output?: string;
  readonly record?: string;
  readonly labels?: string;
  readonly paper?: "letter" | "a4";
  /** Whose copy it is. */
  readonly for?: string;
  readonly author?: boolean;
}

/** `build`: the findings go to standard error, since standard output may be the plan. An error among them, and nothing is written. */
export async function build(path: string, options: BuildOptions, world: World): Promise<Exit> {
  const output = options.output ?? outputFor(path);
  refuseMixture([output, options.record, options.labels], world);
  const source = await readPlan(path, world);
  const workshop = await readWorkshop(path, options.workshop, world);
  const solved = solve(source, solveOptions(options, workshop));
  const date = editionDate(solved.value?.design.edition ?? "", world);
  const { paper } = options;
  const buyer = options.for === undefined ? undefined : nameOf(options.for);
  const drawn = await compile(solved, {
    ...(paper && { paper }),
    ...(buyer && { buyer }),
    ...(options.author && { author: true }),
    date,
    version: world.version,
  });
  const { findings, value: document } = drawn;
  const tell = (result: string) => report({ findings, source, workshop, result }, options, world.err, world);
  if (solved.value === undefined || document === undefined || hasErrors(findings)) {
    await tell("No plan was written.");
    return EXIT.errors;
  }
  const outputs: Output[] = [{ path: output, bytes: await pdf(document, world) }];
  if (options.record !== undefined)
    outputs.push({
      path: options.record,
      bytes: await recordOf({ ...solved.value, findings }, { source, workshop }, document, world),
    });
  if (options.labels !== undefined) {
    const { labels } = await import("../../render/labels.ts");
    const sheets = labels(solved.value, { paper: document.paper.name, date, version: world.version });
    outputs.push({ path: options.labels, bytes: await pdf(sheets, world) });
  }
  const folders = [options.pictures, options.tables, options.article].filter((folder) => folder !== undefined);
  if (folders.length > 0) {
    const { exportsOf } = await import("../exports.ts");
    world.folders(folders);
    outputs.push(...exportsOf(solved.value, document, options));
  }
  await deliver(outputs, [path, ...(workshop ? [workshop.name] : [])], world);
  await tell(written(outputs, document, folders));
  return EXIT.done;
}

/** The plan's name with .pdf, in the folder where the program was started; a plan from standard input goes to standard output. */
const outputFor = (path: string): string =>
  path === STANDARD ? STANDARD : `${basename(path).replace(/\.ya?ml$/i, "")}.pdf`;

/** A name that can be printed in one line. */
function nameOf(text: string): string {
  const name = text.trim().replace(/\s+/gu, " ");
  if (name === "" || name.length > LONGEST_NAME || /\p{Cc}/u.test(name))
    throw new Misuse(`--for needs a name of at most ${LONGEST_NAME} letters, such as --for "A. Reader"`);
  return name;
}

const LONGEST_NAME = 60;

function refuseMixture([output, record, labels]: readonly (string | undefined)[], world: World): void {
  if ([output, record, labels].filter((path) => path === STANDARD).length > 1)
    throw new Misuse("only one output can go to standard output; name a file for the other");
  if ((output === STANDARD || labels === STANDARD) && world.out.isTerminal)
    throw new Misuse("a PDF is not for the terminal; name a file with -o");
}

const pdf = (document: Document, world: World): Promise<Uint8Array> =>
  toPdf(document, {
    regular: world.asset("fonts/regular.ttf"),
    bold: world.asset("fonts/bold.ttf"),
    italic: world.asset("fonts/italic.ttf"),
  });

function written(outputs: readonly Output[], { pages }: Document, folders: readonly string[]): string {
  const single = outputs.filter(
    ({ path }) => path !== STANDARD && !folders.some((folder) => normalize(folder) === dirname(path)),
  );
  const own = folders.map((folder) => `${escapeText(folder)} (${counted(outputs, folder)})`);
  const files = [...single.map(({ path }) => escapeText(path)), ...new Set(own)];
  const count = pages.length === 1 ? "1 page" : `${pages.length} pages`;
  return files.length === 0 ? "" : `Wrote ${files.join(" and ")} (${count}).`;
}

function counted(outputs: readonly Output[], folder: string): string {
  const n = outputs.filter(({ path }) => dirname(path) === normalize(folder)).length;
  return n === 1 ? "1 file" : `${n} files`;
}
