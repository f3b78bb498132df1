import { expandSource } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { EXIT, type Exit } from "../exit.ts";
import { readPlan } from "../read-plan.ts";
import { type ReportOptions, report } from "../report.ts";
import type { World } from "../world.ts";

export interface ExpandOptions extends ReportOptions {
  readonly choose?: ReadonlyMap<string, string>;
}

/** `expand`: the plan with its choices made and its assemblies opened, on standard output; findings on standard error. */
export async function expand(path: string, options: ExpandOptions, world: World): Promise<Exit> {
  const source = await readPlan(path, world);
  const { value, findings } = expandSource(source, options.choose ?? new Map());
  if (findings.length > 0 || value === undefined)
    await report(
      { findings, source, result: value === undefined ? "Nothing was opened." : "" },
      options,
      world.err,
      world,
    );
  if (value !== undefined && !hasErrors(findings)) await world.out.write(value);
  return hasErrors(findings) ? EXIT.errors : EXIT.done;
}
