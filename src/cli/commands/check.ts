import { type SolveOptions, solve } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { EXIT, type Exit } from "../exit.ts";
import { readPlan } from "../read-plan.ts";
import { type ReportOptions, report } from "../report.ts";
import type { World } from "../world.ts";

export interface CheckOptions extends ReportOptions {
  readonly set?: ReadonlyMap<string, string>;
  readonly choose?: ReadonlyMap<string, string>;
  readonly measured?: ReadonlyMap<string, string>;
}

/** What the command line says about sizes, choices and thicknesses. */
export const solveOptions = ({ set, choose, measured }: CheckOptions): SolveOptions => ({
  sizes: set ?? new Map(),
  ...(choose && { choose }),
  ...(measured && { measured }),
});

/** `check`: the findings are what was asked for, so they go to standard output. */
export async function check(path: string, options: CheckOptions, world: World): Promise<Exit> {
  const source = await readPlan(path, world);
  const { findings } = solve(source, solveOptions(options));
  const result = findings.length === 0 ? "Nothing was found." : "";
  await report({ findings, source, result }, options, world.out, world);
  return hasErrors(findings) ? EXIT.errors : EXIT.done;
}
