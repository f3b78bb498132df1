import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";
import { shorten } from "../shorten.ts";

interface Args {
  /** What the plan wishes, as it says it. */
  readonly first: string;
  readonly next: string;
  readonly because: "blocked" | "loose" | "needed" | "no unit";
  /** The parts in the way. */
  readonly parts: readonly string[];
}

export const wishImpossible = rule<Args>({
  name: "wish-impossible",
  severity: "error",
  message: ({ first: said, next: then, because, parts }) => {
    const these = nameSome(parts);
    const [first, next] = [shorten(said), shorten(then)];
    switch (because) {
      case "blocked":
        return `${next} cannot go in after ${first}: ${these} ${parts.length === 1 ? "is" : "are"} in the way`;
      case "loose":
        return `${first} cannot be put together before ${next}: nothing else ties ${these} to the rest`;
      case "needed":
        return `${first} cannot come before ${next}: ${these} must be done with ${next} first`;
      case "no unit":
        return parts.length === 0
          ? `${first} cannot be put together by itself: it would not hold together`
          : `${first} cannot be put together by itself and then go to the rest: ${these} ${parts.length === 1 ? "is" : "are"} in the way`;
    }
  },
  label: () => "this wish cannot be carried out",
  help: ({ because }) =>
    because === "blocked"
      ? "leave this wish out, or open a way in: a dado through to the front edge, or a part that is joined last"
      : because === "needed"
        ? "turn the wish round, or leave it out"
        : "leave this wish out, or add a joint that holds them together",
  explain:
    "Wishes about the order of work are kept wherever they can be. Each order is proven possible: a part must be able to travel to its place past all that is there by then, and what is joined must hang together. The finding names what is in the way.",
  wrong: shelfExample(
    ["joints:", "order:\n  - { this: [left-leg, right-leg], before: shelf }\njoints:"],
    ["join: tread, to: [left-leg, right-leg]", "join: tread, to: left-leg"],
  ),
  right: shelfExample(["joints:", "order:\n  - { this: shelf, before: tread }\njoints:"]),
  basis: "geometry",
});
