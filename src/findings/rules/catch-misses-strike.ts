import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const catchMissesStrike = rule<{
  /** What the catch is fixed to. */
  readonly on: string;
  readonly door: string;
  /** Null where a little of it lies before its strike. */
  readonly apart: string | null;
}>({
  name: "catch-misses-strike",
  severity: "warning",
  message: (a) =>
    a.apart === null
      ? `the catch on ${a.on} meets less than half of its strike on ${a.door}`
      : `the catch on ${a.on} passes its strike on ${a.door} by ${a.apart}: it cannot hold it`,
  label: () => "does not meet its strike",
  help: (a) =>
    `fix it to a part that lies beside the edge of ${a.door} (to: …), such as a strip of wood under ${a.on} that comes down to the door`,
  explain: `A catch holds a door by a plate, its strike, that comes before it when the door is shut. The strike stays on the door; the catch lies on the part that it is
fixed to. Behind the rail of a frame that part may lie further from the edge of the door than the catch is high: then the two pass each other.`,
  wrong: doorExample(["    pull: knob\n", "    pull: knob\n    gap: 1 1/2\n"]),
  right: doorExample(),
  basis: "geometry; how much of the two has to meet is common practice, no source",
});
