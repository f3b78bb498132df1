import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

/** A bar in front of the drawer, on the edges of the sides. */
const bar = (up: string): string =>
  drawerExample(
    [
      "  planes:\n",
      `  bar: { made of: panel, as: on edge, facing: front, grain: across, left: 0, right: 18, front: 0, bottom: ${up}, up: 5/8 }\n  planes:\n`,
    ],
    ["cabinet: { kind: case,", "cabinet: { kind: case, front: 23/32,"],
    [
      "    carries: 12 lb\n",
      "    carries: 12 lb\njoints:\n  - { join: bar, to: [cabinet.left-side, cabinet.right-side], with: glue }\n",
    ],
  );

export const strikesOnItsWay = rule<{
  readonly name: string;
  readonly kind: "slide" | "swing";
  readonly moving: string;
  readonly other: string;
  /** How far it is open when it strikes; null: at once. */
  readonly after: string | null;
}>({
  name: "strikes-on-its-way",
  severity: "error",
  message: (a) =>
    `${a.name} does not open: ${a.after ? `${a.after} ${a.kind === "slide" ? "out" : "open"}` : "at once"} ${a.moving} strikes ${a.other}`,
  label: () => "strikes as it opens",
  help: (a) =>
    `give it more room beside ${a.other}, or move ${a.other} out of its way; a part of the same body has to be joined to it so that it moves with it`,
  explain: `Every door, lid and drawer is moved through all of its poses, with its hardware and the heads of screws, and with those open that it needs open
first. Where it runs into something that stays, it does not open.`,
  wrong: bar("4"),
  right: bar("0"),
  basis: "geometry",
});
