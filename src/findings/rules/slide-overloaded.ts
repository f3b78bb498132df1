import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

export const slideOverloaded = rule<{
  readonly drawer: string;
  readonly all: string;
  readonly own: string;
  readonly contents: string;
  readonly rated: string;
  readonly needed: string;
  /** What may lie in it; null: nothing. */
  readonly most: string | null;
}>({
  name: "slide-overloaded",
  severity: "warning",
  message: (a) => `${a.drawer} weighs ${a.all} with ${a.contents} in it, and its slides carry ${a.rated}`,
  label: (a) => `${a.own} of that is the drawer itself`,
  help: (a) => `take slides that carry ${a.needed}${a.most ? `, or put no more than ${a.most} into it` : ""}`,
  explain: `A pair of slides is rated for the drawer and all that lies in it. What lies in it is what \`carries\` says; where nothing is said, it is filled with clothes, 8.5 lb in each
cubic foot (136 g in each litre), the load of the stability test of storage furniture.`,
  wrong: drawerExample(["load: 100 lb", "load: 15 lb"]),
  right: drawerExample(["load: 100 lb", "load: 30 lb"]),
  basis: "the slide's rating; 8.5 lb/ft³: 16 CFR 1261, 88 FR 28403",
});
