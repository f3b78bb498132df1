import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const inOak = (planed: string): string =>
  stepExample([
    "{ sold as: 2x4, wood: spruce }",
    `{ sold as: 8/4, wood: white oak, planed to: { thick: ${planed}, wide: 3 1/2 } }`,
  ]);

export const littleLeftToPlane = rule<{
  readonly planed: Length;
  readonly rough: Length;
  readonly left: Length;
  readonly units: PrintOptions["units"];
}>({
  name: "little-left-to-plane",
  severity: "warning",
  message: (a) =>
    `boards ${sayLength(a.rough, { units: a.units })} rough, planed to ${sayLength(a.planed, { units: a.units })}, leave ${sayLength(a.left, { units: a.units })} for both faces`,
  label: () => "may not clean up",
  why: () => "a board that is cupped or twisted needs about 1/8 in (3 mm) to come out flat on both faces",
  help: () => "plane it thinner, or buy the next thickness",
  explain:
    "A rough board is never flat. About 1/8 in (3 mm) has to come off before both faces are; with less, some boards will keep saw marks or have to be bought again.",
  wrong: inOak("1 15/16"),
  right: inOak("1 3/4"),
  basis: "common practice, no source",
});
