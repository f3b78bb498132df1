import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const CUPS = ["hinges: hinge", "hinges: { hardware: cup, with: cup hinges }"] as const;

export const doorTooThick = rule<{
  readonly door: string;
  readonly thick: string;
  readonly low: string;
  readonly high: string;
  readonly thin: boolean;
  /** How thick the slab under applied strips is; null where there are none. */
  readonly strips: string | null;
}>({
  name: "door-too-thick",
  severity: "error",
  message: (a) =>
    `${a.door} is ${a.thick} thick${a.strips ? `, strips included (${a.strips} without)` : ""}; its hinges take doors of ${a.low} to ${a.high}`,
  label: (a) => (a.thin ? "too thin for its hinges" : "too thick for its hinges"),
  help: (a) =>
    a.thin
      ? `make it ${a.low} thick or more, or take hinges for thin doors (door thickness: …)`
      : `make ${a.strips ? "slab and strips together" : "it"} no thicker than ${a.high}, or take hinges for thick doors (door thickness: …)`,
  explain: `A cup hinge swings its door round a corner that it takes to be near. The whole leaf counts: strips that are glued on in front make a door
thicker, and its edge strikes what it hangs on. Of a hinge that you have, write the range that its box gives: \`door thickness: 16 to 26\`.`,
  wrong: doorExample(CUPS, ["    made of: leaf\n", "    made of: leaf\n    strips: { made of: strip }\n"]),
  right: doorExample(CUPS),
  basis: "the hinge's own measure",
});
