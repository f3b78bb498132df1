import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const long = (inches: string): string =>
  drawerExample(["    carries: 12 lb", `    long: ${inches}\n    carries: 12 lb`]);

export const noRoomForIt = rule<{
  readonly size: string;
  readonly room: string;
  readonly more: string;
  /** The longest that is sold and fits; "nothing": none does; null: it is sold in no fixed lengths. */
  readonly fits: string | null;
}>({
  name: "no-room-for-it",
  severity: "error",
  message: (a) => `${a.size} is more than there is room for: ${a.room}`,
  label: (a) => `${a.more} too much`,
  help: (a) =>
    (a.fits === null
      ? `make it ${a.room} or less`
      : a.fits === "nothing"
        ? `make it ${a.room} or less; no slide that is sold is that short, so take wooden runners`
        : `make it ${a.room} or less; the longest slide that is sold and fits is ${a.fits}`) +
    `, or what it goes into ${a.more} larger`,
  explain: `The box of a drawer ends before the back of its opening (1/8 in or 3 mm stay behind it), and under its top. A slide is as long as the box. \`long\`, \`high\` and
the \`length\` of slides may say less than there is room for, never more. In formulas \`within(measure, room)\` gives the measure, or this finding.`,
  wrong: long("24"),
  right: long("16"),
  basis: "geometry",
});
