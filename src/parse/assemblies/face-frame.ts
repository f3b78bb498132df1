import type { Settings } from "../expand/make.ts";
import { list } from "../kinds/combine.ts";
import { joinWords, measure, partName, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { endJoint } from "./corners.ts";

const own = settings("a face frame", {
  "made of": need(stockName, "The stock of its stiles and rails."),
  stiles: may(measure, "How wide the stiles are: 1 1/2 in or 40 mm if nothing is said."),
  rails: may(measure, "How wide the rails are: as wide as the stiles if nothing is said."),
  "top rail": may(measure, "How wide the top rail is, if otherwise."),
  "bottom rail": may(measure, "How wide the bottom rail is, if otherwise."),
  "rails at": may(
    list(measure, "a list of heights"),
    "How high the upper edge of each rail between them is above the bottom of the frame.",
  ),
  "stiles at": may(
    list(measure, "a list of measures"),
    "How far the left edge of each stile between them is from the left of the frame, between the bottom rail and what is above it.",
  ),
  join: may(joinWords, "The joint between its members: pocket screws if nothing is said."),
  case: may(partName, "The case that it stands in front of, to which it is fixed."),
  "to the case": may(joinWords, "How it is fixed to that: glue if nothing is said."),
});
type Said = Fields<typeof own.keys>;

/** Stiles and rails in front of a case. Its openings are spaces: `opening`, or `opening-1` from the top where rails divide it. */
export const faceFrame = assembly({
  kind: "face-frame",
  also: ["face frame"],
  meaning: "Stiles and rails in front of a case, with the openings between them.",
  settings: own,
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const entries: Record<string, Settings> = {};
    const stiles = said.stiles?.value ?? write`${site.usual("1 1/2", "40")}`;
    const rails = said.rails?.value ?? stiles;
    const stock = said["made of"].value;
    const level = { front: "left-stile.front" };
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
      ...(face === "left" ? site.thin("deep", "front") : level),
    });
    entries["left-stile"] = stile("left");
    entries["right-stile"] = stile("right");
    const between = { left: "left-stile.right", right: "right-stile.left" };
    const rail = (place: Settings, wide: TextNode): Settings => ({
      ...{ "made of": stock, as: "on edge", facing: "front", ...between, ...place, up: wide, ...level },
    });
    entries["top-rail"] = rail({ top: "room.top" }, said["top rail"]?.value ?? rails);
    entries["bottom-rail"] = rail({ bottom: "room.bottom" }, said["bottom rail"]?.value ?? rails);
    const heights = said["rails at"]?.value ?? [];
    const middles = heights.map((height, i) => {
      const name = `rail-${i + 1}`;
      entries[name] = rail({ top: write`room.bottom + ${height}` }, rails);
      return name;
    });
    const rows = ["top-rail", ...middles, "bottom-rail"];
    const joints: Settings[] = [
      endJoint(rows, ["left-stile", "right-stile"], said.join?.value ?? { with: "pocket screws" }, site),
    ];
    const open = (name: string, left: string, right: string, top: string, bottom: string): void => {
      entries[name] = {
        ...{
          kind: "space",
          left: `${left}.right`,
          right: `${right}.left`,
          top: `${top}.bottom`,
          bottom: `${bottom}.top`,
        },
        // What goes in an opening may reach as far as the back of the case.
        ...{ front: "room.front", back: said.case ? write`${said.case.value}.inside.back` : "room.back" },
      };
    };
    const last = rows.length - 2;
    const uprights = (said["stiles at"]?.value ?? []).map((at, i) => {
      const name = `stile-${i + 1}`;
      entries[name] = {
        ...{ "made of": stock, as: "upright", facing: "front", left: write`room.left + ${at}`, across: stiles },
        ...{ bottom: "bottom-rail.top", top: `${rows[last]}.bottom`, ...level },
      };
      return name;
    });
    if (uprights.length > 0)
      joints.push(
        endJoint(uprights, [rows[last] as string, "bottom-rail"], said.join?.value ?? { with: "pocket screws" }, site),
      );
    for (let i = 0; i < last; i += 1)
      open(`opening-${i + 1}`, "left-stile", "right-stile", rows[i] as string, rows[i + 1] as string);
    const posts = ["left-stile", ...uprights, "right-stile"];
    for (let i = 0; i + 1 < posts.length; i += 1) {
      const name = last === 0 && posts.length === 2 ? "opening" : `opening-${last + 1 + i}`;
      open(name, posts[i] as string, posts[i + 1] as string, rows[last] as string, rows[last + 1] as string);
    }
    if (said.case) {
      const how = said["to the case"]?.value ?? { with: "glue" };
      joints.push({ join: ["left-stile", "right-stile", "top-rail", "bottom-rail"], to: said.case.value, ...how });
    }
    return { entries, joints };
  },
});
