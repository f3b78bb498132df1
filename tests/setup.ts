import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** Bundles the program. Where that fails there is no bundle, and only the tests that start the program fail. */
export default function setup(): void {
  spawnSync(process.execPath, [fileURLToPath(new URL("../scripts/build.mjs", import.meta.url))], { stdio: "inherit" });
}
