import { dirname, join } from "node:path";
import type { Source } from "../compile.ts";
import { LIMITS } from "../parse/limits.ts";
import { Misuse } from "./exit.ts";
import type { World } from "./world.ts";

const BESIDE = "workshop.yaml";

/** The workshop's file: the one named, or `workshop.yaml` in the plan's folder if it is there. False: none is wanted. */
export async function readWorkshop(
  plan: string,
  named: string | false | undefined,
  world: World,
): Promise<Source | undefined> {
  const limit = LIMITS.sourceBytes.limit + 1;
  if (named === false || (named === undefined && plan === "-")) return undefined;
  if (named === "") throw new Misuse("the workshop's file has no name");
  if (named === "-") throw new Misuse("the workshop cannot be read from standard input; name a file");
  const path = named ?? join(dirname(plan), BESIDE);
  try {
    return { name: path, bytes: await world.read(path, limit) };
  } catch (fault) {
    if (named !== undefined || !(fault instanceof Misuse)) throw fault;
    return undefined;
  }
}
