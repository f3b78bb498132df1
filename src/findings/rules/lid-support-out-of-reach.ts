import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

const hung = (more: string): string =>
  chestExample(
    ["to: [fore, rear, left-side, right-side], with: loose", "to: rear, with: butt hinges, opens: top"],
    ["against: lid }", `against: lid${more} }\n  - { fit: knob, to: lid, face: top, deep: lid.front + 2 }`],
  );

export const lidSupportOutOfReach = rule<{
  readonly support: string;
  readonly lid: string;
  /** Both distances between its halves, and what it can do. */
  readonly shut: string;
  readonly open: string;
  readonly degrees: number;
  readonly reach: string;
  /** How far nearer to the hinge it would do, or farther from it; null where it does nowhere there. */
  readonly move: { readonly by: string; readonly to: "hinge" | "edge" } | null;
}>({
  name: "lid-support-out-of-reach",
  severity: "error",
  message: (a) =>
    `the halves of the support ${a.support} are ${a.shut} apart when the lid ${a.lid} is shut and ${a.open} when it is ${a.degrees}° open, and it reaches ${a.reach}`,
  label: () => "no arm does that",
  help: (a) =>
    a.move
      ? `put it ${a.move.by} ${a.move.to === "hinge" ? "nearer to the hinge" : "farther from the hinge"} (deep: …; support: { from the back: … }), or take one that does (reach: …)`
      : "take a support that does (hardware: { kind: lid support, reach: … }), or put its upper end lower or higher (up: …; support: { down: … })",
  explain: `The two halves of a lid support stand some distance apart when the lid is shut, and farther apart the farther it is open. A folding arm is never shorter than it is
folded and never longer than it is straight, so that it has to do from the shut lid until that stands upright, where it no longer falls by itself. Near the hinge both
distances are small. What a support can do stands under reach, between the middles of its two halves; take it from the maker's drawing of the one that you buy.`,
  wrong: hung(""),
  right: hung(", deep: left-side.back - 2"),
  basis: "geometry",
});
