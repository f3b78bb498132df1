import type { Source } from "../../compile.ts";
import { type SolveOptions, solve } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { EXIT, type Exit } from "../exit.ts";
import { readPlan } from "../read-plan.ts";
import { readWorkshop } from "../read-workshop.ts";
import { type ReportOptions, report } from "../report.ts";
import type { World } from "../world.ts";

export interface CheckOptions extends ReportOptions {
  readonly set?: ReadonlyMap<string, string>;
  readonly choose?: ReadonlyMap<string, string>;
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
  const workshop = await readWorkshop(path, options.workshop, world);
  const { findings } = solve(source, solveOptions(options, workshop));
  const result = findings.length === 0 ? "Nothing was found." : "";
  await report({ findings, source, workshop, result }, options, world.out, world);
  return hasErrors(findings) ? EXIT.errors : EXIT.done;
}
