import { fastenersMeet } from "../../../findings/rules/fasteners-meet.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Fastener, Joint } from "../../design.ts";
import { meet, type Rod, rodOf } from "../order/rods.ts";
import { groupedBy } from "../steps/wishes/own-key.ts";
import type { Rule, Verdict } from "./check.ts";

/** Wood that stays between two rods, half of it round each: nails wander, and a thinner wall breaks. Common practice, no source. */
const ROUND_EACH = UNITS_PER_MM / 2;

/** What has no hole of its own that would show it, or a bore as wide as itself; screws are told by their holes, and thin brads go past. */
const KINDS: ReadonlySet<Fastener["kind"]> = new Set(["nail", "dowel"]);

interface Driven {
  readonly fastener: Fastener;
  readonly rod: Rod;
}

/** Fasteners of two joints that come together in one part go past each other. */
export const fastenersMeetRule: Rule = ({ design, fasteners }) => {
  const driven = fasteners.flatMap((fastener): readonly Driven[] =>
    KINDS.has(fastener.kind) ? [{ fastener, rod: rodIn(fastener) }] : [],
  );
  const met = driven.flatMap((a, i) =>
    driven.slice(i + 1).flatMap((b) => (strike(a, b) ? [[a.fastener, b.fastener] as const] : [])),
  );
  const check = { rule: "fasteners-meet", value: met.length, limit: 0, unit: "pairs", basis: "geometry" };
  const [subject = ""] = design.parts.map(({ id }) => id);
  if (met.length === 0) return driven.length > 1 ? [{ check: { ...check, subject, verdict: "holds" } }] : [];
  return groupedBy(met, (pair) => pair.map(({ joint }) => joint).join()).map((own): Verdict => {
    const [[one, other]] = own as [(typeof met)[number]];
    const [first, second] = [one, other].map(({ joint }) => design.joints.find(({ id }) => id === joint)) as [
      Joint,
      Joint,
    ];
    const said = (each: Fastener) => ({ kind: each.kind, part: each.through[0] ?? each.into });
    const inPart = woodOf(one).find((id) => woodOf(other).includes(id)) ?? one.into;
    const also = first.at === second.at ? {} : { also: [{ at: first.at, label: "the other joint" }] };
    return {
      check: { ...check, subject: inPart, value: own.length, verdict: "fails" },
      finding: fastenersMeet(second.at, { one: said(other), other: said(one), count: own.length, inPart }, also),
    };
  });
};

const rodIn = ({ head: { at }, direction, length, rod }: Fastener): Rod =>
  rodOf(
    [toNumber(at[0]), toNumber(at[1]), toNumber(at[2])],
    direction,
    toNumber(rod) / 2 + ROUND_EACH,
    toNumber(length),
  );

const woodOf = ({ through, into }: Fastener): readonly string[] => [...through, into];

const strike = (a: Driven, b: Driven): boolean =>
  a.fastener.joint !== b.fastener.joint &&
  woodOf(a.fastener).some((id) => woodOf(b.fastener).includes(id)) &&
  meet(a.rod, b.rod);
