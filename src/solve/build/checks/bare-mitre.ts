import { bareMitre } from "../../../findings/rules/bare-mitre.ts";
import { indexOf } from "../../design/space.ts";
import type { Design, Joint, Part } from "../../design.ts";
import { fastBodies } from "../order/links.ts";
import type { Rule, Verdict } from "./check.ts";

/** A mitre of end grain is held by more than glue: by what is let in across it, or by something that both its parts are fast to. */
export const bareMitreRule: Rule = ({ design }) => {
  const part = new Map(design.parts.map((each) => [each.id, each]));
  const mitres = design.joints.filter(
    (joint) => joint.method === "mitre" && joint.glue && ofEndGrain(joint, part, design),
  );
  const bare = new Set(
    mitres.filter(({ arrangements }) => arrangements.every(({ fasteners }) => fasteners.length === 0)),
  );
  if (mitres.length === 0) return [];
  const { parts } = design;
  const held = fastBodies({
    parts,
    joints: design.joints.filter((each) => !bare.has(each) && each.kind !== "floating"),
  });
  const bodyOf = (id: string): number => held.findIndex((places) => places.some((place) => parts[place]?.id === id));
  return mitres.map((joint): Verdict => {
    const [join, to] = joint.parts;
    const fast = !bare.has(joint) || bodyOf(join) === bodyOf(to);
    const check = {
      ...{ rule: "bare-mitre", subject: join, value: fast ? 1 : 0, limit: 1, unit: "holds besides glue" },
      basis: "Wood Handbook FPL-GTR-190, chapter 10; common practice, no source",
    };
    if (fast) return { check: { ...check, verdict: "holds" } };
    return { check: { ...check, verdict: "warns" }, finding: bareMitre(joint.at, { join, to }) };
  });
};

/** Whether solid wood is cut across its length there. */
const ofEndGrain = ({ id, parts }: Joint, part: ReadonlyMap<string, Part>, { stock }: Design): boolean =>
  parts.some((own) => {
    const { axes, features, stock: name, turned } = part.get(own) as Part;
    const solid = stock.some((each) => each.name === name && each.form === "board");
    return (
      solid &&
      (turned?.features ?? features).some(
        (cut) =>
          cut.kind === "mitre" && "normal" in cut && cut.for === id && Math.abs(cut.normal[indexOf(axes.length)]) > 0,
      )
    );
  });
