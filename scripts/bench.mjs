// npm run bench: how long the program takes as a whole process, beside a bare Node, and where the time goes inside one.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { root } from "./bundle.mjs";
import { load } from "./load.mjs";

const ROUNDS = Number(process.argv[2] ?? 15);
const PLAN = "examples/boot-bench.yaml";
const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)];
const row = (name, ...cells) => console.log(name.padEnd(24), ...cells.map((cell) => cell.padStart(10)));

function timed(args) {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root });
  if (status !== 0) throw new Error(`${args.join(" ")} ended with ${status}: ${stderr}`);
  return performance.now() - start;
}

const program = (...args) => ["bin/boardwright.js", ...args];
const commands = [
  ["node -e ''", ["-e", ""]],
  ["boardwright --version", program("--version")],
  ["boardwright check", program("check", PLAN)],
  ["boardwright build", program("build", PLAN, "-o", "-")],
].map(([name, args]) => ({ name, args, times: [] }));

// In turns, so that a busy moment of the machine meets all of them.
for (let round = 0; round < ROUNDS; round += 1) for (const command of commands) command.times.push(timed(command.args));

console.log(`Whole process, ${ROUNDS} rounds, Node ${process.version}, ${PLAN}`);
row("", "median ms", "least ms", "x node");
const bare = median(commands[0].times);
for (const { name, times } of commands)
  row(name, median(times).toFixed(0), Math.min(...times).toFixed(0), (median(times) / bare).toFixed(2));

const { phases } = await load("scripts/phases.ts");
const fonts = Object.fromEntries(
  ["regular", "bold", "italic"].map((font) => [font, readFileSync(join(root, `assets/fonts/${font}.ttf`))]),
);
const source = { name: PLAN, bytes: readFileSync(join(root, PLAN)) };
const runs = [];
for (let round = 0; round < ROUNDS; round += 1) runs.push(await phases(source, fonts, () => performance.now()));

console.log(`\nInside one process, ${ROUNDS} rounds`);
row("", "first ms", "median ms");
for (const name of Object.keys(runs[0]))
  row(name, runs[0][name].toFixed(1), median(runs.map((run) => run[name])).toFixed(1));
