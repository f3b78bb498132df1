import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const shoulderStandsOpen = rule<{
  readonly join: string;
  readonly to: string;
  readonly by: string;
  /** Where the other part is tapered: how far from that end the taper begins, and how far from it the joined part lies. */
  readonly taper: { readonly begins: string; readonly lies: string } | null;
}>({
  name: "shoulder-stands-open",
  severity: "error",
  message: (a) => `the shoulder of ${a.join} does not reach ${a.to}: ${a.by} stays open beside the tenon`,
  label: () => "joined here",
  help: (a) =>
    a.taper
      ? `let the taper begin no further than ${a.taper.lies} from that end of ${a.to} (\`over: ${a.taper.lies.replace(/ in$/, "")}\` in its taper, where it is ${a.taper.begins} now), taper other faces of it (\`faces: outside\`), or put ${a.join} beyond the taper, ${a.taper.begins} or more from that end`
      : `let the cut of ${a.to} end before it comes to ${a.join}, or move ${a.join}`,
  explain: `A tenon is let in up to its shoulder, which closes the joint and keeps it from racking. Where the other part was tapered or cut away behind the shoulder, the tenon lies bare and the joint is weak.`,
  wrong: stepExample(
    ["under: tread }", "under: tread, taper: { face: right, at: bottom, to: 3/4, over: 10 } }"],
    [
      "  right-leg: { like: left-leg, right: long }",
      "  right-leg: { mirror of: left-leg, about: across }\n  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }",
    ],
    ["joints:", "joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon }"],
  ),
  right: stepExample(
    [
      "  right-leg: { like: left-leg, right: long }",
      "  right-leg: { like: left-leg, right: long }\n  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }",
    ],
    ["joints:", "joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon }"],
  ),
  basis: "common practice, no source",
});
