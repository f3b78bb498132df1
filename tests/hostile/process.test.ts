import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { ROOT } from "../cli/program.ts";
import { HOSTILE } from "./sources.ts";

/** Half a gigabyte for JavaScript's own objects: beyond it the process aborts, and the test fails. */
const MEMORY = "--max-old-space-size=512";
/** Two seconds are promised on an ordinary machine; a busy one gets five times that. */
const MOST = 10_000;

// biome-ignore lint/suspicious/noControlCharactersInRegex: these must never reach a terminal
const STEERS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Each in its own process: an abort or a full memory cannot be caught in this one. */
function check(input: string | Uint8Array) {
  const args = [MEMORY, `${ROOT}/bin/boardwright.js`, "check", "-", "--format", "short"];
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, args, {
    input,
    timeout: MOST,
    encoding: "utf8",
  });
  return { status, signal, out: stdout, err: stderr };
}

describe("hostile sources end in findings with a place, in time, within memory", () => {
  test.each(HOSTILE.map((each) => [each.what, each] as const))("%s", (_, { source, rule }) => {
    const { status, signal, out, err } = check(source);
    expect(signal).toBeNull();
    expect([0, 1]).toContain(status);
    expect(`${out}${err}`).not.toMatch(/\n\s+at |fault in boardwright/);
    expect(STEERS.exec(out + err)).toBeNull();
    const rules = [...out.matchAll(/^standard input:\d+:\d+: (?:error|warning|advice): .* \[([a-z0-9-]+)\]$/gm)].map(
      (found) => found[1],
    );
    if (rule === undefined) expect(rules.filter((each) => each !== "outside-missing")).toEqual([]);
    else expect(rules).toContain(rule);
  });
});
