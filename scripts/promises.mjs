// npm run promises -- [--count 200] [--seed N] [--only NAME]: copies of every example at random sizes, options and thicknesses, audited.
import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";

const { values } = parseArgs({
  options: { count: { type: "string", default: "200" }, seed: { type: "string" }, only: { type: "string" } },
});
const { status } = spawnSync("npx", ["vitest", "run", "tests/examples/every-copy.test.ts", "-t", "copies at random"], {
  stdio: "inherit",
  env: {
    ...process.env,
    PROMISES: values.count,
    ...(values.seed && { PROMISES_SEED: values.seed }),
    ...(values.only && { PROMISES_OF: values.only }),
  },
});
process.exitCode = status ?? 1;
