import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { TestProject } from "vitest/node";
import { forgetAll } from "./examples/solved-before.ts";

/** Bundles the program. Where that fails there is no bundle, and only the tests that start the program fail. */
export default function setup(project: TestProject): void {
  forgetAll();
  project.onTestsRerun(forgetAll);
  spawnSync(process.execPath, [fileURLToPath(new URL("../scripts/build.mjs", import.meta.url))], { stdio: "inherit" });
}
