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

const { pageTimes, phases } = await load("scripts/phases.ts");
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

const CABINET = "examples/overalls-chest.yaml";
const cabinet = { name: CABINET, bytes: readFileSync(join(root, CABINET)) };
const pages = [1, 2, 3].map(() => pageTimes(cabinet, () => performance.now()));
console.log(`\nEach kind of page, 3 rounds, ${CABINET} (${pages[0].parts} parts)`);
row("", "median ms");
for (const title of pages[0].times.keys()) row(title, median(pages.map(({ times }) => times.get(title))).toFixed(1));

/** Shelving in bays: parts beyond the case are shelves and dividers. */
const shelving = (bays, shelves) => ({
  name: "shelving.yaml",
  bytes: new TextEncoder().encode(`plan: 1
title: Shelving
units: inch
outside: { width: 90, depth: 10, height: 77 }
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32, good faces: 2 }
piece:
  case:
    kind: case
    made of: ply
    join: dado
    openings: { across: [${Array(bays).fill(`{ shelves: ${shelves} }`).join(", ")}] }
`),
});
const sizes = [shelving(3, 4), shelving(9, 9)];
const grown = [];
for (const each of sizes)
  grown.push({ ...(await phases(each, fonts, () => performance.now())), parts: pageTimes(each, () => 0).parts });
const [few, many] = grown;
console.log("\nHow it grows with the number of parts");
row("ms", `${few.parts} parts`, `${many.parts} parts`, "times");
for (const name of Object.keys(few).filter((key) => key !== "parts"))
  row(name, few[name].toFixed(0), many[name].toFixed(0), (many[name] / few[name]).toFixed(1));
