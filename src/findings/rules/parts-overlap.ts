import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { bothOf } from "../name-some.ts";
import { WAYS } from "../ways.ts";

export const partsOverlap = rule<{
  readonly first: string;
  readonly second: string;
  readonly by: string;
  /** The direction in which that is; null where it is none of the three. */
  readonly way: keyof typeof WAYS | null;
  /** Whether both are made by assemblies. */
  readonly made: boolean;
  /** What moves one of them in that direction, and how far, where that is known. */
  readonly cure?: string | null;
  /** Only what joints add to the two reaches into each other: tenons that meet. */
  readonly added?: boolean;
  /** That of the two which has a notch of the maker's. */
  readonly notched?: string | null;
}>({
  name: "parts-overlap",
  severity: "error",
  message: (a) =>
    a.added
      ? `what joints add to ${a.first} and ${a.second}, such as their tenons, runs into the other: they overlap by ${a.by}${a.way ? `, ${WAYS[a.way]}` : ""}`
      : `${a.first} and ${a.second} are in the same place: they overlap by ${a.by}${a.way ? `, ${WAYS[a.way]}` : ""}`,
  help: (a) =>
    a.added
      ? `let them in less far (tenon: { long: … }, or deep: …), or move one of them`
      : a.notched && !a.made
        ? `move one of them; or, if the notch of ${a.notched} is to make the room, change its sizes: it reaches \`wide\` in from the face that is named first, \`deep\` from the second`
        : a.made
          ? `${bothOf(a.first, a.second)}: ${a.cure ?? "change the settings here so that there is room for both"}`
          : "move one of them, or say the joint that lets one into the other",
  explain: `Two pieces of wood cannot be in one place. Where one is let into the other, a joint (dado, groove, mortise and tenon, half lap) or a notch makes the room.`,
  wrong: stepExample(["bottom: 0, under: tread }", "bottom: 0, top: 11 }"]),
  right: stepExample(),
  basis: "the language",
});
