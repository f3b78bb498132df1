import { hingeLeavesApart } from "../../../findings/rules/hinge-leaves-apart.ts";
import { solidOf } from "../../../geometry/index.ts";
import { inches, millimetres, toMillimetres } from "../../../units/length.ts";
import { roundTo } from "../../../units/round.ts";
import { measureOf } from "../../design/hardware/items.ts";
import { fitOf } from "../../design/hinges/leaves.ts";
import type { Rule, Verdict } from "./check.ts";
import { around } from "./standing/weight-and-feet.ts";

/** What card behind a leaf makes up for. Common practice, no source. */
const CARD = 1.6;
/** How far a leaf lies on the wood, so that its screws hold, mm. Common practice, no source. */
const ON_WOOD = 10;
const STEP = { inch: inches(1, 8), mm: millimetres(1) } as const;
const LEAVES: ReadonlySet<string> = new Set(["butt hinge", "continuous hinge"]);

/** The leaves of a hinge that is shut lie on each other: the gap is no wider than they are thick. */
export const hingeLeavesApartRule: Rule = ({ design, hardware, print }) =>
  hardware.flatMap(({ id, item, carriedBy, solid, halfOf }): readonly Verdict[] => {
    const other = hardware.find((each) => each.id === halfOf);
    const [door, hold] = [carriedBy, other?.carriedBy].map((name) => design.parts.find((part) => part.id === name));
    const [leaf] = other?.solid.pieces ?? [];
    if (!LEAVES.has(item.kind) || fitOf(item) === "on the face" || !door || !hold || !leaf) return [];
    const [a, b] = [around([solid]), around([solidOf([leaf])])];
    const apart = Math.max(0, ...([0, 1, 2] as const).map((i) => Math.max(b.low[i] - a.high[i], a.low[i] - b.high[i])));
    const check = {
      ...{ rule: "hinge-leaves-apart", subject: id, value: apart, limit: CARD, unit: "mm" },
      basis: "geometry; the most that card makes up for is common practice, no source",
    };
    if (apart <= CARD) return [{ check: { ...check, verdict: "holds" } }];
    // On the face a leaf begins beside the barrel in the middle of the gap.
    const gap = apart + toMillimetres(measureOf(item, "closed"));
    const wide = (gap - toMillimetres(measureOf(item, "barrel"))) / 2 + ON_WOOD;
    const enough = roundTo(millimetres(Math.ceil(wide * 1000), 1000), STEP[design.units], "up");
    const finding = hingeLeavesApart(door.at, {
      door: door.id,
      hold: hold.id,
      closed: print(measureOf(item, "closed")),
      hinge: `{ kind: ${item.kind}, fit: on the face, leaf: ${print(enough)} }`,
      method: item.kind === "butt hinge" ? "butt hinges" : item.kind,
      apart: print(millimetres(Math.round(apart * 1000), 1000)),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
