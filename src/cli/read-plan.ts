import type { Source } from "../compile.ts";
import { LIMITS } from "../parse/limits.ts";
import { Misuse } from "./exit.ts";
import type { World } from "./world.ts";

/** Reads a plan: no more of it than shows that it is too long. */
export async function readPlan(path: string, world: World): Promise<Source> {
  if (path === "") throw new Misuse("the plan has no name");
  const bytes = await world.read(path, LIMITS.sourceBytes.limit + 1);
  return { name: path === "-" ? "standard input" : path, bytes };
}
