import { jumps, type SolveOptions, type Source, solve } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { escapeText } from "../../findings/print/index.ts";
import { EXIT, type Exit, Misuse } from "../exit.ts";
import { readPlan } from "../read-plan.ts";
import { readWorkshop } from "../read-workshop.ts";
import { type ReportOptions, report } from "../report.ts";
import { sayJumps } from "../say-jumps.ts";
import type { World } from "../world.ts";

export interface CheckOptions extends ReportOptions {
  readonly set?: ReadonlyMap<string, string>;
  readonly choose?: ReadonlyMap<string, string>;
  /** Also tell where counts and lengths jump over the ranges of sizes and stock. */
  readonly jumps?: boolean;
  readonly measured?: ReadonlyMap<string, string>;
  /** False with --no-workshop. */
  readonly workshop?: string | false;
}

/** What the command line says about sizes, choices, thicknesses and the workshop. */
export const solveOptions = (
  { set, choose, measured }: Omit<CheckOptions, "workshop">,
  workshop: Source | undefined,
): SolveOptions => ({
  sizes: set ?? new Map(),
  ...(choose && { choose }),
  ...(measured && { measured }),
  ...(workshop && { workshop }),
});

/** `check`: the findings are what was asked for, so they go to standard output. */
export async function check(path: string, options: CheckOptions, world: World): Promise<Exit> {
  const source = await readPlan(path, world);
  if (options.jumps && options.format !== "text") throw new Misuse("--jumps is told as text only");
  const workshop = await readWorkshop(path, options.workshop, world);
  const asked = solveOptions(options, workshop);
  const { value, findings } = solve(source, asked);
  const result = findings.length === 0 ? "Nothing was found." : "";
  await report({ findings, source, workshop, result }, options, world.out, world);
  if (options.jumps && value) {
    const found = jumps(source, asked).value ?? [];
    const lines = sayJumps(found, value.design.units).map((line) => `${escapeText(line)}\n`);
    await world.out.write(`\n${lines.join("")}`);
  }
  return hasErrors(findings) ? EXIT.errors : EXIT.done;
}
