import type { Metafile } from "esbuild";

export interface Loaded {
  readonly files: readonly string[];
  /** Without Node's own. */
  readonly packages: readonly string[];
}

/** Everything that Node loads before the first line of a source file runs: its chunk of the bundle and all that this imports. */
export function loadedWith({ outputs }: Metafile, source: string): Loaded {
  const first = Object.entries(outputs).find(([, output]) => output.entryPoint === source)?.[0];
  if (first === undefined) throw new Error(`${source} has no chunk of its own`);
  const [chunks, packages] = [new Set<string>([first]), new Set<string>()];
  for (const chunk of chunks)
    for (const { path, kind, external } of outputs[chunk]?.imports ?? []) {
      if (kind !== "import-statement") continue;
      if (!external) chunks.add(path);
      else if (!path.startsWith("node:")) packages.add(path);
    }
  const files = [...chunks].flatMap((chunk) => Object.keys(outputs[chunk]?.inputs ?? {}));
  return { files: files.sort(), packages: [...packages].sort() };
}
