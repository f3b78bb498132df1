import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The project's folder. */
export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly input?: string | Uint8Array;
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs the bundled program as its own process, with an environment that is the same everywhere. */
export function program(args: readonly string[], { input = "", cwd = ROOT, env = {} }: RunOptions = {}): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`${ROOT}/bin/boardwright.js`, ...args], {
    input,
    cwd,
    env: { PATH: process.env.PATH ?? "", ...env },
    timeout: 60_000,
    maxBuffer: 64 * 1024 * 1024,
  });
  return { exit: status, out: stdout.toString("utf8"), err: stderr.toString("utf8") };
}
