// npm run bench:cutting -- [FILE.json] [--turn] [--effort quick|normal|thorough] [--json]: how good and how fast layouts are found.
import { existsSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { load } from "./load.mjs";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    turn: { type: "boolean", default: false },
    effort: { type: "string", default: "normal" },
    json: { type: "boolean", default: false },
  },
});
const file = positionals[0] ?? "../shared/reference/cutting/bins-250.json";
const { solve, shelves, lengths, furniture } = await load("scripts/cutting.ts");
/** Work of this process, so that others on the machine do not count. */
const clock = () => process.cpuUsage().user / 1e6;
const sum = (list, of) => list.reduce((so, each) => so + of(each), 0);
const row = (...cells) => console.log(cells.map((cell, i) => String(cell ?? "").padStart(i === 0 ? 14 : 10)).join(""));

if (!existsSync(file)) {
  console.error(`${file} is not there; name a file with instances`);
  process.exit(2);
}
const data = JSON.parse(readFileSync(file, "utf8"));
const results = data.instances.map((instance) => ({
  instance,
  best: (values.turn ? instance.best_guillotine_turned : instance.best_guillotine) ?? instance.three_stage ?? null,
  shelf: shelves(instance),
  ...solve(instance, values.turn, values.effort, clock),
}));
if (values.json) {
  const total = { bins: sum(results, (r) => r.bins), bound: sum(results, (r) => r.bound) };
  const instances = results.map(({ bins, bound, proven, seconds }) => ({ bins, bound, proven, seconds }));
  const proven = results.filter((r) => r.proven).length;
  console.log(JSON.stringify({ ...total, proven, seconds: sum(results, (r) => r.seconds), instances }));
  process.exit(0);
}

console.log(`${file}, parts ${values.turn ? "may" : "may not"} be turned, effort ${values.effort}`);
row("class", "bins", "bound", "best", "gap", "proven", "mean s", "shelves");
const line = (name, list) => {
  const best = list.every((r) => r.best !== null) ? sum(list, (r) => r.best) : null;
  const bins = sum(list, (r) => r.bins);
  row(
    name,
    bins,
    sum(list, (r) => r.bound),
    best ?? "-",
    best === null ? "-" : `${(((bins - best) / best) * 100).toFixed(2)} %`,
    list.filter((r) => r.proven).length,
    (sum(list, (r) => r.seconds) / list.length).toFixed(3),
    sum(list, (r) => r.shelf),
  );
};
const nameOf = ({ instance }) => instance.cl ?? instance.id ?? "";
for (const name of new Set(results.map(nameOf)))
  line(
    name,
    results.filter((r) => nameOf(r) === name),
  );
line("all", results);
if (positionals.length > 0) process.exit(0);

console.log("\nOne dimension");
row("list", "bins", "bound", "known", "s");
for (const instance of lengths()) {
  const { bins, bound, seconds } = solve(instance, false, values.effort, clock);
  row(instance.id, bins, bound, instance.best, seconds.toFixed(3));
}
console.log("\nHow time grows: parts of furniture on sheets of 1220 × 2440, which may be turned");
row("list", "bins", "bound", "s");
for (const count of [25, 50, 100, 200, 300]) {
  const instance = furniture(count);
  const { bins, bound, seconds } = solve(instance, true, values.effort, clock);
  row(instance.id, bins, bound, seconds.toFixed(3));
}
