import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

export const slideLongerThanCase = rule<{
  readonly wall: string;
  readonly drawer: string;
  readonly slide: string;
  readonly room: string;
  readonly more: string;
  /** The longest that is sold and fits; null: none does. */
  readonly fits: string | null;
}>({
  name: "slide-longer-than-case",
  severity: "error",
  message: (a) => `the slides of ${a.drawer} are ${a.slide} long, and there is room for ${a.room} on ${a.wall}`,
  label: (a) => `${a.more} too short for the slide`,
  help: (a) =>
    a.fits
      ? `take slides ${a.fits} long, and make the drawer shorter`
      : `make the case ${a.more} deeper, or use wooden runners`,
  explain: `A slide is screwed to the side of a case over its whole length. It has to end before the side does, and before the back. The drawer is as long as the slide.`,
  wrong: drawerExample(["load: 100 lb", "load: 100 lb, length: 20"], ["carries:", "long: 18\n    carries:"]),
  right: drawerExample(["load: 100 lb", "load: 100 lb, length: 16"]),
  basis: "geometry",
});
