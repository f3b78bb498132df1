import { solve } from "../../compile.ts";
import { hasErrors } from "../../findings/outcome.ts";
import { printJson } from "../../render/write/record/json.ts";
import { layoutRecord, proofRecord, purchaseRecord } from "../../render/write/record/layouts.ts";
import { EXIT, type Exit } from "../exit.ts";
import { layoutText } from "../layout/text.ts";
import { paletteFor } from "../palette.ts";
import { readPlan } from "../read-plan.ts";
import { readWorkshop } from "../read-workshop.ts";
import { report } from "../report.ts";
import type { World } from "../world.ts";
import { type CheckOptions, solveOptions } from "./check.ts";

/** `layout`: layouts, proof and purchases on standard output, findings on standard error. */
export async function layout(path: string, options: CheckOptions, world: World): Promise<Exit> {
  const source = await readPlan(path, world);
  const workshop = await readWorkshop(path, options.workshop, world);
  const { value, findings } = solve(source, solveOptions(options, workshop));
  const failed = value === undefined || hasErrors(findings);
  const result = failed ? "Nothing was laid out." : "";
  if (findings.length > 0 || failed) await report({ findings, source, workshop, result }, options, world.err, world);
  if (failed) return EXIT.errors;
  if (options.format === "json")
    await world.out.write(
      printJson({
        layouts: value.layouts.map(layoutRecord),
        layoutProof: value.layoutProof.map(proofRecord),
        purchases: value.purchases.map(purchaseRecord),
      }),
    );
  else {
    const look = { width: Math.min(world.out.columns, 100), palette: paletteFor(world.out, options.color, world) };
    await world.out.write(layoutText(value, look));
  }
  return EXIT.done;
}
