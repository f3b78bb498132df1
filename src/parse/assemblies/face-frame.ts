import type { Settings } from "../expand/make.ts";
import { joinWords, partName, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { squash } from "../names.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { endJoint } from "./corners.ts";
import { divide } from "./divide.ts";
import { endsOf } from "./dividers.ts";
import type { Dividing, Way } from "./making.ts";
import { type Division, openings, without } from "./openings.ts";
import { behindFronts } from "./overlay-fronts.ts";

const own = settings("a face frame", {
  "made of": need(stockName, "The stock of its stiles and rails."),
  stiles: may(sizeOf, "How wide the stiles are: 1 1/2 in or 40 mm if nothing is said."),
  rails: may(sizeOf, "How wide the rails are: as wide as the stiles if nothing is said."),
  "top rail": may(sizeOf, "How wide the top rail is, if otherwise."),
  "bottom rail": may(sizeOf, "How wide the bottom rail is, if otherwise."),
  openings: may(openings, "How it is divided, with a rail or a stile between each two openings, and what they hold."),
  join: may(joinWords, "The joint between its members: pocket screws if nothing is said."),
  case: may(partName, "The case that it stands in front of, to which it is fixed."),
  "to the case": may(joinWords, "How it is fixed to that: glue if nothing is said."),
});
type Said = Fields<typeof own.keys>;

/** Stiles and rails in front of a case. Its openings are spaces: `opening`, and those in it by their names or numbers. */
export const faceFrame = assembly({
  kind: "face-frame",
  also: ["face frame"],
  meaning: "Stiles and rails in front of a case, with the openings between them.",
  makes:
    "Its parts are `left-stile`, `right-stile`, `bottom-rail`, `top-rail`, and between openings `stile-1` and `rail-1`; its spaces `opening`, and in it `opening-1` or the name that you give; what an opening holds is NAME-door, NAME-drawer or NAME-drawer-1.",
  settings: own,
  before: "case",
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const entries: Record<string, Settings> = {};
    const stiles = said.stiles?.value ?? write`${site.usual("1 1/2", "40")}`;
    const rails = said.rails?.value ?? stiles;
    const stock = said["made of"].value;
    const level = { front: "left-stile.front" };
    const join: Settings = said.join?.value ?? { with: "pocket screws" };
    entries.room = {
      kind: "space",
      ...site.placed("across"),
      ...site.placed("up"),
      front: "left-stile.front",
      back: "left-stile.back",
    };
    const stile = (face: "left" | "right"): Settings => ({
      ...{ "made of": stock, as: "upright", facing: "front", [face]: `room.${face}`, across: stiles },
      ...{ bottom: "room.bottom", top: "room.top" },
      ...(face === "left"
        ? behindFronts(site.thin("deep", "front"), said.openings?.value ?? null, stock, site)
        : level),
    });
    entries["left-stile"] = stile("left");
    entries["right-stile"] = stile("right");
    const between = { left: "left-stile.right", right: "right-stile.left" };
    const rail = (place: Settings, wide: TextNode): Settings => ({
      ...{ "made of": stock, as: "on edge", facing: "front", ...between, ...place, up: wide, ...level },
    });
    entries["top-rail"] = rail({ top: "room.top" }, said["top rail"]?.value ?? rails);
    entries["bottom-rail"] = rail({ bottom: "room.bottom" }, said["bottom rail"]?.value ?? rails);
    const joints: Settings[] = [endJoint(["top-rail", "bottom-rail"], ["left-stile", "right-stile"], join, site)];
    entries.opening = {
      ...{ kind: "space", left: "left-stile.right", right: "right-stile.left" },
      ...{ bottom: "bottom-rail.top", top: "top-rail.bottom", front: "room.front" },
      // What goes in an opening may reach as far as the back of the case.
      back: said.case ? write`${said.case.value}.inside.back` : "room.back",
    };
    const members = ["left-stile", "right-stile", "top-rail", "bottom-rail"];
    const backed = said.case && isBacked(said.case.value, site);
    if (said.openings) {
      const put: Dividing["put"] = (each, making) => {
        const { cross, ends } = endsOf(each, making);
        const turned: Settings =
          each.way === "across"
            ? { as: "upright", facing: "front", across: each.said?.wide?.value ?? stiles }
            : { as: "on edge", facing: "front", up: each.said?.wide?.value ?? rails };
        const named = each.said?.called && { called: each.said.called.value };
        const made = each.said?.rail?.value ?? each.said?.["made of"]?.value ?? stock;
        making.entries[each.name] = { "made of": made, ...named, ...turned, ...cross, ...each.touching, ...level };
        making.joints.push(endJoint(each.name, ends, each.said?.join?.value ?? join, site));
        if (backed) members.push(each.name);
      };
      const inFrame: Dividing = { word: (way) => MEMBER[way], put };
      const behind = said.case && inCaseBehind(said.case.value, backed === true);
      const division = backed ? without("shelves", said.openings.value) : said.openings.value;
      const making = {
        site,
        entries,
        joints,
        reaching: [],
        stock,
        join,
        edge: {},
        dividing: inFrame,
        ...(behind && { behind }),
      };
      const bounds = { left: "left-stile", right: "right-stile", top: "top-rail", bottom: "bottom-rail" };
      divide("opening", division, bounds, making);
    }
    if (said.case)
      joints.push({ join: members, to: said.case.value, ...(said["to the case"]?.value ?? { with: "glue" }) });
    return { entries, joints };
  },
});

/** What stands between two openings. */
const MEMBER = { across: "stile", down: "rail" } as const;

/** Whether a case has a panel behind each rail and stile between openings. */
function isBacked(frame: TextNode, { settingOf }: Site): boolean {
  const said = settingOf(frame, "openings");
  return said?.kind === "map" && said.entries.some(({ key }) => squash(key.text) === "behind");
}

/** What stands in a case behind a stile: its side, or the divider that has the stile's number. */
const inCaseBehind =
  ({ text }: TextNode, backed: boolean) =>
  (stile: string): string | undefined => {
    const side = /^(left|right)-stile$/.exec(stile)?.[1];
    if (side) return `${text}.${side}-side`;
    return backed ? `${text}.${stile.replace(/stile(?=-\d+$)/, "divider")}` : undefined;
  };

/** The openings of a face frame, and which of its members a divider of a case with the same openings stands behind. */
export function framed(frame: TextNode, { settingOf, where }: Site) {
  const said = settingOf(frame, "openings");
  const division: Division | undefined = said && openings.read(said, { ...where, findings: [] });
  if (division === undefined) return undefined;
  const member = (name: string, way: Way): string => `${frame.text}.${name.replace(/divider(?=-\d+$)/, MEMBER[way])}`;
  return { division, member };
}
