// npm run bench:cutting -- [FILE.json] [--turn] [--effort quick|normal|thorough] [--json] [--data FOLDER]
// How few sheets and bars the layouts take, beside the bound, the best known, and plain shelves; and how long it takes (of the processor).
import { join } from "node:path";
import { parseArgs } from "node:util";
import { root } from "./bundle.mjs";
import { check, shelves } from "./cutting/check.mjs";
import { BARS, manyParts, nameOf, problemOf, read } from "./cutting/instances.mjs";
import { load } from "./load.mjs";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    turn: { type: "boolean", default: false },
    json: { type: "boolean", default: false },
    effort: { type: "string", default: "normal" },
    data: { type: "string", default: join(root, "../shared/reference/cutting") },
  },
});
const { effort, json } = values;
const { solve } = await load("src/solve/build/cutting/search/solve.ts");

function run(problem) {
  const start = process.cpuUsage();
  const found = solve(problem, effort);
  const { user, system } = process.cpuUsage(start);
  check(problem, found.packed);
  return {
    bins: found.packed.length,
    cost: found.cost,
    bound: found.costBound,
    proven: found.cost === found.costBound,
    seconds: (user + system) / 1e6,
  };
}

const sum = (list, of) => list.reduce((so, each) => so + of(each), 0);
const row = (...cells) =>
  console.log(cells.map((cell, i) => (i === 0 ? `${cell}`.padEnd(22) : `${cell}`.padStart(10))).join(""));

function results(instances, turn) {
  return instances.map((instance, index) => {
    const problem = problemOf(instance, turn);
    const best = turn
      ? instance.best_guillotine_turned
      : (instance.best_guillotine ?? instance.three_stage ?? instance.best_two_stage);
    const done = run(problem);
    return { name: nameOf(instance, index), group: instance.cl ?? "all", plain: shelves(problem), best, ...done };
  });
}

function table(title, list) {
  console.log(`\n${title}, effort ${effort}`);
  row("class", "shelves", "found", "bound", "best", "gap", "proven", "ms mean", "ms most");
  const line = (name, some) => {
    const [cost, best] = [sum(some, (r) => r.cost), sum(some, (r) => r.best ?? 0)];
    const known = some.every((r) => r.best !== undefined);
    const ms = some.map((r) => 1000 * r.seconds);
    row(
      name,
      sum(some, (r) => r.plain),
      cost,
      sum(some, (r) => r.bound),
      known ? best : "–",
      known ? `${((100 * (cost - best)) / best).toFixed(2)} %` : "–",
      `${some.filter((r) => r.proven).length}/${some.length}`,
      (sum(ms, (m) => m) / ms.length).toFixed(0),
      Math.max(...ms).toFixed(0),
    );
  };
  const groups = [...new Set(list.map((r) => r.group))];
  if (groups.length > 1)
    for (const group of groups)
      line(
        `class ${group}`,
        list.filter((r) => r.group === group),
      );
  line("all", list);
}

const [file] = positionals;
if (file !== undefined) {
  const instances = read(file);
  if (instances === null) {
    console.error(`${file}: there is no such file`);
    process.exit(1);
  }
  const list = results(instances, values.turn);
  if (json) {
    const total = {
      bins: sum(list, (r) => r.bins),
      bound: sum(list, (r) => r.bound),
      proven: list.filter((r) => r.proven).length,
      seconds: sum(list, (r) => r.seconds),
    };
    const told = list.map(({ name, bins, bound, proven, seconds }) => ({ name, bins, bound, proven, seconds }));
    console.log(JSON.stringify({ effort, turn: values.turn, ...total, instances: told }));
  } else table(values.turn ? "Parts may be turned" : "Parts may not be turned", list);
} else {
  const bins = read(join(values.data, "bins-250.json"));
  if (bins === null) console.log(`bins-250.json is missing in ${values.data}: the published instances are left out`);
  else {
    table("Parts may not be turned", results(bins, false));
    table("Parts may be turned", results(bins, true));
  }
  const small = read(join(values.data, "small-16.json"));
  if (small === null) console.log(`small-16.json is missing in ${values.data}`);
  else table("gcut and cgcut, not turned", results(small, false));

  console.log(`\nOne dimension, effort ${effort}`);
  row("", "parts", "found", "bound", "best", "ms");
  for (const { name, problem, best } of BARS) {
    const { bins: found, bound, seconds } = run(problem);
    row(name, problem.parts.length, found, bound, best, (1000 * seconds).toFixed(0));
  }
  console.log(`\nBy number of parts, sheets 1220 × 2440 mm, effort ${effort}`);
  row("parts", "shelves", "found", "bound", "ms");
  for (const count of [50, 100, 200, 300]) {
    const problem = manyParts(count);
    const { bins: found, bound, seconds } = run(problem);
    row(count, shelves(problem), found, bound, (1000 * seconds).toFixed(0));
  }
}
