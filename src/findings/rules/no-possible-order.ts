import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

interface Args {
  readonly because: "loose" | "holes" | "heads" | "reach" | "locked" | "not found";
  /** The parts that it is about. */
  readonly parts: readonly string[];
  /** What they should be joined to. */
  readonly from?: readonly string[];
  /** The fastener that cannot be driven, and what is in its way. */
  readonly item?: string;
  readonly inTheWay?: readonly string[];
  /** Joints of which any one frees what is locked, when it does not reach into the wood. */
  readonly keys?: readonly { readonly method: string; readonly parts: readonly string[] }[];
}

export const noPossibleOrder = rule<Args>({
  name: "no-possible-order",
  severity: "error",
  message: ({ because, parts, from = [], item = "", inTheWay = [] }) => {
    const these = nameSome(parts);
    switch (because) {
      case "loose":
        return `${these} cannot be put together with ${nameSome(from)}: no joint ties them`;
      case "holes":
        return `the fasteners between ${these} have no place where their holes keep clear of others`;
      case "heads":
        return `the head of the ${item} between ${these} would stand in the wood of ${nameSome(inTheWay)}`;
      case "reach":
        return inTheWay.length === 0
          ? `no tool reaches the ${item} between ${these}`
          : `no tool reaches the ${item} between ${these}: ${nameSome(inTheWay)} ${inTheWay.length === 1 ? "is" : "are"} in the way`;
      case "locked":
        return `${these} lock each other: none of them can be put in last`;
      case "not found":
        return `no order of work was found for ${these}`;
    }
  },
  label: () => "cannot be put together",
  help: ({ because, keys = [] }) => {
    const [key] = keys;
    switch (because) {
      case "locked":
        return key
          ? `${keys.length === 1 ? "one joint" : `any one of ${keys.length} joints`} frees them if it does not reach into the wood (screws from outside, say): ${key.method} of ${nameSome(key.parts)}`
          : "shorten a tenon, open a housing on one side, or leave one part to be screwed on last";
      case "loose":
        return "add a joint between them";
      case "holes":
        return "give the joint fewer or thinner fasteners, or another spacing";
      case "heads":
        return "let the heads in, with `counterbore:` and how deep; drive them from the other side (from:); or leave more room there";
      case "reach":
        return "drive it from the other side (from:), use another joint, or leave room for a driver";
      default:
        return "shorten a tenon, open a housing on one side, or leave one part to be screwed on last";
    }
  },
  explain: `A piece can be built when it can be taken apart again: a part, or parts that are already joined, must be able to leave in a straight line without passing through what stays, and each fastener needs room for a tool behind its head when its joint is made.

The finding names what locks, or the fastener that nothing reaches.`,
  // Heads on both sides of the tread: whichever board comes second covers the heads that hold the first.
  wrong: stepExample(
    ["height: 12", "height: 13 1/2"],
    [
      "joints:",
      "  upper: { made of: lumber, as: lying flat, left: 4, right: 20, front: 0, on: tread }\n  lower: { made of: lumber, as: lying flat, left: 4, right: 20, front: 0, under: tread }\njoints:\n  - { join: tread, to: [upper, lower], with: screws }",
    ],
  ),
  right: stepExample(),
  basis: "geometry",
});
