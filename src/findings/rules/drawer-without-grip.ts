import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

export const drawerWithoutGrip = rule<{ readonly drawer: string; readonly front: string }>({
  name: "drawer-without-grip",
  severity: "warning",
  message: (a) => `there is nothing to pull ${a.drawer} by`,
  label: (a) => `no pull on ${a.front}, and nothing cut out of it`,
  help: () => "give it a pull (pull: knob), or cut a hand-hold out of its front",
  explain: `A drawer whose front lies in its opening cannot be gripped at an edge. It needs a knob or a handle, a hand-hold, or a lower edge that hangs free.`,
  wrong: drawerExample(["    pull: pull\n", ""]),
  right: drawerExample(),
  basis: "common practice, no source",
});
