import { CommanderError } from "commander";
import { EXIT, type Exit, Misuse } from "./exit.ts";
import { say } from "./say.ts";
import type { World } from "./world.ts";

/** Tells what ended a command before its time, and gives the exit status for it. */
export async function failure(thrown: unknown, world: World): Promise<Exit> {
  if (thrown instanceof CommanderError) {
    await say(world.err, `${thrown.message}\n"boardwright --help" shows what there is.\n`);
    return EXIT.misuse;
  }
  if (thrown instanceof Misuse) {
    await say(world.err, `error: ${thrown.message}\n`);
    return EXIT.misuse;
  }
  await say(world.err, fault(thrown, world));
  return EXIT.fault;
}

function fault(thrown: unknown, world: World): string {
  const [what, where] =
    thrown instanceof Error ? [String(thrown), thrown.stack] : [`thrown: ${String(thrown)}`, undefined];
  const shown = world.env("DEBUG") === undefined ? "With DEBUG=1 in the environment it shows where." : (where ?? "");
  return [
    "error: this is a fault in boardwright, not in your plan.",
    `  ${what.split("\n", 1)[0]}`,
    `Please report it together with the plan. This is boardwright ${world.version}. ${shown}`,
    "",
  ].join("\n");
}
