import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const doorWithoutGrip = rule<{ readonly door: string; readonly hung: string }>({
  name: "door-without-grip",
  severity: "warning",
  message: (a) => `there is nothing to open ${a.door} by`,
  label: () => "no pull on it, and nothing cut out of it",
  help: () => "give it a pull (pull: knob), or cut a hand-hold out of its edge",
  explain: `Once a door without a grip is shut it stays shut: fingernails do not open it. It needs a knob, a handle, or a hand-hold.`,
  wrong: doorExample(["    pull: knob\n", ""]),
  right: doorExample(),
  basis: "common practice, no source",
});
