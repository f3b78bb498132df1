import { Option } from "commander";
import { Misuse } from "./exit.ts";
import { quote } from "./quote.ts";

/** An option that takes one of a few words. */
export const choice = (flags: string, description: string, words: readonly string[]): Option =>
  new Option(flags, description).argParser((word: string) => {
    if (!words.includes(word)) throw new Misuse(`${flags.split(" ")[0]} may be ${listed(words)}, not ${quote(word)}`);
    return word;
  });

/** `--set width=48`, any number of times: the values by name, the last one of a name counts. */
export const settings = (): Option =>
  new Option("--set <name=value>", "give one of the plan's sizes another value (may be repeated)").argParser(
    (text: string, before: ReadonlyMap<string, string> | undefined) => {
      const at = text.indexOf("=");
      const [name, value] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
      if (at < 0 || name === "" || value === "")
        throw new Misuse(`--set needs a name and a value, such as --set width=48, not ${quote(text)}`);
      return new Map([...(before ?? []), [name, value]]);
    },
  );

/** "a, b or c" */
const listed = (words: readonly string[]): string => [words.slice(0, -1).join(", "), ...words.slice(-1)].join(" or ");
