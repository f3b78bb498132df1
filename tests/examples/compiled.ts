import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { solve } from "../../src/compile.ts";
import type { Finding } from "../../src/findings/finding.ts";
import { andThen } from "../../src/findings/outcome.ts";
import { parse } from "../../src/parse/index.ts";
import { writeRecord } from "../../src/render/write/record.ts";
import { build } from "../../src/solve/build/index.ts";
import type { Build } from "../../src/solve/build.ts";
import { design } from "../../src/solve/design/index.ts";
import { type Chains, chains } from "../audit/chains.ts";
import { audit, type BuildRecord, type Violation } from "../audit/index.ts";
import { modelOf } from "../audit/model.ts";
import { madeBefore } from "./solved-before.ts";

/** The complete plans, by their path under `examples`. */
export const EXAMPLES: readonly string[] = ["", "old-plans/"].flatMap((folder) =>
  readdirSync(new URL(`../../examples/${folder}`, import.meta.url))
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => folder + file.slice(0, -".yaml".length))
    .toSorted(),
);

/** Every second one or so, for what is long to run. */
export const SOME_EXAMPLES = EXAMPLES.filter((name) => name.length % 2 === 1);

/** What is drawn whole in each run: our own, and the old plans that are soon drawn; all of them with PAPERS=all. */
const LONG_TO_DRAW: ReadonlySet<string> = new Set(["bookcase", "china-closet", "library-table", "medicine-cabinet"]);
export const DRAWN_EXAMPLES: readonly string[] = EXAMPLES.filter(
  (name) => process.env.PAPERS === "all" || !LONG_TO_DRAW.has(name.replace("old-plans/", "")),
);

/** Of these the plans that are soon solved, for what is asked of each anew. */
export const SMALL_EXAMPLES: readonly string[] = ["boot-bench", "key-cabinet", "loan-desk"];

export const isOldPlan = (name: string): boolean => name.startsWith("old-plans/");

export const textOf = (name: string): string =>
  readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8");

const TEXTS: ReadonlySet<string> = new Set(EXAMPLES.map(textOf));

export interface Solved {
  readonly build: Build | undefined;
  readonly findings: readonly Finding[];
}

export function solveText(
  text: string,
  sizes: Readonly<Record<string, string>> = {},
  choose: Readonly<Record<string, string>> = {},
  measured: Readonly<Record<string, string>> = {},
): Solved {
  const bytes = new TextEncoder().encode(text);
  const map = (values: Readonly<Record<string, string>>) => new Map(Object.entries(values));
  const options = { sizes: map(sizes), choose: map(choose), measured: map(measured) };
  const work = (): Solved => {
    const { value, findings } = solve({ name: "plan.yaml", bytes }, options);
    return { build: value, findings };
  };
  // What is drawn at random is asked for once only.
  const again = TEXTS.has(text) && Object.keys(sizes).length === 0;
  const key = JSON.stringify([text, sizes, choose, measured]);
  return lately(key, () => (again ? madeBefore(key, work) : work()));
}

/**
 * One copy of a plan, solved for itself alone: `solve` looks at every other option and thickness besides, which is the same whichever copy
 * is asked for.
 */
export function solveCopy(
  text: string,
  choose: Readonly<Record<string, string>>,
  measured: Readonly<Record<string, string>> = {},
): Solved {
  const options = { choose: new Map(Object.entries(choose)) };
  const draft = parse({ name: "plan.yaml", bytes: new TextEncoder().encode(text) }, options);
  const as = { sizes: new Map<string, string>(), measured: new Map(Object.entries(measured)) };
  const { value, findings } = andThen(
    andThen(draft, (each) => design(each, as)),
    build,
  );
  return { build: value, findings };
}

/** The few that were asked for last: a file of tests often asks for the same plan again. */
const latest = new Map<string, Solved>();
const FEW = 4;

function lately(key: string, make: () => Solved): Solved {
  const solved = latest.get(key) ?? make();
  latest.delete(key);
  latest.set(key, solved);
  for (const oldest of [...latest.keys()].slice(0, -FEW)) latest.delete(oldest);
  return solved;
}

/** Solved when it is first asked for. */
export function solvedOnce(text: string): () => Solved {
  let first: Solved | undefined;
  return () => {
    first ??= solveText(text);
    return first;
  };
}

/** The build record of a source, as text. */
export function recordOf(text: string, build: Build): string {
  const sourceSha256 = createHash("sha256").update(text).digest("hex");
  return writeRecord(build, { sourceName: "plan.yaml", sourceSha256 });
}

export const auditOf = (text: string, build: Build): readonly Violation[] =>
  audit(JSON.parse(recordOf(text, build)) as BuildRecord);

/** Whether the printed sizes add up. */
export const chainsOf = (text: string, build: Build): Chains =>
  chains(modelOf(JSON.parse(recordOf(text, build)) as BuildRecord));

export const said = (findings: readonly Finding[]): readonly string[] =>
  findings.map((f) => `${f.at.line}: ${f.severity} ${f.rule}: ${f.message}`);

/** Solved without an error, or the test says what was found. */
export function built(name: string): Build {
  const { build, findings } = solvedOnce(textOf(name))();
  if (!build) throw new Error(said(findings).join("\n"));
  return build;
}
