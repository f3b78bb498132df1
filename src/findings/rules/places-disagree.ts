import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const placesDisagree = rule<{
  readonly name: string;
  readonly direction: string;
  readonly first: { readonly key: string; readonly value: string };
  readonly second: { readonly key: string; readonly value: string };
  readonly difference: string;
}>({
  name: "places-disagree",
  severity: "error",
  message: (a) =>
    `${a.name}: ${a.first.key} gives ${a.first.value} ${a.direction}, ${a.second.key} gives ${a.second.value}: ${a.difference} apart`,
  label: () => "does not fit the rest",
  help: () => "leave one of the two statements out, or make them agree",
  explain: `In each direction a part needs two of three: where it begins, where it ends, how big it is. A third statement may repeat what follows from the others, but must not contradict it.`,
  wrong: stepExample(["right: long, front: 0, top: 12 }", "right: long, across: 20, front: 0, top: 12 }"]),
  right: stepExample(),
  basis: "the language",
});
