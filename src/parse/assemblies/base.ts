import { from, type Settings } from "../expand/make.ts";
import { joinWords, measure, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { endJoint } from "./corners.ts";

const own = settings("a base", {
  "made of": need(stockName, "The stock of its boards, or of its feet."),
  form: may(
    word(["plinth", "toe-kick", "feet"], { "toe kick": "toe-kick" }),
    "A plinth if nothing is said; a toe-kick is a plinth of which the front is set back; feet are four square blocks.",
  ),
  corners: may(
    word(["front and back over sides", "front and back between sides", "mitred in front"], {
      over: "front and back over sides",
      between: "front and back between sides",
      mitred: "mitred in front",
      mitered: "mitred in front",
      "mitered in front": "mitred in front",
    }),
    "Which boards run through: front and back over the sides, if nothing is said.",
  ),
  "in at the front": may(
    measure,
    "How far its front stays behind the front of what stands on it: 3 in or 75 mm for a toe-kick, 3/4 in or 20 mm under a box, else nothing.",
  ),
  "in at the sides": may(
    measure,
    "How far it stays in at the left and at the right: 3/4 in or 20 mm under a case or a box, else nothing, if nothing is said.",
  ),
  "in at the back": may(
    measure,
    "How far it stays in at the back: 1 in or 25 mm under a case or a box, else nothing, if nothing is said.",
  ),
  bearers: may(measure, "How many boards run from front to back inside it."),
  "foot size": may(sizeOf, "How wide and deep a foot is, where its stock does not say it."),
  join: may(joinWords, "How its boards are joined: screws if nothing is said."),
});

type Said = Fields<typeof own.keys>;

export const base = assembly({
  kind: "base",
  also: ["plinth", "toe-kick"],
  meaning: "What a piece stands on: four boards on edge, or feet.",
  makes:
    "Its parts are `front-board`, `back-board`, `left-board`, `right-board` and `bearer.1`, or `front-left-foot`, `front-right-foot`, `back-left-foot`, `back-right-foot`; its space `footprint` is where it stands.",
  settings: own,
  expand: (said: Said, site: Site): Expanded => {
    const room = { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") };
    const entries = { room, footprint: footprint(said, site) };
    return said.form?.value === "feet"
      ? { entries: { ...entries, ...feet(said) }, joints: [] }
      : boards(said, site, entries);
  },
});

/** What is left of the room where the base stays in. */
function footprint(said: Said, { usual, write, carries }: Site): Settings {
  const kind = carries?.assembly?.kind;
  // It stays clear of the joints of the sides and the back above it, of a skirting behind it, and of the front wall of a box, so that it can be screwed on from inside.
  const inset = kind === "case" || kind === "box" ? { sides: usual("3/4", "20"), back: usual("1", "25") } : null;
  const kick = said.form?.value === "toe-kick" ? usual("3", "75") : null;
  const front = said["in at the front"]?.value ?? kick ?? (kind === "box" ? inset?.sides : null);
  const sides = said["in at the sides"]?.value ?? inset?.sides;
  const back = said["in at the back"]?.value ?? inset?.back;
  return {
    kind: "space",
    left: sides ? write`room.left + ${sides}` : "room.left",
    right: sides ? write`room.right - ${sides}` : "room.right",
    front: front ? write`room.front + ${front}` : "room.front",
    back: back ? write`room.back - ${back}` : "room.back",
    bottom: "room.bottom",
    top: "room.top",
  };
}

/** Four boards on edge, and bearers between front and back. */
function boards(said: Said, site: Site, spaces: Record<string, Settings>): Expanded {
  const { write } = site;
  const corners = said.corners?.value ?? "front and back over sides";
  const made = said["made of"].value;
  const join: Settings = said.join?.value ?? { with: "screws" };
  const height = { bottom: "footprint.bottom", top: "footprint.top" };
  const through = { left: "footprint.left", right: "footprint.right" };
  const within = { left: "left-board.right", right: "right-board.left" };
  const mitred = corners === "mitred in front";
  const over = corners === "front and back over sides";
  const board = (face: "left" | "right" | "front" | "back", rest: Settings): Settings => ({
    "made of": made,
    as: "on edge",
    facing: face,
    ...height,
    ...rest,
    [face]: write`footprint.${face}`,
  });
  const side = {
    front: over ? "front-board.back" : "footprint.front",
    back: over ? "back-board.front" : "footprint.back",
  };
  const entries: Record<string, Settings> = {
    ...spaces,
    "front-board": board("front", over || mitred ? through : within),
    "back-board": board("back", over ? through : within),
    "left-board": board("left", side),
    "right-board": board("right", side),
  };
  const sides = ["left-board", "right-board"];
  const joints: Settings[] = mitred
    ? [{ join: "front-board", to: sides, with: "mitre", glue: "yes" }, endJoint("back-board", sides, join, site)]
    : [over ? endJoint(sides, FRONT_BACK, join, site) : endJoint(FRONT_BACK, sides, join, site)];
  if (said.bearers) {
    entries.bearer = from(said.bearers.key, {
      "made of": made,
      as: "on edge",
      facing: "left",
      ...height,
      front: "front-board.back",
      back: "back-board.front",
      count: said.bearers.value,
      spread: "across between left-board.right and right-board.left",
    });
    joints.push(from(said.bearers.key, endJoint("bearer", FRONT_BACK, join, site)));
  }
  return { entries, joints };
}

const FRONT_BACK = ["front-board", "back-board"];

/** Four blocks, one in each corner. */
function feet(said: Said): Record<string, Settings> {
  const size = said["foot size"]?.value;
  return Object.fromEntries(
    (["front", "back"] as const).flatMap((deep) =>
      (["left", "right"] as const).map((across) => [
        `${deep}-${across}-foot`,
        {
          "made of": said["made of"].value,
          as: "upright",
          facing: "front",
          ...(size && { across: size }),
          ...(size && { deep: size }),
          [across]: `footprint.${across}`,
          [deep]: `footprint.${deep}`,
          bottom: "footprint.bottom",
          top: "footprint.top",
        },
      ]),
    ),
  );
}
