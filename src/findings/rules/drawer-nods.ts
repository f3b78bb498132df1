import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const under = (rails: string): string =>
  drawerExample(
    ["join: screws", `join: screws, top panel: rails, top rails: { wide: ${rails} }`],
    ["slides: runs", "runs on: cabinet.bottom-panel\n    long: 14\n    stop: drawer stop"],
    ["  runs: { kind: side slide, load: 100 lb }\n", ""],
  );

export const drawerNods = rule<{
  readonly drawer: string;
  /** How far it is open then, and how far its front comes down. */
  readonly open: string;
  readonly drop: string;
  readonly degrees: number;
  /** What a strip leaves over its sides. */
  readonly play: string;
}>({
  name: "drawer-nods",
  severity: "warning",
  message: ({ drawer, open, drop, degrees }) =>
    `${drawer}, pulled out by about ${open}, nods by more than ${degrees}°: its front comes down by about ${drop}`,
  label: () => "nothing holds its back end down",
  why: () => "its weight is then before the edge that it runs on, and its back end rises until it meets what is above",
  help: ({ play }) =>
    `fix a strip of wood (a kicker) above each of its sides, ${play} over them, from the front as far in as they reach; where there is one, bring it lower, or let the drawer stop sooner`,
  explain: `A drawer on wood lies loose. Once its middle is past the front edge of what carries it, its front goes down and its back end up, until that strikes
something above. A narrow rail over its front does not hold it: it lies over that very edge. A rail that reaches far in does, or strips above the sides, a
shaving off them. It is worked out with the drawer open up to its stop, or by half where it has none. Up to 5°, an inch for each foot, is the play of a drawer
that runs freely.`,
  wrong: under("1"),
  right: under("3"),
  basis: "common practice, no source",
});
