import { accessSync, constants, lstatSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { Misuse } from "./exit.ts";
import { onFile } from "./reason.ts";
import type { WriteRules } from "./world.ts";

/** Where an output goes: its real folder with its name, and the permissions of the file that it replaces. */
export interface Place {
  readonly path: string;
  readonly mode: number;
}

/** Finds the place of an output, or says (Misuse) why nothing may be written there. */
export function outputPlace(path: string, { sources, replace }: WriteRules): Place {
  if (basename(path) === "") throw new Misuse("the output needs a name");
  if (/[/\\]$/.test(path)) throw new Misuse(`${path} is a folder; name a file in it`);
  const folder = onFile(dirname(path), () => realpathSync(dirname(path)));
  // A rename in here would replace a device by a file.
  if (/^\/(dev|proc)(\/|$)/.test(folder)) throw new Misuse(`${path} is not a place for files; "-" is standard output`);
  const full = join(folder, basename(path));
  const there = onFile(path, () => statSync(full, { throwIfNoEntry: false }));
  if (there === undefined) {
    const link = lstatSync(full, { throwIfNoEntry: false });
    if (link !== undefined && !replace) throw new Misuse(`${path} is already there`);
    return { path: full, mode: 0o666 };
  }
  if (there.isDirectory()) throw new Misuse(`${path} is a folder; name a file in it`);
  if (!there.isFile()) throw new Misuse(`${path} is not an ordinary file`);
  for (const source of sources) {
    const plan = statSync(source, { throwIfNoEntry: false });
    if (plan !== undefined && plan.dev === there.dev && plan.ino === there.ino)
      throw new Misuse(`${path} is the plan itself; name another file for the output`);
  }
  if (!replace) throw new Misuse(`${path} is already there; name another file`);
  onFile(path, () => accessSync(full, constants.W_OK));
  return { path: full, mode: there.mode & 0o777 };
}
