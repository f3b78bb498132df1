import { closeSync, mkdirSync, openSync, readFileSync, readSync } from "node:fs";
import type { WriteStream } from "node:tty";
import manifest from "../../package.json" with { type: "json" };
import { asMisuse, codeOf, onFile } from "./reason.ts";
import type { Stream, World } from "./world.ts";
import { writeFiles } from "./write-files.ts";

/** The World of this process. `root` is the folder of the package, in which `assets` lies. */
export function processWorld(root: URL): World {
  return {
    version: manifest.version,
    out: stream(process.stdout),
    err: stream(process.stderr),
    env: (name) => process.env[name] || undefined,
    read: async (path, limit) => (path === "-" ? readInput(limit) : onFile(path, () => readFile(path, limit))),
    asset: (path) => readFileSync(new URL(`assets/${path}`, root)),
    folders: (paths) => {
      for (const path of paths) onFile(path, () => mkdirSync(path, { recursive: true }));
    },
    write: writeFiles,
  };
}

/** Whoever reads may stop reading, as `head` does: that is no fault, and the exit status stays what it would have been. */
function stream(to: WriteStream): Stream {
  let open = true;
  to.on("error", () => {
    open = false;
  });
  return {
    isTerminal: to.isTTY === true,
    columns: to.columns || 80,
    write: (data) =>
      new Promise((resolve, reject) => {
        if (!open) resolve();
        else
          to.write(data, (error) =>
            error && codeOf(error) !== "EPIPE" ? reject(asMisuse("output", error)) : resolve(),
          );
      }),
  };
}

/** Never the whole of a file that is too big: a limit is checked by the parser, which says so with its number. */
function readFile(path: string, limit: number): Uint8Array {
  const file = openSync(path, "r");
  try {
    const buffer = Buffer.alloc(limit);
    let length = 0;
    for (let more = -1; more !== 0 && length < limit; length += more)
      more = readSync(file, buffer, length, limit - length, null);
    return buffer.subarray(0, length);
  } finally {
    closeSync(file);
  }
}

async function readInput(limit: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of process.stdin) {
    chunks.push(chunk);
    length += chunk.length;
    if (length >= limit) break;
  }
  return Buffer.concat(chunks).subarray(0, limit);
}
