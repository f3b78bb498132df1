import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const screwed = (length: string): string =>
  drawerExample([
    "front: { made of: panel }",
    `front: { made of: panel, screws: { with: screws, from: box-front, count: 2, in from ends: 2, set with: shims, screw: { length: ${length} } } }`,
  ]);

export const frontScrewsTooLong = rule<{
  readonly front: string;
  readonly screw: string;
  readonly wood: string;
  readonly most: string;
  readonly left: string;
}>({
  name: "front-screws-too-long",
  severity: "warning",
  message: (a) =>
    `the screws into ${a.front} are ${a.screw} long, and it is ${a.wood} thick together with the front of the box`,
  help: (a) => `take screws of at most ${a.most}: ${a.left} of wood has to stay in front of the point`,
  explain: `The front of a drawer is screwed on from inside. A point that comes too near to its face makes a bump in it, or comes out.`,
  wrong: screwed("1 1/8"),
  right: screwed("1"),
  basis: "common practice, no source",
});
