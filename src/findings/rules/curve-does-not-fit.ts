import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

interface Arguments {
  readonly part: string;
  readonly shape: string;
  /** What is too large or too small: "the radius". */
  readonly measure: string;
  readonly is: string;
  /** Null: it has to be more than nothing. */
  readonly limit: { readonly atMost: boolean; readonly length: string } | null;
}

export const curveDoesNotFit = rule<Arguments>({
  name: "curve-does-not-fit",
  severity: "error",
  message: (a) => {
    const wanted = a.limit ? `${a.limit.atMost ? "at most" : "at least"} ${a.limit.length}` : "more than nothing";
    return `${a.measure} of the ${a.shape} in ${a.part} is ${a.is}, and has to be ${wanted}`;
  },
  help: (a) => (a.limit?.atMost ? "write a smaller measure" : "write a larger measure"),
  explain: `An arch rises by at most half its width: then it is half a circle. The radius of a corner takes at most half of the opening or panel that it rounds, and that of an edge at most the wood that is there. A slot is at least as long as it is wide, and every measure of a curve is more than nothing.`,
  wrong: stepExample(["front: 0, top: 12 }", "front: 0, top: 12, arch: { in: front, deep: 3, from: 10, to: 14 } }"]),
  right: stepExample(["front: 0, top: 12 }", "front: 0, top: 12, arch: { in: front, deep: 1, from: 4, to: 20 } }"]),
  basis: "geometry",
});
