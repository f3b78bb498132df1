import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const placesDisagree = rule<{
  readonly name: string;
  readonly direction: string;
  readonly first: { readonly key: string; readonly value: string };
  readonly second: { readonly key: string; readonly value: string };
  readonly difference: string;
  /** How wide its boards are, where the other statement disagrees with that, and whether it is to be narrower. */
  readonly board: { readonly wide: string; readonly narrower: boolean } | null;
}>({
  name: "places-disagree",
  severity: "error",
  message: (a) =>
    `${a.name}: ${a.first.key} gives ${a.first.value} ${a.direction}, ${a.second.key} gives ${a.second.value}: ${a.difference} apart`,
  label: () => "does not fit the rest",
  help: ({ board }) => {
    if (board === null) return "leave one of the two statements out, or make them agree";
    const wide = board.wide.replace(/ (?:in|mm)$/, "");
    return board.narrower
      ? `give it the width of its boards, ${board.wide}; or, where it is ripped from them, write \`widths: ${wide} to ${wide}\` in its stock: then its parts may have any width up to that`
      : `give it the width of its boards, ${board.wide}; or glue it up: say how many \`boards\`, or make it of a stock with wider \`widths\``;
  },
  explain: `In each direction a part needs two of three: where it begins, where it ends, how big it is. A third statement may repeat what follows from the others, but must not contradict it.`,
  wrong: stepExample(["right: long, front: 0, top: 12 }", "right: long, across: 20, front: 0, top: 12 }"]),
  right: stepExample(),
  basis: "the language",
});
