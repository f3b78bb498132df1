import { posix } from "node:path";

/** A sentence for each rule that has a file and is not in the catalogue, or the reverse, and for each that is not sorted in. */
export function catalogueGaps(files: readonly string[], catalogue: readonly string[]): string[] {
  const names = files.map((file) => posix.basename(file, ".ts"));
  return [
    ...names.filter((name) => !catalogue.includes(name)).map((name) => `${name} is not in the catalogue`),
    ...catalogue.filter((name) => !names.includes(name)).map((name) => `${name} has no file of its name`),
    ...catalogue
      .filter((name, i) => i > 0 && name <= (catalogue[i - 1] ?? ""))
      .map((name) => `${name} is out of order`),
  ];
}
