import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const loaded = (load: string, wide: string): string =>
  stepExample(["width: 24", `width: ${wide}`], ["long: 24", `long: ${wide}`], ["joints:", `carries: ${load}\njoints:`]);

export const shelfSags = rule<{
  readonly part: string;
  readonly sag: string;
  readonly span: string;
  readonly limit: string;
  readonly load: string;
  /** Ways to mend it, worked out. */
  readonly remedies: readonly string[];
}>({
  name: "shelf-sags",
  severity: "warning",
  message: (a) => `${a.part} sags ${a.sag} over ${a.span} under ${a.load}`,
  label: (a) => `more than ${a.limit}`,
  why: (a) =>
    `a sag of more than ${a.limit} is seen here; half as much again is added for what wood gives way in years`,
  help: (a) => a.remedies.join("; or "),
  explain: `A shelf bends under what stands on it, and slowly goes on bending. How far follows from its length between supports, its thickness and the
stiffness of its wood (5 w L⁴ / (384 E I), plus half of it for creep); more than 0.02 in for each foot (1.7 mm for each metre) is seen. \`carries\` says what
stands on it, for all parts that lie flat or for one of them; \`carries: nothing\` takes a part out. Its ends are taken to lie loosely, which is on the safe side. A shelf on pins reaches from pins to pins; a strip or rail that is glued along a board
is counted with it, as one section about its common middle; what the floor holds up all over is not looked at.`,
  wrong: loaded("90 lb", "48"),
  right: loaded("40 lb", "24"),
  basis: "simple beam, published stiffness; the limit is common practice, no source",
});
