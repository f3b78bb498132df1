import { mkdirSync, writeFileSync } from "node:fs";
import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with "N passed, N failed" alone on a line, and leaves the line in out/tests.txt for `.ci/run`. */
export default class Count implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const { passed, failed, skipped } = count(modules, unhandled.length);
    const line = `${passed} passed, ${failed} failed\n`;
    mkdirSync("out", { recursive: true });
    writeFileSync("out/tests.txt", line);
    process.stdout.write(`\n${skipped > 0 ? `${skipped} skipped\n` : ""}${line}`);
  }
}

/** A file that could not be run, and an error outside every test, each count as a failed test. */
function count(modules: readonly TestModule[], unhandled: number) {
  let [passed, failed, skipped] = [0, unhandled, 0];
  for (const module of modules) {
    if (module.errors().length > 0) failed += 1;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === "passed") passed += 1;
      else if (state === "failed") failed += 1;
      else skipped += 1;
    }
  }
  return { passed, failed, skipped };
}
