import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const noRoom = rule<{
  readonly name: string;
  readonly direction: string;
  readonly room: string;
  /** Whether an assembly makes it. */
  readonly made: boolean;
}>({
  name: "no-room",
  severity: "error",
  message: (a) => `${a.name} would be ${a.room} ${a.direction}`,
  help: (a) =>
    a.made
      ? "it has what is left between others: make the settings beside it smaller, or what it stands in larger"
      : "check the two positions, or the sizes they come from",
  explain: `The part ends where it begins, or before. The things that it lies between are too close to each other, or two positions are the wrong way round.`,
  wrong: stepExample(["left: 0, right: long, front", "left: 30, right: long, front"]),
  right: stepExample(),
  basis: "the language",
});
