import { missingKey } from "../../findings/rules/missing-key.ts";
import { from, type Settings } from "../expand/make.ts";
import { tell } from "../kinds/kind.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { addBottom, addWalls, cornersOf, roomOf } from "./drawer/box.ts";
import { frontIn, frontJoint, pullsOf, stopOf } from "./drawer/front.ts";
import { runsOf } from "./drawer/runs.ts";
import { drawerSettings, type Front, type Said } from "./drawer/settings.ts";
import { comesToSize, TO_OPENING, within } from "./making.ts";

/** A box on slides or runners, with a front of its own or one screwed to it. */
export const drawer = assembly({
  kind: "drawer",
  also: [],
  meaning: "A box on slides or wooden runners in an opening, with its front and its pull.",
  makes:
    "Its parts are `left-side`, `right-side`, `box-front`, `box-back`, `bottom-panel`, `false-front`, `left-runner`, `right-runner`, `left-packing` and `right-packing`.",
  settings: drawerSettings,
  moves: true,
  expand: (said: Said, site: Site): Expanded => {
    if (!said.walls && !said["runs on"]) tellNoWalls(said, site);
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
    const between = own?.["between the sides"]?.value === true;
    const begins = between ? `${name}.front` : (placed?.behind ?? `${said.in.value.text}.front`);
    entries.room = roomOf(said, runs, corners, begins, site);
    const { floor, standsOn } = within(said.bottom?.key, making, (inner) => addBottom(said, runs, inner));
    // On runners the front is as wide and high as the box that fills its opening.
    const sized = own && placed && runs.kind === "wood" && (own.lies?.value ?? "inset") === "inset";
    const fills: Settings = sized
      ? {
          left: "room.left",
          right: "room.right",
          bottom: lowerEdge(floor, own, corners.crossing || !said["runs on"], site),
          top: "room.top",
        }
      : {};
    const walls =
      own && placed ? from(said.front?.key, { ...placed.part, ...fills, ...(between && pastSides(own, site)) }) : null;
    addWalls(said, runs, corners, walls, floor, making);
    const inset = (front?.lies?.value ?? "inset") === "inset";
    const cut = said.cut?.value ?? (own && !inset ? undefined : TO_OPENING);
    comesToSize(entries, cut);
    if (front && placed && !own) {
      const later = front.cut?.value ?? (inset ? cut : undefined);
      entries["false-front"] = from(said.front?.key, { ...placed.part, ...(later !== undefined && { cut: later }) });
      joints.push(from(said.front?.key, frontJoint(front, site)));
    }
    const runsBy = said.slides ?? said.runners ?? said["runs on"];
    within(runsBy?.key, making, (inner) => runs.add(inner.entries, inner.joints, standsOn));
    const fittings = [
      ...pullsOf(said, front ? name : "box-front", site).map((each) => from(said.pull?.key, each)),
      ...stopOf(said, runs, site).map((each) => from(said.stop?.key, each)),
    ];
    return { entries, joints, fittings };
  },
});

/** Slides and runners are screwed to something; only a drawer that is written in an opening finds it by itself. */
const tellNoWalls = ({ in: { value } }: Said, { where }: Site): undefined =>
  tell(
    where,
    value,
    missingKey(value.at, {
      ...{ what: "a drawer that stands by itself", key: "walls", value: "{ left: …, right: … }" },
      or: "write the drawer in an opening of its case: `openings: { down: [{ drawer: { … } }] }`",
    }),
  );

/** The lower edge of a front: it may reach down below its box; where that runs on a panel the front stays clear of it, but for tails, which want it level. */
function lowerEdge(floor: string, front: Front, level: boolean, { usual, write }: Site): Settings[string] {
  const by = front["hangs down"]?.value;
  if (by) return write`${floor} - ${by}`;
  if (level) return write`${floor}`;
  return write`${floor} + ${front.gap?.value ?? usual("1/16", "1.5")}`;
}

/** A front between the sides makes room for them where it is wider than the box is inside. */
const pastSides = (front: Front, { write }: Site): Settings =>
  front["hangs down"]
    ? {
        notch: (["left", "right"] as const).map((side) => ({
          ...{ at: `${side} top`, wide: write`${side}-side.across`, deep: write`${side}-side.up` },
        })),
      }
    : { left: "left-side.right", right: "right-side.left" };
