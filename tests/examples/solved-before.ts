import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { deserialize, serialize } from "node:v8";

/** Where one file of tests leaves what others need again. Emptied before each run. */
const FOLDER = new URL("../../out/solved/", import.meta.url);

export const forgetAll = (): void => rmSync(FOLDER, { recursive: true, force: true });

/** A value that takes long to make, once for all files of tests: plain data, with its maps, sets and whole numbers of any size. */
export function madeBefore<T>(key: string, make: () => T): T {
  const file = new URL(createHash("sha256").update(key).digest("hex"), FOLDER);
  try {
    return deserialize(readFileSync(file));
  } catch {
    const made = make();
    mkdirSync(FOLDER, { recursive: true });
    // Two files of tests may make it at the same time.
    const aside = new URL(`${file.href}.${process.pid}.${process.env.VITEST_POOL_ID ?? 0}`);
    writeFileSync(aside, serialize(made));
    renameSync(aside, file);
    return made;
  }
}
