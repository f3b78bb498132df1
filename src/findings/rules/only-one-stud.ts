import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const fixed = (apart: string): string =>
  stepExample(
    ["stock:", `wall: { studs apart: ${apart} }\nhardware:\n  stud: { kind: wall screw, length: 6 }\nstock:`],
    ["joints:", "fittings:\n  - { fit: stud, to: tread, face: front }\njoints:"],
  );

export const onlyOneStud = rule<{
  readonly part: string;
  readonly long: string;
  readonly apart: string;
  /** How many studs are behind it wherever it hangs. */
  readonly certain: number;
  readonly least: string;
  /** Whether the piece is wide enough for that. */
  readonly fits: boolean;
  /** How far from its end the first may lie for a screw into each of two; null where there is no room for two. */
  readonly within: readonly [string, string] | null;
}>({
  name: "only-one-stud",
  severity: "warning",
  message: (a) =>
    `${a.part} is ${a.long} long and studs are ${a.apart} apart: ${a.certain === 1 ? "only one is" : "none is"} certain to lie behind it, and it takes two`,
  label: (a) => (a.certain === 1 ? "one stud for certain" : "no stud for certain"),
  help: (a) =>
    [
      ...(a.fits ? [`make it ${a.least} long`] : []),
      ...(a.within
        ? [
            `find the studs where it will hang: two can be screwed into if the first lies from ${a.within[0]} to ${a.within[1]} from its end, and then accept this`,
          ]
        : []),
      "screw a board across two studs, and hang it on that (`wall: solid`)",
    ].join("; or "),
  explain: `What hangs on one stud turns about it, and all of its weight is on one or two screws. The studs behind a rail are as many as their
distance goes into its length; one more lies there only if the first happens to be near its end. Say \`wall: { studs apart: 24 }\` where they
are another distance apart than 16 in or 400 mm, and \`wall: solid\` for masonry or boards.`,
  wrong: fixed("16"),
  right: fixed("12"),
  basis: "arithmetic; two studs: common practice, no source",
});
