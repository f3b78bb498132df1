import { shutsWithoutPlay } from "../../../../findings/rules/shuts-without-play.ts";
import { contact, type Vec } from "../../../../geometry/index.ts";
import { cross, dot, minus, norm } from "../../../../geometry/vec.ts";
import { inches, millimetres } from "../../../../units/length.ts";
import type { BuiltMotion } from "../../../build.ts";
import type { Part } from "../../../design.ts";
import type { Rule, Verdict } from "../check.ts";

/** What is left between a rim and what it goes over. Common practice, no source. */
const PLAY = { inch: inches(1, 32), mm: millimetres(1) } as const;

/** A face that moves this little towards what it lies on, for what it moves, slides along it. */
const SLIDES = 0.1;

/** Faces that lie on each other when something is shut come to each other straight; those that slide along each other before need room. */
export const shutsWithoutPlayRule: Rule = ({ design, motions, print }) =>
  motions.flatMap((motion): readonly Verdict[] => {
    if (motion.kind === "slide") return [];
    const moving = design.parts.filter(({ id }) => motion.moves.includes(id));
    // What opens before is out of the way.
    const gone = new Set(motion.needs.flatMap(({ motion: name }) => motions.find((m) => m.name === name)?.moves ?? []));
    const others = design.parts.filter(({ id }) => !motion.moves.includes(id) && !gone.has(id));
    const met = moving.flatMap((part) => others.flatMap((other) => (rubs(motion, part, other) ? [[part, other]] : [])));
    const [first] = met;
    const check = {
      ...{ rule: "shuts-without-play", subject: motion.name, basis: "geometry: faces that touch and slide" },
      ...{ value: met.length, limit: 0, unit: "pairs" },
    };
    const [part, other] = first ?? [];
    const at = design.joints.find(({ id }) => motion.joints.includes(id))?.at;
    if (!part || !other || !at) return [{ check: { ...check, verdict: "holds" } }];
    const told = { name: motion.name, moving: part.id, other: other.id, play: print(PLAY[design.units]) };
    return [{ check: { ...check, verdict: "warns" }, finding: shutsWithoutPlay(part.at, told) }];
  });

function rubs({ poses }: BuiltMotion, part: Part, other: Part): boolean {
  const [origin, pin] = poses[0]?.rotate.about ?? [];
  if (!origin || !pin) return false;
  const way = (at: Vec): Vec => cross(pin, minus(at, origin));
  return contact(part.solid, other.solid).some(({ normal, polygons }) =>
    polygons.flat().every((at) => {
      const speed = way(at);
      return Math.abs(dot(speed, normal)) < SLIDES * norm(speed);
    }),
  );
}
