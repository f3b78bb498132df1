import { drawerNods } from "../../../findings/rules/drawer-nods.ts";
import { inches, millimetres } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Rule, Verdict } from "./check.ts";
import { drawersOf } from "./drawers/drawers.ts";
import { nodOf } from "./drawers/nod.ts";

/**
 * Degrees: a front comes down by an inch for each foot that it stands out. Less is the play of any drawer on wood; with more, what lies in it slides to
 * the front, and it binds when it is pushed in. Common practice, no source.
 */
const LIMIT = 5;

/** A drawer on wood that is pulled out by more than half tips over the edge of what carries it, unless something above it holds its back end down. */
export const drawerNodsRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer): readonly Verdict[] => {
    const [part] = drawer.parts;
    const nod = drawer.slides.length > 0 ? null : nodOf(drawer, checked);
    if (!part || !nod) return [];
    const check = {
      ...{ rule: "drawer-nods", subject: drawer.motion.name, value: nod.degrees, limit: LIMIT },
      ...{ unit: "degrees", basis: "common practice, no source" },
    };
    if (nod.degrees <= LIMIT) return [{ check: { ...check, verdict: "holds" } }];
    const inch = checked.design.units === "inch";
    const near = (by: number): string =>
      checked.print(roundTo(rational(Math.round(by)), inch ? inches(1, 4) : millimetres(5)));
    const finding = drawerNods(part.at, {
      ...{ drawer: drawer.motion.name, open: near(nod.open), drop: near(nod.drop) },
      ...{
        degrees: Math.floor(nod.degrees),
        play: inch ? "1/16 in" : "1.5 mm",
      },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
