// npm run example: bundles the program and compiles an example, as a first look at what it does.
import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { root } from "./bundle.mjs";

const run = (...args) => {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
};

mkdirSync(join(root, "out"), { recursive: true });
run("scripts/build.mjs");
run("bin/boardwright.js", "build", "examples/boot-bench.yaml", "-o", "out/boot-bench.pdf");
