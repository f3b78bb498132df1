import type { Output, World } from "./world.ts";

/** The name that stands for standard input or output. */
export const STANDARD = "-";

/** Writes the files first, all or none and over none of the sources, and then what goes to standard output. */
export async function deliver(outputs: readonly Output[], sources: readonly string[], world: World): Promise<void> {
  const files = outputs.filter(({ path }) => path !== STANDARD);
  world.write(files, { sources: sources.filter((path) => path !== STANDARD), replace: true });
  for (const { path, bytes } of outputs) if (path === STANDARD) await world.out.write(bytes);
}
