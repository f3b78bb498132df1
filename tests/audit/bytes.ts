/** Promise 8: the same source gives the same bytes. */
import { type Violation, violation } from "./violation.ts";

/** What two files of one source differ in: nothing, or the first place. */
export function sameBytes(name: string, a: Uint8Array, b: Uint8Array): Violation[] {
  const shorter = Math.min(a.length, b.length);
  let at = 0;
  while (at < shorter && a[at] === b[at]) at += 1;
  const same = at === a.length && at === b.length;
  return same ? [] : [violation("same source, same bytes", name, `differs from byte ${at} on`)];
}
