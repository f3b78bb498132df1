import { Option } from "commander";
import { Misuse } from "./exit.ts";
import { quote } from "./quote.ts";

/** An option that takes one of a few words. */
export const choice = (flags: string, description: string, words: readonly string[]): Option =>
  new Option(flags, description).argParser((word: string) => {
    if (!words.includes(word)) throw new Misuse(`${flags.split(" ")[0]} may be ${listed(words)}, not ${quote(word)}`);
    return word;
  });

/** An option that takes a name and a value, any number of times: the values by name, the last one of a name counts. */
const pairs = (flag: string, example: string, description: string): Option =>
  new Option(`${flag} <name=value>`, `${description} (may be repeated)`).argParser(
    (text: string, before: ReadonlyMap<string, string> | undefined) => {
      const at = text.indexOf("=");
      const [name, value] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
      if (at < 0 || name === "" || value === "")
        throw new Misuse(`${flag} needs a name and a value, such as ${flag} ${example}, not ${quote(text)}`);
      return new Map([...(before ?? []), [name, value]]);
    },
  );

/** `--set width=48` */
export const settings = (): Option => pairs("--set", "width=48", "give one of the plan's sizes another value");

/** `--choose wood=oak` */
export const choices = (): Option => pairs("--choose", "wood=oak", "choose an option of one of the plan's choices");

/** `--measured ply=0.703` */
export const thicknesses = (): Option =>
  pairs("--measured", "ply=0.703", "the thickness that a stock of yours measures, or 7.03 for 10 of a stack");

/** `--workshop shed.yaml` */
export const workshopFile = (): Option =>
  new Option("--workshop <file>", "what there is in the workshop (workshop.yaml beside the plan, if it is there)");
/** `--no-workshop` */
export const noWorkshop = (): Option => new Option("--no-workshop", "leave a workshop.yaml beside the plan alone");

/** "a, b or c" */
const listed = (words: readonly string[]): string => [words.slice(0, -1).join(", "), ...words.slice(-1)].join(" or ");
