import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const hingeLeafOffDoor = rule<{
  readonly door: string;
  readonly leaf: string;
  readonly back: string;
  readonly on: string;
  readonly least: string;
  readonly most: string;
  readonly wanted: string;
}>({
  name: "hinge-leaf-off-door",
  severity: "error",
  message: (a) =>
    `${a.door} lies ${a.back} behind the edge where its hinges begin, so that of leaves ${a.leaf} wide ${a.on} lie on it, and their screws have no wood at their side`,
  label: () => "leaf beside the door",
  help: (a) =>
    `take hinges whose leaves are at least ${a.wanted} wide (leaf: …), or set the door at most ${a.most} back`,
  explain: `The barrel of a butt hinge stands before the edge of what the door hangs on, or the door could not open past it. A door that is set back
behind that edge has only the rest of the leaf on it: enough of it for screws with wood all round, 3/8 in (10 mm).`,
  wrong: doorExample(["made of: leaf\n", "made of: leaf\n    set back: 3/8\n"]),
  right: doorExample(),
  basis: "geometry; the least is common practice, no source",
});
