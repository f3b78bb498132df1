import type { Settings } from "../expand/make.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { addBottom, addWalls, cornersOf, roomOf } from "./drawer/box.ts";
import { frontIn, frontJoint, pullsOf, stopOf } from "./drawer/front.ts";
import { runsOf } from "./drawer/runs.ts";
import { drawerSettings, type Said } from "./drawer/settings.ts";

/** A box on slides or runners, with a front of its own or one screwed to it. */
export const drawer = assembly({
  kind: "drawer",
  also: [],
  meaning: "A box on slides or wooden runners in an opening, with its front and its pull.",
  settings: drawerSettings,
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const runs = runsOf(said, site);
    const value = said.front?.value;
    const front = typeof value === "object" ? value : null;
    const own = front?.["is the box front"]?.value === true ? front : null;
    const name = own ? "box-front" : "false-front";
    const placed = front && frontIn(front, name, said, own !== null && runs.kind === "wood", site);
    const corners = cornersOf(said, own, site);
    const entries: Record<string, Settings> = {};
    const joints: Settings[] = [];
    const making = { entries, joints, site };
    const begins = placed?.behind ?? `${said.in.value.text}.front`;
    entries.room = roomOf(said, runs, corners, begins, site);
    const { floor, standsOn } = addBottom(said, runs, making);
    // On runners the front is as wide and high as the box that fills its opening.
    const sized = own && placed && runs.kind === "wood" && (own.lies?.value ?? "inset") === "inset";
    const fills: Settings = sized
      ? { left: "room.left", right: "room.right", bottom: write`${floor}`, top: "room.top" }
      : {};
    addWalls(said, runs, corners, own && placed ? { ...placed.part, ...fills } : null, floor, making);
    if (front && placed && !own) {
      entries["false-front"] = placed.part;
      joints.push(frontJoint(front, site));
    }
    runs.add(entries, joints, standsOn);
    const fittings = [...pullsOf(said, front ? name : "box-front", site), ...stopOf(said, site)];
    return { entries, joints, fittings };
  },
});
