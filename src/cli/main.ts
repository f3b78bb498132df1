import { type Command, CommanderError } from "commander";
import { commands } from "./commands.ts";
import { EXIT, type Exit } from "./exit.ts";
import { failure } from "./failure.ts";
import { say } from "./say.ts";
import type { World } from "./world.ts";

/** Runs one command line (without the program's name) and says how it ended. Never throws. */
export async function main(args: readonly string[], world: World): Promise<Exit> {
  let exit: Exit = EXIT.done;
  const program = commands(world, async (command) => {
    exit = await command;
  });
  const help = collectHelp(program, world);
  try {
    await program.parseAsync(args, { from: "user" });
    return exit;
  } catch (thrown) {
    if (!(thrown instanceof CommanderError) || help.length === 0) return failure(thrown, world);
    await say(thrown.exitCode === 0 ? world.out : world.err, help.join(""));
    return thrown.exitCode === 0 ? EXIT.done : EXIT.misuse;
  }
}

/** Makes the commands throw instead of ending the process, and gather their help instead of printing it. */
function collectHelp(program: Command, world: World): string[] {
  const help: string[] = [];
  const gather = (text: string) => {
    help.push(text);
  };
  for (const command of [program, ...program.commands])
    command.exitOverride().configureOutput({
      writeOut: gather,
      writeErr: gather,
      outputError: () => {},
      getOutHelpWidth: () => world.out.columns,
      getErrHelpWidth: () => world.err.columns,
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    });
  return help;
}
