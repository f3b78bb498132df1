import { readFileSync } from "node:fs";
import { Misuse } from "../../src/cli/exit.ts";
import type { Stream, World } from "../../src/cli/world.ts";

/** A World in memory: what the program printed and wrote can be looked at afterwards. */
export interface FakeWorld extends World {
  readonly files: Map<string, Uint8Array>;
  printed(): string;
  told(): string;
}

export interface FakeOptions {
  readonly files?: Readonly<Record<string, string>>;
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly terminal?: { readonly columns: number };
}

export function fakeWorld({ files = {}, input = "", env = {}, terminal }: FakeOptions = {}): FakeWorld {
  const held = new Map(Object.entries(files).map(([path, text]) => [path, bytesOf(text)]));
  const [out, err] = [fakeStream(terminal), fakeStream(terminal)];
  return {
    version: "1.2.3",
    out,
    err,
    files: held,
    printed: () => out.text(),
    told: () => err.text(),
    env: (name) => env[name] || undefined,
    read: async (path, limit) => {
      const bytes = path === "-" ? bytesOf(input) : held.get(path);
      if (bytes === undefined) throw new Misuse(`${path}: there is no such file or folder`);
      return bytes.subarray(0, limit);
    },
    asset: (path) => readFileSync(new URL(`../../assets/${path}`, import.meta.url)),
    folders: () => undefined,
    write: (outputs, { sources, replace }) => {
      for (const { path } of outputs)
        if (sources.includes(path) || (!replace && held.has(path))) throw new Misuse(`${path} may not be written`);
      for (const { path, bytes } of outputs) held.set(path, bytes);
    },
  };
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

function fakeStream(terminal: FakeOptions["terminal"]): Stream & { text(): string } {
  const chunks: Uint8Array[] = [];
  return {
    isTerminal: terminal !== undefined,
    columns: terminal?.columns ?? 80,
    write: async (data) => {
      chunks.push(typeof data === "string" ? bytesOf(data) : data);
    },
    text: () => Buffer.concat(chunks).toString("utf8"),
  };
}
