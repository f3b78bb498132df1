import { chestWithoutAir } from "../../../findings/rules/chest-without-air.ts";
import { millimetres, toMillimetres } from "../../../units/length.ts";
import { indexOf } from "../../design/space.ts";
import type { Feature, Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Lid, lidsOf } from "./standing/lids.ts";
import { around } from "./standing/weight-and-feet.ts";

/** How large an opening is at least, and how many there are. Common practice, no source. */
const [LEAST, MANY] = [12, 2];
const OPEN: ReadonlySet<Feature["kind"]> = new Set(["cut-out", "arch"]);

/** A chest has air when its lid is shut. */
export const chestWithoutAirRule: Rule = (checked) =>
  lidsOf(checked).flatMap((lid): readonly Verdict[] => {
    const [first] = lid.parts;
    if (!first) return [];
    const openings = openingsOf(lid, checked);
    const check = {
      ...{ rule: "chest-without-air", subject: first.id, value: openings, limit: MANY, unit: "openings" },
      basis: "common practice, no source; scope: ASTM F834",
    };
    if (openings >= MANY) return [{ check: { ...check, verdict: "holds" } }];
    const least = checked.print(millimetres(LEAST));
    const finding = chestWithoutAir(first.at, { lid: first.id, openings, least, lines: linesFor(lid, checked) });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });

/** Openings in what stands on end but for the back; a gap all along one wall under the lid counts as two. */
function openingsOf({ case: parts, bounds }: Lid, { holes }: Checked): number {
  const back = around(parts.map(({ solid }) => solid)).high[1];
  const walls = parts.filter((part) => isWall(part) && !isBack(part, back));
  return walls.reduce((so, part) => {
    const bored = holes.filter(
      (hole) => hole.part === part.id && hole.through && hole.for === null && widest(hole.stages) >= LEAST,
    );
    const cut = part.features.filter(({ kind }) => OPEN.has(kind));
    const gap = bounds.low[2] - around([part.solid]).high[2];
    const tops = walls.map(({ solid }) => around([solid]).high[2]);
    const open = gap >= LEAST && around([part.solid]).high[2] >= Math.max(...tops) - LEAST ? MANY : 0;
    return so + bored.length + cut.length + open;
  }, 0);
}

/** A hole high in either side, as it is written: at the sides themselves, or at the assembly that makes both. */
function linesFor({ case: parts }: Lid, { design }: Checked): string {
  const sides = parts.filter((part) => part.axes.thickness === "across").toSorted((a, b) => tall(b) - tall(a));
  const [left, right] = [sides[0], sides[1]].toSorted((a, b) => (a && b ? middle(a) - middle(b) : 0));
  const inch = design.units === "inch";
  if (!left || !right || left === right) return `\`hole: { in: left, from front: ${inch ? "5" : "125"} … }\``;
  const hole = (face: "left" | "right") =>
    `hole: { in: ${face}, from front: ${inch ? "5" : "125"}, from top: ${inch ? "3" : "75"}, diameter: ${inch ? "1" : "25"} }`;
  const name = ({ id }: Part): string => id.split(".").at(-1) ?? id;
  // Parts that stand at one place in the source are made there by an assembly.
  if (left.at.start === right.at.start)
    return `for \`${left.id.split(".").slice(0, -1).join(".")}\` write \`its parts: { ${name(left)}: { ${hole("left")} }, ${name(right)}: { ${hole("right")} } }\``;
  return `write \`${hole("left")}\` for ${left.id}, and \`${hole("right")}\` for ${right.id}`;
}
const tall = ({ solid }: Part): number => around([solid]).high[2] - around([solid]).low[2];
const middle = ({ solid }: Part): number => around([solid]).high[0] + around([solid]).low[0];

const widest = (stages: Checked["holes"][number]["stages"]): number =>
  Math.min(...stages.map(({ diameter }) => toMillimetres(diameter)));
const isWall = (part: Part): boolean => indexOf(part.axes.thickness) !== 2;
const isBack = (part: Part, back: number): boolean =>
  indexOf(part.axes.thickness) === 1 && around([part.solid]).high[1] > back - LEAST;
