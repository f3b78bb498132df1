import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const sizeNotPositive = rule<{
  /** The size, as it was written. */
  readonly said: string;
  /** Whether it is the size of an opening, which may also take what is left. */
  readonly opening?: boolean;
}>({
  name: "size-not-positive",
  severity: "error",
  message: (a) => `this size is ${a.said}: nothing can be made of that`,
  label: () => "not above zero",
  help: (a) => (a.opening ? "write a measure above zero, or `the rest`" : "write a measure above zero"),
  explain:
    "How wide, high, deep, long or thick something is, is above zero. Where something lies may be 0, or less where it reaches beyond the outside.",
  wrong: stepExample(["outside: { width: 24", "outside: { width: 0"]),
  right: stepExample(),
  basis: "the language",
});
