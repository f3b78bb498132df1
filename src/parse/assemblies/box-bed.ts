import type { Span } from "../../findings/span.ts";
import { from, type Settings } from "../expand/make.ts";
import { asOfPart, joinWords, measure, sizeOf, stockName, yesNoOr } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { normaliseName } from "../names.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { endJoint } from "./corners.ts";

const slatSettings = settings("the slats of a bed", {
  "made of": need(stockName, "Their stock."),
  wide: may(sizeOf, "How wide each of them is, where their stock does not say it.", "width"),
  "most gap": may(measure, "The widest gap between two: 2 1/2 in or 60 mm if nothing is said."),
  count: may(measure, "How many there are: as many as the depth of the outside asks for if nothing is said."),
  below: may(measure, "How far they lie below the upper edges of the sides: 3 in or 75 mm if nothing is said."),
  play: may(measure, "How far they stay off the sides at each end: 1/8 in or 3 mm if nothing is said."),
  carries: may(asOfPart, "What each of them carries: a mass such as 20 lb."),
  join: may(joinWords, "How they are fastened: screws if nothing is said."),
});

const ledgerSettings = settings("the ledgers of a bed", {
  "made of": need(stockName, "Their stock."),
  wide: may(sizeOf, "How far they reach down, where their stock does not say it.", "width"),
  join: may(joinWords, "How they are joined to the sides: screws and glue if nothing is said."),
});

const middleSettings = settings("the beam in the middle of a bed", {
  "made of": need(stockName, "Its stock."),
  wide: may(sizeOf, "How far it reaches down, where its stock does not say it.", "width"),
  posts: may(
    yesNoOr(stockName),
    "The stock of a post under its middle; that of the beam if `yes`, or if nothing is said.",
  ),
  join: may(joinWords, "How it is joined to the head and the foot, and to its post: screws if nothing is said."),
});

const own = settings("a bed", {
  "made of": need(stockName, "The stock of its two sides, its head and its foot."),
  join: may(joinWords, "The joint in its four corners: screws if nothing is said."),
  slats: need(slatSettings, "The slats that the mattress lies on, from side to side."),
  ledgers: need(ledgerSettings, "Strips along the sides that the slats lie on."),
  middle: may(middleSettings, "A beam under the middle of the slats: none if nothing is said."),
});
type Said = Fields<typeof own.keys>;

/** The head is at the back. */
export const boxBed = assembly({
  kind: "box-bed",
  also: [],
  meaning: "Two sides, a head at the back and a foot, with slats on ledgers and a beam in the middle if wanted.",
  makes: "Its parts are the box `box`, `slat.1`, `left-ledger`, `right-ledger`, `middle-beam` and `post`.",
  settings: own,
  expand: (said: Said, site: Site): Expanded => {
    const { usual, write } = site;
    const [slats, ledgers] = [said.slats.value.said, said.ledgers.value.said];
    const [play, gap] = [slats.play?.value ?? usual("1/8", "3"), slats["most gap"]?.value ?? usual("2 1/2", "60")];
    const wide = slats.wide?.value ?? widthOf(slats["made of"].value, site);
    const inside = { front: "box.front-panel.back", back: "box.back-panel.front" };
    const ledger = (face: "left" | "right"): Settings => ({
      "made of": ledgers["made of"].value,
      ...(ledgers.wide && { up: ledgers.wide.value }),
      as: "on edge",
      facing: face,
      ...inside,
      ...(face === "left" ? { left: "box.left-side.right" } : { right: "box.right-side.left" }),
      top: "slat.1.bottom",
    });
    const beam = said.middle?.value.said;
    const entries: Record<string, Settings> = {
      room: { kind: "space", ...sameAs("box.room") },
      box: {
        kind: "box",
        "made of": said["made of"].value,
        "bottom panel": "no",
        join: said.join?.value ?? { with: "screws" },
        ...site.placed("across"),
        ...site.placed("deep"),
        ...site.placed("up"),
      },
      slat: from(said.slats.key, {
        "made of": slats["made of"].value,
        as: "lying flat",
        grain: "across",
        left: write`box.left-side.right + ${play}`,
        right: write`box.right-side.left - ${play}`,
        top: write`room.top - ${slats.below?.value ?? usual("3", "75")}`,
        deep: slats.wide?.value,
        // Two measures without units would be plain numbers. So many that the gaps, one more than there are slats, are no wider than asked for; the bed is no longer than the outside.
        count:
          slats.count?.value ?? write`round-up((outside.depth - ${gap}) / (${wide} + ${gap} + ${usual("0", "0")}), 1)`,
        spread: write`deep between ${inside.front} and ${inside.back}`,
        gaps: "both ends",
        ...(slats.carries && { carries: slats.carries.value }),
      }),
      "left-ledger": from(said.ledgers.key, ledger("left")),
      "right-ledger": from(said.ledgers.key, ledger("right")),
      ...(beam && middleOf(beam, inside, said.middle?.key)),
    };
    const rests = ["left-ledger", "right-ledger", ...(beam ? ["middle-beam"] : [])];
    const screws: Settings = { with: "screws" };
    const joints: Settings[] = [
      ...(["left", "right"] as const).map((face) =>
        from(said.ledgers.key, {
          ...{ join: `${face}-ledger`, to: `box.${face}-side` },
          ...(ledgers.join?.value ?? { ...screws, glue: "yes" }),
        }),
      ),
      from(said.slats.key, { join: "slat", to: rests, ...(slats.join?.value ?? { ...screws, count: "1" }) }),
    ];
    if (beam) {
      const how = beam.join?.value ?? screws;
      const at = said.middle?.key;
      joints.push(from(at, endJoint("middle-beam", ["box.front-panel", "box.back-panel"], how, site)));
      if (beam.posts?.value !== false) joints.push(from(at, { join: "post", to: "middle-beam", with: "loose" }));
    }
    return { entries, joints };
  },
});

/** The width of the boards of a stock, as a formula. */
const widthOf = (stock: TextNode, { write }: Site): TextNode => write`${normaliseName(stock.text)}.width`;

const sameAs = (name: string): Settings =>
  Object.fromEntries(["left", "right", "front", "back", "bottom", "top"].map((face) => [face, `${name}.${face}`]));

type Beam = Fields<typeof middleSettings.keys>;

/** A beam on edge from foot to head, and a post under it. */
function middleOf(beam: Beam, inside: Settings, at: Span | undefined): Record<string, Settings> {
  const posts = beam.posts?.value;
  return {
    "middle-beam": from(at, {
      "made of": beam["made of"].value,
      ...(beam.wide && { up: beam.wide.value }),
      as: "on edge",
      facing: "left",
      ...inside,
      "centred on": { across: "room" },
      top: "slat.1.bottom",
    }),
    ...(posts !== false && {
      post: from(beam.posts?.key ?? at, {
        "made of": typeof posts === "object" ? posts : beam["made of"].value,
        as: "upright",
        facing: "left",
        "centred on": { across: "middle-beam", deep: "room" },
        bottom: "room.bottom",
        top: "middle-beam.bottom",
      }),
    }),
  };
}
