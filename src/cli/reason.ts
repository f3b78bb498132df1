import { Misuse } from "./exit.ts";

const REASONS: ReadonlyMap<string, string> = new Map([
  ["ENOENT", "there is no such file or folder"],
  ["ENOTDIR", "a part of the path is not a folder"],
  ["EISDIR", "it is a folder"],
  ["EACCES", "permission is missing"],
  ["EPERM", "permission is missing"],
  ["EROFS", "the disk is read-only"],
  ["ENOSPC", "the disk is full"],
  ["EDQUOT", "the disk quota is used up"],
  ["ENAMETOOLONG", "the name is too long"],
  ["ELOOP", "the links go in a circle"],
]);

/** The code of a system error, such as ENOENT; the empty string for anything else. */
export function codeOf(thrown: unknown): string {
  const code = thrown instanceof Error && "code" in thrown ? String(thrown.code) : "";
  return /^E[A-Z0-9]+$/.test(code) ? code : "";
}

/** A system error as a Misuse that names the file and says why in plain words; anything else as it is. */
export function asMisuse(path: string, thrown: unknown): unknown {
  const code = codeOf(thrown);
  return code === "" ? thrown : new Misuse(`${path}: ${REASONS.get(code) ?? `the system says ${code}`}`);
}

/** Does `work` on a file, and puts the system's refusal into words. */
export function onFile<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (thrown) {
    throw asMisuse(path, thrown);
  }
}
