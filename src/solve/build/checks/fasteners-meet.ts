import { fastenersMeet } from "../../../findings/rules/fasteners-meet.ts";
import type { Fastener, Fitting, Hole, Joint } from "../../design.ts";
import { fastenersStrike, isDriven, strikesHole, woodOf } from "../order/driven.ts";
import { groupedBy } from "../steps/wishes/own-key.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { jointOf } from "./rooms.ts";

/** What is driven by blows, and what else it strikes: a fastener, or the hole of one or of hardware. Dowels, which fill a bore, strike each other as well. */
interface Met {
  readonly one: Fastener;
  readonly other: Fastener | Hole;
  readonly inPart: string;
}

/** Fasteners of two joints that come together in one part go past each other, and past holes that are bored for something else. */
export const fastenersMeetRule: Rule = (checked) => {
  const { design, fasteners } = checked;
  const driven = fasteners.filter((each) => isDriven(each) || each.kind === "dowel");
  const met = metIn(checked, driven);
  const check = { rule: "fasteners-meet", value: met.length, limit: 0, unit: "pairs", basis: "geometry" };
  const [subject = ""] = design.parts.map(({ id }) => id);
  if (met.length === 0) return driven.length > 1 ? [{ check: { ...check, subject, verdict: "holds" } }] : [];
  return groupedBy(met, ({ one, other, inPart }) => `${one.joint},${forOf(other)},${inPart}`).map((own): Verdict => {
    const [{ one, other, inPart }] = own as [Met];
    const [first, second] = [one.joint, forOf(other)].map((id) => design.joints.find((joint) => joint.id === id));
    const at = (second ?? first) as Joint;
    const also =
      !second || !first || first.at === second.at ? {} : { also: [{ at: first.at, label: "the other joint" }] };
    const said = [saidOf(one), isHole(other) ? holeSaid(checked, other) : saidOf(other)] as const;
    const [a, b] = isHole(other) ? said : ([said[1], said[0]] as const);
    const args = { one: a as { kind: string; part: string }, other: b, count: own.length, inPart };
    return {
      check: { ...check, subject: inPart, value: own.length, verdict: "fails" },
      finding: fastenersMeet((isHole(other) ? (first ?? at) : at).at, args, isHole(other) ? {} : also),
    };
  });
};

const isHole = (each: Fastener | Hole): each is Hole => "stages" in each;
const forOf = (each: Fastener | Hole): string | null => (isHole(each) ? (jointOf(each) ?? null) : each.joint);
const saidOf = (each: Fastener) => ({ kind: each.kind, part: each.through[0] ?? each.into });

/** What a hole is for: hardware, a fastener, or what the maker drew it for. */
function holeSaid({ design, fasteners }: Checked, hole: Hole): { readonly hole: string } {
  const fitting = design.fittings.find(({ holes }: Fitting) => holes.includes(hole));
  const what = fitting?.hardware[0]?.item.kind ?? fasteners.find(({ id }) => id === hole.for)?.kind;
  return { hole: what === undefined ? "a hole" : `the hole of a ${what}` };
}

function metIn({ fasteners, holes }: Checked, driven: readonly Fastener[]): readonly Met[] {
  const inWood = (a: Fastener, b: Fastener): string => woodOf(a).find((id) => woodOf(b).includes(id)) ?? a.into;
  const pairs = driven.flatMap((one, i) =>
    driven
      .slice(i + 1)
      .flatMap((other) => (fastenersStrike(one, other) ? [{ one, other, inPart: inWood(one, other) }] : [])),
  );
  const blows = fasteners.filter(isDriven);
  // A screw that is told by its hole is not told once more.
  const bored = blows.flatMap((one) =>
    holes.flatMap((hole) =>
      jointOf(hole) !== one.joint && strikesHole(one, hole) ? [{ one, other: hole, inPart: hole.part }] : [],
    ),
  );
  const told = (one: Fastener, joint: string): boolean =>
    bored.some((each) => each.one === one && forOf(each.other) === joint);
  const screws = fasteners.filter((each) => !driven.includes(each));
  const passed = blows.flatMap((one) =>
    screws.flatMap((other) =>
      fastenersStrike(one, other) && !told(one, other.joint) ? [{ one, other, inPart: inWood(one, other) }] : [],
    ),
  );
  return [...pairs, ...bored, ...passed];
}
