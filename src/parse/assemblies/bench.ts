import { from, type Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { joinWords, measure, sizeOf, stockName, yesNoOr } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { crosses, endJoint } from "./corners.ts";

const seatSettings = settings("the seat of a bench", {
  "made of": may(stockName, "Its stock, if it is another than that of the bench."),
  slats: may(measure, "How many slats or boards lie side by side: 4 if nothing is said."),
  wide: may(sizeOf, "How wide each of them is, where its stock does not say it.", "width"),
  gap: may(measure, "The gap between two; without it they are spread from front to back."),
  join: may(joinWords, "How it is fastened to the ends: screws if nothing is said."),
});
const seatOf = byForm({
  text: made(stockName, (stock): Seat => ({ stock, said: {} })),
  map: made(seatSettings, ({ said }): Seat => ({ ...(said["made of"] && { stock: said["made of"].value }), said })),
});
interface Seat {
  readonly stock?: TextNode;
  readonly said: Fields<typeof seatSettings.keys>;
}

const endSettings = settings("the ends of a bench", {
  "made of": may(stockName, "Their stock, if it is another than that of the bench."),
  form: may(
    word(["frame", "panel"]),
    "A frame of two legs with rails between them, or a panel: a frame if nothing is said.",
  ),
  wide: may(sizeOf, "How wide legs and rails are, where their stock does not say it.", "width"),
  "in from the ends": may(measure, "How far the seat reaches past them: 3 in or 75 mm if nothing is said."),
  "set back": may(measure, "How far they stay behind the front and before the back of the seat."),
  foot: may(measure, "How high the lower rail of a frame lies: 3 1/2 in or 90 mm if nothing is said."),
  join: may(joinWords, "The joints of a frame: half laps if nothing is said."),
});

const stretcherSettings = settings("the stretchers of a bench", {
  "made of": may(stockName, "Their stock, if it is another than that of the bench."),
  count: may(measure, "How many there are: one if nothing is said."),
  wide: may(sizeOf, "How high each is on edge, where its stock does not say it.", "width"),
  up: may(
    measure,
    "How high their lower edges lie: level with the lower rails, or 1/3 of the height if nothing is said.",
  ),
  join: may(joinWords, "How they are joined to the ends: screws if nothing is said."),
});

const own = settings("a bench", {
  "made of": need(stockName, "The stock of all of it, but for what says another."),
  seat: may(seatOf, "The seat: its stock, or settings that say more."),
  ends: may(endSettings, "What it stands on."),
  stretchers: may(yesNoOr(stretcherSettings), "What holds the ends upright: one in the middle if nothing is said."),
});

type Said = Fields<typeof own.keys>;

export const bench = assembly({
  kind: "bench",
  also: [],
  meaning: "A seat of slats or boards on two ends, with stretchers.",
  makes:
    "Its parts are `slat.1`, `left-end` and `right-end`, which are frames if you like, and `stretcher`, or `stretcher.1` of several; its space `beneath` is where the ends stand.",
  settings: own,
  expand: (said: Said, site: Site): Expanded => {
    const frames = said.ends?.value.said.form?.value !== "panel";
    const entries = {
      room: { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") },
      slat: from(said.seat?.key, slats(said)),
      beneath: beneath(said, site),
      "left-end": from(said.ends?.key, end("left", said, site)),
      "right-end": from(said.ends?.key, end("right", said, site)),
    };
    // A rail that is lapped to its legs is as long as the end is deep; else the outer slats lie on legs.
    const lapped = frames && crosses(said.ends?.value.said.join?.value ?? LAPPED, site);
    const carrying = lapped ? ["left-end.top-rail", "right-end.top-rail"] : ENDS;
    const how = said.seat?.value.said.join?.value ?? { with: "screws" };
    const seat = from(said.seat?.key, { join: "slat", to: carrying, ...how });
    const braces = said.stretchers?.value;
    if (braces === false) return { entries, joints: [seat] };
    const own = typeof braces === "object" ? braces.said : {};
    const held = frames ? ["left-end.bottom-rail", "right-end.bottom-rail"] : ENDS;
    const at = said.stretchers?.key;
    return {
      entries: { ...entries, stretcher: from(at, stretcher(own, said, held, site)) },
      joints: [seat, from(at, endJoint("stretcher", held, own.join?.value ?? { with: "screws" }, site))],
    };
  },
});

const ENDS = ["left-end", "right-end"];
const LAPPED: Settings = { with: "half lap" };

/** The seat, in slats or boards from end to end. */
function slats(said: Said): Settings {
  const { stock, said: own } = said.seat?.value ?? { stock: undefined, said: {} };
  return {
    "made of": stock ?? said["made of"].value,
    as: "lying flat",
    grain: "across",
    left: "room.left",
    right: "room.right",
    top: "room.top",
    ...(own.wide && { deep: own.wide.value }),
    count: own.slats?.value ?? 4,
    spread: "deep between room.front and room.back",
    ...(own.gap ? { gap: own.gap.value } : { gaps: "inside" }),
  };
}

/** Where the ends stand: under the seat, in from its edges. */
function beneath(said: Said, { usual, write }: Site): Settings {
  const own = said.ends?.value.said;
  const past = own?.["in from the ends"]?.value ?? usual("3", "75");
  const back = own?.["set back"]?.value;
  return {
    kind: "space",
    left: write`room.left + ${past}`,
    right: write`room.right - ${past}`,
    front: back ? write`room.front + ${back}` : "room.front",
    back: back ? write`room.back - ${back}` : "room.back",
    bottom: "room.bottom",
    top: "slat.1.bottom",
  };
}

function end(face: "left" | "right", said: Said, { usual }: Site): Settings {
  const own = said.ends?.value.said;
  const stock = own?.["made of"]?.value ?? said["made of"].value;
  const place = {
    [face]: `beneath.${face}`,
    front: "beneath.front",
    back: "beneath.back",
    bottom: "beneath.bottom",
    top: "beneath.top",
  };
  if (own?.form?.value === "panel") return { "made of": stock, as: "upright", facing: face, ...place };
  return {
    kind: "frame",
    "made of": stock,
    facing: face,
    ...(own?.wide && { wide: own.wide.value }),
    foot: own?.foot?.value ?? usual("3 1/2", "90"),
    join: own?.join?.value ?? LAPPED,
    ...place,
  };
}

function stretcher(
  own: Partial<Fields<typeof stretcherSettings.keys>>,
  said: Said,
  [left, right]: readonly string[],
  { write }: Site,
): Settings {
  const frames = said.ends?.value.said.form?.value !== "panel";
  const up = own.up?.value;
  return {
    "made of": own["made of"]?.value ?? said["made of"].value,
    as: "on edge",
    facing: "front",
    left: `${left}.right`,
    right: `${right}.left`,
    bottom: up ? write`room.bottom + ${up}` : frames ? `${left}.bottom` : "room.bottom + beneath.up / 3",
    ...(own.wide && { up: own.wide.value }),
    ...(own.count
      ? { count: own.count.value, spread: "deep between beneath.front and beneath.back", gaps: "both ends" }
      : { deep: "centred on beneath" }),
  };
}
