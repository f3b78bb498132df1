import type { Finding } from "../../../findings/finding.ts";
import { seatsNotWhole } from "../../../findings/rules/seats-not-whole.ts";
import type { AllowDraft, Draft, Formula } from "../../../parse/draft.ts";
import { normaliseName } from "../../../parse/names.ts";
import type { Length } from "../../../units/length.ts";
import type { Accepted, Design, Seats } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import { siteOf } from "./site.ts";

/** What a person weighs of whom nothing is said, 200 lb: common practice, no source. */
const USUAL_WEIGHT = 90.718474;

export interface UseContext {
  readonly directory: Directory;
  readonly measure: (formula: Formula) => Length | null;
  readonly report: (finding: Finding) => void;
}

/** What the plan says of where the piece stands, what it carries, what is there to make it with, and what the maker accepts. */
export function useOf(
  draft: Draft,
  context: UseContext,
): Pick<Design, "site" | "carries" | "seats" | "tools" | "accepted"> {
  const { tools, allow } = draft;
  const seats = seatsOf(draft, context);
  const bits = (formulas: readonly Formula[]): readonly Length[] =>
    formulas.flatMap((formula) => context.measure(formula) ?? []);
  return {
    ...(draft.site && { site: siteOf(draft.site) }),
    ...(draft.carries && { carries: draft.carries.value }),
    ...(seats && { seats }),
    ...(tools && {
      tools: {
        ...(tools.mortiseBits && { mortiseBits: bits(tools.mortiseBits) }),
        ...(tools.routerBits && { routerBits: bits(tools.routerBits) }),
      },
    }),
    ...(allow && { accepted: allow.map((each) => acceptedOf(each, draft, context)) }),
  };
}

function seatsOf({ usedFor }: Draft, { directory, report }: UseContext): Seats | undefined {
  if (usedFor === undefined) return undefined;
  const { value, at } = usedFor.seats;
  if (!Number.isInteger(value) || value < 1 || value > MOST_SEATS) {
    report(seatsNotWhole(at, { most: MOST_SEATS }));
    return undefined;
  }
  const on = usedFor.on && (directory.find(usedFor.on) ?? []).map(({ id }) => id);
  return { at: usedFor.at, count: value, eachWeighs: usedFor.eachWeighs ?? USUAL_WEIGHT, on: on ?? null };
}

const MOST_SEATS = 100;

function acceptedOf({ at, finding, of, because }: AllowDraft, { stock }: Draft, { directory }: UseContext): Accepted {
  const rule = finding
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  if (of === undefined) return { at, rule, of: null, because };
  const path = of.value.split(".").map(normaliseName);
  const name = path.join(".");
  const parts = directory.knows({ path }) || !stock.has(name) ? (directory.find({ path, at: of.at }) ?? []) : [];
  return { at, rule, of: [...parts.map(({ id }) => id), ...(stock.has(name) ? [name] : [])], because };
}
