import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const placeMissing = rule<{
  readonly name: string;
  readonly missing: readonly {
    readonly direction: string;
    readonly low: string;
    readonly high: string;
    readonly known: readonly string[];
  }[];
}>({
  name: "place-missing",
  severity: "error",
  message: (a) =>
    a.missing
      .map(
        (m) =>
          `${a.name}: ${m.direction} ${m.known.length === 0 ? "nothing is known" : `only ${m.known.join(" and ")} is known`}`,
      )
      .join("; "),
  help: (a) =>
    a.missing
      .map((m) =>
        m.known.length === 0
          ? `say two of ${m.low}, ${m.high} and ${m.direction}`
          : `say ${m.low}, ${m.high} or ${m.direction} too`,
      )
      .join("; "),
  explain: `In each direction (\`across\`, \`deep\`, \`up\`) a part needs two of three: where it begins, where it ends, how big it is. Its stock gives the thickness, and the width of stock with a fixed width; \`as:\` says which way the board lies.`,
  wrong: stepExample(["right: long, front: 0, top: 12 }", "front: 0, top: 12 }"]),
  right: stepExample(),
  basis: "the language",
});
