import { failure } from "./failure.ts";
import { main } from "./main.ts";
import { processWorld } from "./process-world.ts";

/** Runs the program as this process. `root` is the folder of the package. */
export async function start(root: URL): Promise<void> {
  const world = processWorld(root);
  const fail = async (thrown: unknown) => process.exit(await failure(thrown, world));
  process.on("uncaughtException", fail);
  process.on("unhandledRejection", fail);
  process.exitCode = await main(process.argv.slice(2), world);
}
