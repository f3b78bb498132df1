import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Misuse } from "./exit.ts";
import { outputPlace, type Place } from "./output-place.ts";
import { codeOf, onFile } from "./reason.ts";
import type { Output, WriteRules } from "./world.ts";

/**
 * Writes every file to one side, in the folder where it belongs, and then renames them all into place: a reader sees the old
 * file or the new one, never half of one, and a failure leaves the old files alone. A link is replaced, not followed.
 */
export function writeFiles(outputs: readonly Output[], rules: WriteRules): void {
  const places = outputs.map(({ path }) => outputPlace(path, rules));
  if (new Set(places.map(({ path }) => path)).size < places.length)
    throw new Misuse("two outputs have the same name; give each its own");
  const aside: string[] = [];
  try {
    outputs.forEach(({ path, bytes }, i) => {
      onFile(path, () => writeAside(places[i] as Place, bytes, aside));
    });
    outputs.forEach(({ path }, i) => {
      onFile(path, () => renameSync(aside[i] as string, (places[i] as Place).path));
    });
  } finally {
    for (const path of aside) rmSync(path, { force: true });
  }
}

/** Writes a new file beside its place, down to the disk, and adds its name to `made` as soon as it exists. */
function writeAside({ path, mode }: Place, bytes: Uint8Array, made: string[]): void {
  const { name, file } = createBeside(dirname(path), mode);
  made.push(name);
  try {
    writeFileSync(file, bytes);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function createBeside(folder: string, mode: number): { readonly name: string; readonly file: number } {
  for (let attempt = 0; ; attempt += 1) {
    const name = join(folder, `.boardwright-${process.pid}-${attempt}`);
    try {
      return { name, file: openSync(name, "wx", mode) };
    } catch (thrown) {
      if (codeOf(thrown) !== "EEXIST" || attempt === 100) throw thrown;
    }
  }
}
