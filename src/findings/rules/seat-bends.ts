import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const seated = (wide: string): string =>
  stepExample(
    ["width: 24", `width: ${wide}`],
    ["long: 24", `long: ${wide}`],
    ["joints:", "used for: { seats: 2, each weighs: 200 lb }\njoints:"],
  );

export const seatBends = rule<{
  readonly part: string;
  readonly sag: string;
  readonly span: string;
  readonly limit: string;
  readonly people: string;
  readonly remedies: readonly string[];
}>({
  name: "seat-bends",
  severity: "warning",
  message: (a) => `${a.part} bends ${a.sag} over ${a.span} under ${a.people}`,
  label: (a) => `more than ${a.limit}`,
  why: (a) => `more than ${a.limit}, a 360th of the span, is felt by who sits on it`,
  help: (a) => a.remedies.join("; or "),
  explain: `The weight of those who sit on a piece goes through the seat to the rails under it, and from them to the legs. Each of these bends; more
than a 360th of its span is felt, and a piece that bends much works its joints loose. \`used for\` says how many sit on it and what each weighs. Ends are taken
to lie loosely, which is on the safe side. Whether wood breaks is not worked out: knots decide that.`,
  wrong: seated("60"),
  right: seated("24"),
  basis: "simple beam, published stiffness; the limit is common practice, no source",
});
