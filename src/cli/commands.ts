import { Command } from "commander";
import { wrap } from "../findings/print/width.ts";
import type { Exit } from "./exit.ts";
import { choice, choices, noWorkshop, settings, thicknesses, workshopFile } from "./options.ts";
import type { World } from "./world.ts";

const CLOSING = [
  'A plan named "-" is read from standard input; an output named "-" goes to standard output.',
  "Exit status: 0 done, 1 the plan has errors, 2 wrong use or an unusable file, 70 a fault of the program.",
];

/** The command line: what can be asked for. Each command's code is loaded when it is asked for. */
export function commands(world: World, ends: (command: Promise<Exit>) => Promise<void>): Command {
  const program = new Command("boardwright")
    .description("Turns one YAML file that describes a piece of furniture into a building plan to print.")
    .version(world.version, "-V, --version", "print the version")
    .helpOption("-h, --help", "print this help")
    .helpCommand("help [command]", "print the help of a command")
    .option("--no-color", "print without colour (as with NO_COLOR in the environment)")
    .configureHelp({ minWidthToWrap: 10 })
    .addHelpText("after", `\n${CLOSING.flatMap((line) => wrap(line, world.out.columns)).join("\n")}`);
  program
    .command("build")
    .description("check a plan and write it as a PDF")
    .argument("<plan>", "the YAML file")
    .option("-o, --output <file>", "the PDF to write (the plan's name with .pdf, in this folder)")
    .option("--record <file>", "also write the solved piece as JSON")
    .option("--pictures <folder>", "also write every drawing as SVG into a folder")
    .option("--tables <folder>", "also write every table as CSV into a folder")
    .option("--article <folder>", "also write the steps as Markdown with pictures, for a web page")
    .option("--author", "the author's copy: photographs to take, and all checks with their sources")
    .option("--for <name>", "print on every page whose copy it is")
    .option("--labels <file>", "also write stick-on labels for the parts: 30 on letter, 24 on a4")
    .addOption(choice("--paper <size>", "letter or a4 (letter for a plan in inches, else a4)", ["letter", "a4"]))
    .addOption(settings())
    .addOption(choices())
    .addOption(thicknesses())
    .addOption(workshopFile())
    .addOption(noWorkshop())
    .addOption(format())
    .action(async (plan, _, command) =>
      ends((await import("./commands/build.ts")).build(plan, command.optsWithGlobals(), world)),
    );
  program
    .command("check")
    .description("check a plan and say what was found, without writing anything")
    .argument("<plan>", "the YAML file")
    .addOption(settings())
    .addOption(choices())
    .addOption(thicknesses())
    .addOption(workshopFile())
    .addOption(noWorkshop())
    .option(
      "--jumps",
      "also say where counts, lengths and purchases change over the ranges of sizes and stock (takes longer)",
    )
    .addOption(format())
    .action(async (plan, _, command) =>
      ends((await import("./commands/check.ts")).check(plan, command.optsWithGlobals(), world)),
    );
  program
    .command("layout")
    .description("print how boards and sheets are cut, what is bought, and what is known of the count")
    .argument("<plan>", "the YAML file")
    .addOption(settings())
    .addOption(choices())
    .addOption(thicknesses())
    .addOption(workshopFile())
    .addOption(noWorkshop())
    .addOption(format())
    .action(async (plan, _, command) =>
      ends((await import("./commands/layout.ts")).layout(plan, command.optsWithGlobals(), world)),
    );
  program
    .command("expand")
    .description("print a plan with its choices made and its assemblies opened into parts and joints")
    .argument("<plan>", "the YAML file")
    .addOption(choices())
    .addOption(format())
    .action(async (plan, _, command) =>
      ends((await import("./commands/expand.ts")).expand(plan, command.optsWithGlobals(), world)),
    );
  program
    .command("explain")
    .description("explain a finding by its name, or all limits")
    .argument("[rule]", 'the name in brackets behind a finding, or "limits"; nothing lists all names')
    .action(async (rule) => ends((await import("./commands/explain.ts")).explain(rule, world)));
  program
    .command("schema")
    .description("print the JSON Schema of the plan language, for editors")
    .option("--record", "that of the JSON that --record writes")
    .option("--workshop", "that of workshop.yaml")
    .action(async (options) => ends((await import("./commands/schema.ts")).schema(options, world)));
  program
    .command("new")
    .description("begin a plan: a small bench with a comment at every line")
    .argument("[file]", "the YAML file to write (standard output)")
    .action(async (file) => ends((await import("./commands/new.ts")).begin(file, world)));
  return program;
}

const format = () =>
  choice("--format <kind>", "text, short (one line each) or json", ["text", "short", "json"]).default("text");
