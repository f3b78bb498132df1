import { glassHoldsNothing } from "../../../findings/rules/glass-holds-nothing.ts";
import type { Joint } from "../../design.ts";
import { panesOf } from "../order/glazing.ts";
import type { Rule, Verdict } from "./check.ts";

/** It lies there, and something else keeps it in its place. */
const LIES: readonly Joint["method"][] = ["glazed", "groove", "loose", "shelf pins"];

/** Nothing is cut, driven or glued into glass. */
export const glassHoldsNothingRule: Rule = ({ design, holes }) => {
  const panes = panesOf(design);
  return design.parts
    .filter(({ id }) => panes.has(id))
    .map((part): Verdict => {
      const bad = design.joints.filter(
        ({ parts, method, glue }) => parts.includes(part.id) && (glue || !LIES.includes(method)),
      );
      const cuts = part.features.length + holes.filter((hole) => hole.part === part.id).length;
      const check = {
        ...{ rule: "glass-holds-nothing", subject: part.id, basis: "common practice, no source" },
        ...{ value: bad.length + cuts, limit: 0, unit: "" },
      };
      if (bad.length + cuts === 0) return { check: { ...check, verdict: "holds" } };
      const [first] = bad;
      const args = { part: part.id, method: first?.method ?? null, glue: first?.glue ?? false };
      return { check: { ...check, verdict: "fails" }, finding: glassHoldsNothing(first?.at ?? part.at, args) };
    });
};
