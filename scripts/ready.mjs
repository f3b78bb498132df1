// Makes a fresh clone ready: installs the packages of the lock file when they are missing or differ from it.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

function packages(lockFile) {
  try {
    return JSON.parse(readFileSync(new URL(`../${lockFile}`, import.meta.url), "utf8")).packages;
  } catch {
    return {};
  }
}

const wanted = Object.entries(packages("package-lock.json")).filter(([path, entry]) => path !== "" && !entry.optional);
const installed = packages("node_modules/.package-lock.json");
const missing = wanted.filter(([path, entry]) => installed[path]?.version !== entry.version);

if (missing.length > 0) {
  console.log(`Installing ${missing.length} packages that are missing or out of date (npm ci) ...`);
  const npm = process.env.npm_execpath;
  const [command, args] = npm ? [process.execPath, [npm, "ci"]] : ["npm", ["ci"]];
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: "inherit" });
  if (status !== 0) {
    console.error(`npm ci did not succeed${error ? `: ${error.message}` : ""}. Is the package registry reachable?`);
    process.exit(1);
  }
}
