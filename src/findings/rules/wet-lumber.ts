import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const bought = (moisture: string): string => stepExample(["wood: spruce }", `wood: spruce, moisture: ${moisture} }`]);

export const wetLumber = rule<{
  readonly stock: string;
  readonly moisture: number;
  readonly dampest: number;
  readonly driest: number;
  readonly place: string;
  /** Of the widest part. */
  readonly width: string;
  readonly shrinks: string;
}>({
  name: "wet-lumber",
  severity: "warning",
  message: (a) =>
    `${a.stock} has ${a.moisture} % moisture when it is bought, and comes down to ${a.driest} % in ${a.place}`,
  label: (a) => `will shrink; ${a.dampest} % would do`,
  why: (a) => `a part ${a.width} wide will be ${a.shrinks} narrower, and its joints open`,
  help: (a) => `buy wood dried to ${a.dampest} % or less, or let it lie where it will stand until a meter says so`,
  explain: `Construction lumber is sold with up to 19 % moisture, and dries for weeks indoors. What is built of it shrinks, twists and works its joints
loose. Wood that is no wetter than in the dampest season of its place only moves with the seasons.`,
  wrong: bought("19 %"),
  right: bought("9 %"),
  basis: "PS 20: dry lumber has 19 % at most; Wood Handbook FPL-GTR-190, Table 13-2",
});
