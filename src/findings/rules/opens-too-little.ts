import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const opening = (degrees: string): string => doorExample(["leaf: 1/2", `leaf: 1/2, opens: ${degrees}`]);

export const opensTooLittle = rule<{
  readonly door: string;
  /** Degrees. */
  readonly free: number;
  readonly by: { readonly moving: string; readonly other: string } | null;
}>({
  name: "opens-too-little",
  severity: "warning",
  message: (a) =>
    a.by
      ? `${a.door} opens by ${a.free}° only: then ${a.by.moving} strikes ${a.by.other}`
      : `${a.door} opens by ${a.free}° only: its hinges go no further`,
  label: (a) => `opens by ${a.free}°`,
  help: (a) =>
    a.by
      ? `move ${a.by.other} out of its way, hang the door on the other side (hinged: …), or take hinges that turn about another line`
      : "take hinges that open to 90° or more (opens: …)",
  explain: `What opens to less than a right angle is in the way of what is taken out, and a drawer behind it does not come out at all. Every pose of the door
is tried against all that stands still, hardware included.`,
  wrong: opening("80"),
  right: opening("110"),
  basis: "geometry; a right angle: common practice, no source",
});
