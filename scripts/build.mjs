// npm run build: bundles the program into dist/, from where bin/boardwright.js starts it.
import { renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { bundle, root } from "./bundle.mjs";

const [fresh, dist] = [join(root, `dist.${process.pid}`), join(root, "dist")];
try {
  await bundle({ boardwright: "src/cli/start.ts" }, fresh);
  rmSync(dist, { recursive: true, force: true });
  renameSync(fresh, dist);
} catch {
  // An old bundle that looks like the new one would be worse than none. esbuild has said what is wrong.
  for (const folder of [fresh, dist]) rmSync(folder, { recursive: true, force: true });
  process.exitCode = 1;
}
