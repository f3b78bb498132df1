import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const fixed = (count: number): string =>
  stepExample(
    ["stock:", "wall: { studs apart: 12 }\nhardware:\n  stud: { kind: wall screw, length: 6 }\nstock:"],
    ["joints:", `fittings:\n  - { fit: stud, to: tread, face: front, count: ${count} }\njoints:`],
  );

export const wallScrewsMissStuds = rule<{
  readonly part: string;
  readonly apart: string;
  readonly screws: number;
  /** How many screws can hit a stud at once, wherever the piece hangs; into how many studs. */
  readonly hit: number;
  readonly studs: number;
  /** Whether two studs can lie behind it with room for a screw in each. */
  readonly room: boolean;
}>({
  name: "wall-screws-miss-studs",
  severity: "warning",
  message: (a) =>
    a.hit < a.screws
      ? `no more than ${a.hit} of the ${a.screws} wall screws of ${a.part} can hit a stud: studs are ${a.apart} apart`
      : `the wall screws of ${a.part} reach one stud, though two can lie behind it: studs are ${a.apart} apart`,
  label: (a) => (a.hit < a.screws ? `${a.hit} of ${a.screws} in a stud` : "all in one stud"),
  help: (a) =>
    a.room
      ? `leave \`count\` and the places of the screws away, or give \`count: 2\` and no place: then they stand ${a.apart} apart, or a multiple of it`
      : "leave `count` and the places of the screws away, and screw a board across two studs to hang the piece on (`wall: solid`)",
  explain: `Studs stand a fixed distance apart. When one screw of a rail is in the middle of a stud, others hit one only if they stand that
distance from it, or twice or three times that; or above the first, in the same stud. A screw in plaster alone holds nothing, and what hangs on one
stud turns about it. Say \`wall: { studs apart: 24 }\` where studs are another distance apart than 16 in or 400 mm, and \`wall: solid\` for masonry
or boards.`,
  wrong: fixed(4),
  right: fixed(2),
  basis: "arithmetic; a stud is 1 1/2 in (38 mm) wide, half of it to spare: common practice, no source",
});
