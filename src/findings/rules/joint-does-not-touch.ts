import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { bothOf } from "../name-some.ts";

export const jointDoesNotTouch = rule<{
  readonly join: string;
  readonly to: string;
  readonly apart: string | null;
  /** Whether an assembly put them together. */
  readonly made: boolean;
}>({
  name: "joint-does-not-touch",
  severity: "error",
  message: (a) =>
    a.apart === null ? `${a.join} and ${a.to} meet only along an edge` : `${a.join} and ${a.to} are ${a.apart} apart`,
  label: () => "does not reach its mate",
  help: (a) =>
    a.made
      ? `${bothOf(a.join, a.to)}: change the setting here, or the size or place of what it lies between, so that they meet`
      : a.apart === null
        ? "move one of them so that faces meet"
        : `move or lengthen one of them by ${a.apart}, or leave this pair out of the joint`,
  explain: `A joint holds two parts together where they touch face to face. Where they touch is computed from their places, so parts that only come near each other, or meet along an edge, cannot be joined.`,
  wrong: stepExample(["under: tread }", "top: 10 }"]),
  right: stepExample(),
  basis: "the language",
});
