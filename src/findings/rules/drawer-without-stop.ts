import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const wooden = (more: string): string =>
  drawerExample(
    ["join: screws", "join: screws, top panel: rails"],
    ["slides: runs", "runs on: cabinet.bottom-panel\n    long: 14"],
    ["  runs: { kind: side slide, load: 100 lb }\n", ""],
    ["carries: 12 lb", `carries: 12 lb${more}`],
  );

export const drawerWithoutStop = rule<{
  readonly drawer: string;
  readonly back: string;
  /** What is wrong with the button that is there; null where there is none. */
  readonly button: "no room" | "catches nothing" | null;
}>({
  name: "drawer-without-stop",
  severity: "warning",
  message: ({ drawer, button }) => {
    const so = `nothing keeps ${drawer} from being pulled right out`;
    if (button === null) return so;
    return button === "no room"
      ? `${so}: its stop cannot be turned up under what lies right over it`
      : `${so}: its stop, turned up, catches behind nothing`;
  },
  help: ({ drawer, back, button }) => {
    if (button === null)
      return `fix a drawer stop inside its back: under \`fittings\`, { fit: drawer stop, to: ${back} }`;
    return button === "no room"
      ? `let there be a rail over the drawer in front and room behind it, such as \`top panel: rails\`, and make ${drawer} so much shorter (\`long:\`) that its back stands before the rail behind`
      : "set it higher (`up:`), make it longer (`long:` of the drawer stop in `hardware`), or put a rail over the drawer in front";
  },
  explain: `A drawer on slides is stopped by them. One that runs on wood comes right out, with all that is in it. A button inside its back, turned up when the drawer is in, catches behind
what is above.`,
  wrong: wooden(""),
  right: wooden("\n    stop: drawer stop"),
  basis: "common practice, no source",
});
