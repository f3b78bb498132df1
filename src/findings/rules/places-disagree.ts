import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

/** Boards of a stock that has one width are not ripped. */
const STOCK = "the stock's width";

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
  help: (a) => {
    const [board, said] = a.first.key === STOCK ? [a.first, a.second] : [a.second, a.first];
    if (board.key !== STOCK) return "leave one of the two statements out, or make them agree";
    const wide = board.value.replace(/ (?:in|mm)$/, "");
    return `give it the width of its boards, ${board.value}; where it is ripped narrower, leave the width out of \`measures\` and write \`widths: ${wide} to ${wide}\` in its stock, and its parts may have any width up to that; where it is wider, make it of a stock for glued-up panels (\`widths: … to …\`) instead of ${said.key}`;
  },
  explain: `In each direction a part needs two of three: where it begins, where it ends, how big it is. A third statement may repeat what follows from the others, but must not contradict it.`,
  wrong: stepExample(["right: long, front: 0, top: 12 }", "right: long, across: 20, front: 0, top: 12 }"]),
  right: stepExample(),
  basis: "the language",
});
