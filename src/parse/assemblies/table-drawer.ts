import type { Settings } from "../expand/make.ts";
import { joinWords, sizeOf, stockName, withRest } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import type { Collecting } from "./making.ts";

const own = settings("the drawer of a table", {
  wide: need(sizeOf, "How wide the opening in the front apron is, in its middle."),
  opening: need(sizeOf, "How high it is, in the middle of the apron."),
  guides: may(
    stockName,
    "The stock of the two rails that its slides are screwed to, if it is another than that of the aprons.",
  ),
  "join guides": may(
    joinWords,
    "How they are joined to the front and the back apron: pocket screws if nothing is said.",
  ),
});

/** A drawer in the front apron of a table: its opening, and the settings of a drawer. */
export const tableDrawer = withRest(own);
type Said = Fields<typeof own.keys>;

/** What is cut out of the front apron for it. */
export const apronOpening = ({ wide, opening }: Said): Settings => ({
  "cut-out": { in: "front", wide: wide.value, high: opening.value },
});

/** The opening, rails beside it, and the drawer between them. */
export function addTableDrawer(
  { said, rest }: { readonly said: Said; readonly rest: Settings },
  stock: Settings[string],
  { site: { path, write }, entries, joints }: Collecting,
): void {
  const { wide, opening, guides, "join guides": how } = said;
  const whole = (name: string): string => [...path, name].join(".");
  entries["drawer-opening"] = {
    kind: "space",
    left: write`front-apron.left + (front-apron.across - ${wide.value}) / 2`,
    across: wide.value,
    bottom: write`front-apron.bottom + (front-apron.up - ${opening.value}) / 2`,
    up: opening.value,
    front: write`front-apron.front`,
    back: write`back-apron.front`,
  };
  const guide: Settings = {
    "made of": guides?.value ?? stock,
    ...{ as: "on edge", grain: "deep", facing: "left" },
    ...{ front: write`front-apron.back`, back: write`back-apron.front` },
    ...{ bottom: write`drawer-opening.bottom`, top: write`drawer-opening.top` },
  };
  entries["left-guide"] = { ...guide, right: write`drawer-opening.left` };
  entries["right-guide"] = { ...guide, left: write`drawer-opening.right` };
  joints.push({
    ...{ join: ["left-guide", "right-guide"], to: ["front-apron", "back-apron"] },
    ...(how?.value ?? { with: "pocket screws" }),
  });
  entries.drawer = {
    ...{ kind: "drawer", in: whole("drawer-opening") },
    walls: { left: whole("left-guide"), right: whole("right-guide") },
    ...rest,
  };
}
