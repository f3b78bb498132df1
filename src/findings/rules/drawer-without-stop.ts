import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const wooden = (more: string): string =>
  drawerExample(
    ["slides: runs", "runs on: cabinet.bottom-panel"],
    ["  runs: { kind: side slide, load: 100 lb }\n", ""],
    ["carries: 12 lb", `carries: 12 lb${more}`],
  );

export const drawerWithoutStop = rule<{ readonly drawer: string; readonly back: string }>({
  name: "drawer-without-stop",
  severity: "warning",
  message: (a) => `nothing keeps ${a.drawer} from being pulled right out`,
  help: (a) => `fix a drawer stop inside its back: under \`fittings\`, { fit: drawer stop, to: ${a.back} }`,
  explain: `A drawer on slides is stopped by them. One that runs on wood comes right out, with all that is in it. A button inside its back, turned up when the drawer is in, catches behind
what is above.`,
  wrong: wooden(""),
  right: wooden("\nfittings:\n  - { fit: drawer stop, to: planes.box-back }"),
  basis: "common practice, no source",
});
