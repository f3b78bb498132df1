import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

export const slideSideSpace = rule<{
  readonly drawer: string;
  readonly side: string;
  readonly wall: string;
  readonly gap: string;
  readonly kind: string;
  readonly low: string;
  readonly high: string;
  readonly by: string;
  readonly short: boolean;
}>({
  name: "slide-side-space",
  severity: "warning",
  message: (a) =>
    `there is ${a.gap} between ${a.side} and ${a.wall}; the ${a.kind} wants ${a.low === a.high ? a.low : `${a.low} to ${a.high}`}`,
  label: (a) => (a.short ? `${a.by} too little: the drawer binds` : `${a.by} too much: the slide comes apart`),
  help: (a) =>
    a.short
      ? `make ${a.drawer} ${a.by} narrower on this side, or take slides that want less (narrower)`
      : `make ${a.drawer} ${a.by} wider on this side, or put packing ${a.by} thick behind the slide`,
  explain: `A slide on balls runs in a space that is given to a few tenths of a millimetre. Less, and the drawer binds; more, and it rattles or comes off its balls. A box that is a
little too narrow is mended with card behind the slide, one that is too wide is a new box: so a box is made to the middle of the space, and rounded down.`,
  wrong: drawerExample(["load: 100 lb", "load: 100 lb, narrower: 3/4"]),
  right: drawerExample(["load: 100 lb", "load: 100 lb, narrower: 1 1/32"]),
  basis: "the slide's own measures; a slide maker's technical note for the usual ones",
});
