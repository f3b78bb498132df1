import { shelfSags } from "../../../findings/rules/shelf-sags.ts";
import { millimetres } from "../../../units/length.ts";
import { indexOf } from "../../design/space.ts";
import type { Part, Stock } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { footing } from "./standing/weight-and-feet.ts";
import { bodyOf } from "./wood/body.ts";
import { loadOn } from "./wood/load.ts";
import { longerSpan, thickerShelf, withEdge } from "./wood/remedies.ts";
import { isFlat, type Shelf, sagUnder, shelfOf } from "./wood/shelf.ts";
import { SLACK } from "./wood/span.ts";

/** What is seen: 0.02 in for each foot of span. Common practice, no source. */
const VISIBLE = 0.02 / 12;
/** What wood gives way in years, as a share of the first sag: European MDF association, section 11 (MDF); retailer's note (wood). */
const CREEP = 1.5;

/** Boards that lie flat and carry something sag no further than is seen. */
export const shelfSagsRule: Rule = (checked) => {
  const { design, motions } = checked;
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  // Nobody sees how the bottom of a drawer hangs.
  const hidden = new Set(motions.filter(({ kind }) => kind === "slide").flatMap(({ moves }) => moves));
  return design.parts.flatMap((part) => {
    const stock = stocks.get(part.stock);
    return stock && isFlat(part) && !hidden.has(part.id) && !isCovered(part, checked) && !liesOnFloor(part, checked)
      ? judge(part, stock, checked)
      : [];
  });
};

function judge(part: Part, stock: Stock, { design, print }: Checked): readonly Verdict[] {
  const said = part.carries ?? design.carries;
  if (said === undefined) return [];
  const sides = [bodyOf(part, indexOf(part.axes.length)), bodyOf(part, indexOf(part.axes.width))].map(
    ([a, b]) => b - a,
  );
  const load = loadOn(said, Math.max(...sides), Math.min(...sides), design.units === "mm");
  const shelf = load && shelfOf(part, stock, design);
  if (!load || !shelf) return [];
  const sagOf = (other: Shelf, force = load.force): number => CREEP * sagUnder(force, other);
  const sag = sagOf(shelf);
  const limit = VISIBLE * shelf.reach;
  const check = {
    rule: "shelf-sags",
    subject: part.id,
    value: sag,
    limit,
    unit: "mm",
    basis: `5 w L⁴ / (384 E I), half as much again for creep; load: ${load.basis}; stiffness: ${stock.stiffness?.basis}${shelf.section.length > 1 ? ", with what is glued along it" : ""}; limit: common practice, no source`,
  };
  if (sag <= limit) return [{ check: { ...check, verdict: "holds" } }];
  const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
  const finding = shelfSags(part.at, {
    part: part.id,
    sag: tell(sag) === tell(limit) ? `a little more than ${tell(limit)}` : tell(sag),
    span: tell(shelf.reach),
    limit: tell(limit),
    load: load.words,
    remedies: [
      ...thickerShelf(shelf, sag / limit, design.units, print),
      ...longerSpan(
        shelf,
        (other) => sagOf(other, "kilograms" in said ? load.force : (load.force * other.long) / shelf.long),
        VISIBLE,
        design.units,
        print,
      ),
      ...withEdge(shelf, sag / limit, stock, design.units, print),
    ],
  });
  return [{ check: { ...check, verdict: "warns" }, finding }];
}

/** Whether another part lies on most of it, so that nothing else does. */
function isCovered(part: Part, { design }: Checked): boolean {
  const [length, width] = [indexOf(part.axes.length), indexOf(part.axes.width)];
  const whole = (part.solid.high[length] - part.solid.low[length]) * (part.solid.high[width] - part.solid.low[width]);
  const covered = design.joints.flatMap((joint) =>
    joint.parts.includes(part.id)
      ? joint.contact.filter(({ normal }) => normal[2] * (joint.parts[0] === part.id ? 1 : -1) > 0.5)
      : [],
  );
  return covered.reduce((so, { area }) => so + area, 0) > whole / 2;
}

/** Whether the floor holds it up all over. What is screwed to a wall hangs above it. */
const liesOnFloor = (part: Part, checked: Checked): boolean =>
  !checked.hardware.some(({ item }) => item.kind === "wall screw") &&
  bodyOf(part, 2)[0] - footing(checked).low[2] <= SLACK;
