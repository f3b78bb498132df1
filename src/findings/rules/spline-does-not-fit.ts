import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const splineDoesNotFit = rule<{
  readonly join: string;
  readonly to: string;
  readonly spline: string;
  readonly room: string;
}>({
  name: "spline-does-not-fit",
  severity: "error",
  message: (a) => `what joins ${a.join} and ${a.to} measures ${a.spline}, more than the ${a.room} there have room for`,
  help: () => "make it thinner or narrower, or write fewer",
  explain: `A spline, key or biscuit lies in slots in both parts. It may be half as thick as the wood at most, must not come out on the other side, and several of them need wood between them.`,
  wrong: stepExample(
    ["bottom: 0, under: tread", "bottom: 0, top: 12"],
    ["with: screws", "with: splined mitre, spline: { thick: 2 }"],
  ),
  right: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: splined mitre"]),
  basis: "common practice, no source",
});
