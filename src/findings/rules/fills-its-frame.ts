import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";
import { topExample } from "../top-example.ts";

const RIM = [
  "  front-rim: { made of: rims, as: on edge, grain: across, left: 3/4, right: 29 1/4, front: 0, bottom: 0, top: outside.top }",
  "  back-rim: { mirror of: front-rim, about: deep }",
  "  left-rim: { made of: rims, as: on edge, grain: deep, left: 0, front: 0, back: outside.back, bottom: 0, top: outside.top }",
  "  right-rim: { mirror of: left-rim, about: across }",
].join("\n");
const RIM_JOINTS = [
  "  - { join: [front-rim, back-rim], to: [left-rim, right-rim], with: dowels }",
  "  - { join: [front-rim, back-rim], to: [left-batten, right-batten], with: screws }",
].join("\n");
const framed = (gap: string): string =>
  topExample(
    ["stock:", "stock:\n  rims: { wood: white oak, sold as: 4/4, planed to: 3/4 }"],
    [
      "left: 0, right: 30, front: 0, back: 16, top",
      `left: 3/4, right: 29 1/4, front: 3/4, back: outside.back - 3/4 - ${gap}, top`,
    ],
    ["  left-batten:", `${RIM}\n  left-batten:`],
    ["left: 2, front: 1, back: 15", "left: 4, front: 3/4, back: outside.back - 3/4"],
    ["joints:", `joints:\n${RIM_JOINTS}`],
  );

const one = ({ parts }: { readonly parts: readonly string[] }): boolean => parts.length === 1;

export const fillsItsFrame = rule<{
  readonly parts: readonly string[];
  readonly between: readonly [string, string];
  /** It lies against one of them only: nails hold it to the other. */
  readonly nailed: boolean;
  readonly swells: string;
  readonly from: number;
  readonly until: number;
  readonly place: string;
  readonly limit: string;
  readonly room: string;
}>({
  name: "fills-its-frame",
  severity: "warning",
  message: ({ parts, between: [one, other], nailed }) =>
    nailed
      ? `${nameSome(parts)} lies against \`${one}\` and is nailed to \`${other}\` beyond`
      : `${nameSome(parts)} ${parts.length === 1 ? "fills" : "fill"} the room between \`${one}\` and \`${other}\``,
  label: () => "pushes these apart when it swells",
  why: (a) =>
    `from ${a.from} % moisture to ${a.until} % in ${a.place} ${one(a) ? "it grows" : "they grow"} ${a.swells} wider than there is room, and more than ${a.limit} is too much`,
  help: (a) =>
    a.nailed
      ? `leave ${a.room} between it and what it lies against, or nail it near that only`
      : one(a)
        ? `make it ${a.room} narrower than the room, or let it into grooves that are deeper than its tongues by as much`
        : `leave gaps of ${a.room} in all, or let the boards lap over each other`,
  explain: `Solid wood grows wider in damp air. A board that fills the room between two parts that a frame holds apart presses against them then, with enough
force to open mitres and shear dowels. How much it swells is its width × the published coefficient of the wood × the change of moisture from the day of building
(\`moisture\`, or the driest season of its \`place\`) to the dampest season, less what the frame grows with it. A board that lies against something at one edge and is nailed beyond pushes in the same way.
Leave room beside it, or let it into grooves.`,
  wrong: framed("0"),
  right: framed("1/4"),
  basis: "Wood Handbook FPL-GTR-190, Table 13-5 and Eq. 13-2; the limit of 1/16 in is common practice, no source",
});
