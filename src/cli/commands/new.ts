import { EXIT, type Exit } from "../exit.ts";
import { say } from "../say.ts";
import { STARTER } from "../starter.ts";
import type { World } from "../world.ts";

/** `new`: a first plan to change, in a file that is not there yet or on standard output. */
export async function begin(path: string | undefined, world: World): Promise<Exit> {
  if (path === undefined || path === "-") {
    await world.out.write(STARTER);
    return EXIT.done;
  }
  world.write([{ path, bytes: new TextEncoder().encode(STARTER) }], { sources: [], replace: false });
  await say(
    world.err,
    `${path} is written. "boardwright build ${path}" makes the plan; change a size and run it again.\n`,
  );
  return EXIT.done;
}
