import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const insetDoorWithoutStop = rule<{ readonly door: string }>({
  name: "inset-door-without-stop",
  severity: "warning",
  message: (a) => `nothing stops ${a.door} when it is shut but its hinges`,
  label: () => "no stop behind it",
  help: () =>
    "put a stop or a catch behind it, under `fittings`: { fit: stop, to: …, deep: … } or { fit: catch, to: …, against: … }; a strip or shelf that it lies against does as well",
  explain: `A door that lies in its opening swings through it if nothing is behind it: the leaves of its hinges lever their screws out. What it closes
against is a block, a strip, a fixed shelf as far back as the door is thick, or a catch.`,
  wrong: doorExample([
    "fittings:\n  - { fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }\n",
    "",
  ]),
  right: doorExample(),
  basis: "common practice, no source",
});
