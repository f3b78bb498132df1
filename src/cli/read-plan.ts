import { dirname, join } from "node:path";
import { includes, type Source } from "../compile.ts";
import { LIMITS } from "../parse/limits.ts";
import { Misuse } from "./exit.ts";
import type { World } from "./world.ts";

/** Reads a plan, and the files beside it that it includes: no more of each than shows that it is too long. */
export async function readPlan(path: string, world: World): Promise<Source> {
  if (path === "") throw new Misuse("the plan has no name");
  const limit = LIMITS.sourceBytes.limit + 1;
  const bytes = await world.read(path, limit);
  const source: Source = { name: path === "-" ? "standard input" : path, bytes };
  const names = includes(source);
  if (names.length === 0) return source;
  const folder = path === "-" ? "." : dirname(path);
  const files = new Map<string, Uint8Array>();
  for (const name of names)
    try {
      files.set(name, await world.read(join(folder, name), limit));
    } catch (fault) {
      // The plan's findings tell of a file that cannot be had, at the line that asks for it.
      if (!(fault instanceof Misuse)) throw fault;
    }
  return { ...source, files };
}
