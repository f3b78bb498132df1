import { rule } from "../finding.ts";
import { hungExample } from "../hung-example.ts";

interface Args {
  readonly shelf: string;
  /** "a cup hinge on cabinet.left-side" */
  readonly hinge: string;
  readonly raise: string;
  readonly lower: string;
}

export const shelfAtAHinge = rule<Args>({
  name: "shelf-at-a-hinge",
  severity: "error",
  message: ({ shelf, hinge }) => `${shelf} lies at the height of ${hinge}, which needs that room`,
  label: () => "is in the way of the hinge",
  help: ({ raise, lower }) =>
    `raise it by ${raise}, lower it by ${lower}, move the hinge (in from ends), or set the shelf further back`,
  explain:
    "The plate, the arm and the cup of a hinge stand out into the cabinet. A shelf at their height runs into them, or leaves no room for a screwdriver.",
  wrong: hungExample(["at: [12]", "at: [4]"]),
  right: hungExample(),
  basis: "geometry; common practice, no source",
});
