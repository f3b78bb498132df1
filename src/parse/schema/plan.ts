import { planVersion } from "../../findings/rules/plan-version.ts";
import { oneOrList } from "../kinds/combine.ts";
import { type Kind, tell, tellWrong } from "../kinds/kind.ts";
import { reference } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, text, word } from "../kinds/simple.ts";
import { allow, toolsOwned } from "./accept.ts";
import { choices } from "./choices.ts";
import { finish } from "./finish.ts";
import { fittings } from "./fittings.ts";
import { hardware } from "./hardware.ts";
import { joints } from "./joints.ts";
import { rough } from "./making.ts";
import { notes, order } from "./order.ts";
import { definitions, includedNames } from "./own-assembly.ts";
import { piece } from "./piece.ts";
import { outside, sizes } from "./sizes.ts";
import { stock } from "./stock.ts";
import { carries, place, usedFor, wall } from "./use.ts";

const version: Kind<1> = {
  words: "1",
  json: { const: 1 },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, "1");
    return node.text.trim() === "1" ? 1 : tell(where, node, planVersion(node.at, { found: node.text }));
  },
};

/** Top-level settings that the language has and this version does not read. */
const LATER = ["photos", "defaults", "words", "built"];

/** The whole source. */
export const plan = settings(
  "a plan",
  {
    plan: need(version, "The version of the language."),
    title: need(text(200), "The name of the piece."),
    subtitle: may(text(300), "A line below the title."),
    by: may(text(200), "Who made the plan.", "author"),
    summary: may(text(2000), "A few sentences about the piece."),
    edition: may(text(100), "The number or date of this edition."),
    credits: may(oneOrList(text(300)), "Who else had a part in it: photographs, prototype, corrections."),
    rights: may(text(3000), "Who may build it, sell what is built, and pass the plan on."),
    support: may(text(1000), "Where a reader asks, and where corrections are found."),
    units: may(
      word(["inch", "mm"], { in: "inch", inches: "inch", metric: "mm" }),
      "The units of numbers without a unit: inches if nothing is said.",
    ),
    precision: may(formula, "The smallest step that the reader is asked to mark: 1/16 in or 1 mm if nothing is said."),
    fits: may(formula, "The finer step for what goes in between two things: that of `precision` if nothing is said."),
    kerf: may(formula, "What the saw takes away: 1/8 in or 3.2 mm if nothing is said."),
    outside: may(outside, "Width, depth and height over everything."),
    sizes: may(sizes, "Measures with names."),
    choices: may(choices, "What a reader may choose."),
    include: may(includedNames, "Other YAML files of the plan's folder whose tables it takes over."),
    assemblies: may(definitions, "Assemblies of the plan's own."),
    hold: may(
      reference,
      "What stays when stock measures otherwise than drawn: outside if nothing is said, inside, or an opening.",
    ),
    stock: need(stock, "What the parts are cut from, by names of your own.", "materials"),
    piece: need(piece, "The parts, and groups of parts."),
    hardware: may(hardware, "Hinges, slides, knobs and the like, by names of your own, with the measures that decide."),
    joints: may(joints, "How the parts are joined."),
    fittings: may(fittings, "Hardware that is fixed to a part: knobs, catches, feet."),
    place: may(place, "Where it will stand, which decides how far wood moves: a heated house if nothing is said."),
    wall: may(
      wall,
      "What it hangs on: studs, with { studs apart: 16 } where they are another distance apart; or solid, where a screw holds anywhere.",
    ),
    carries: may(carries, "What each part that lies flat carries: books, or a mass such as 6 kg each."),
    "used for": may(usedFor, "Who sits on it: { seats: 3, each weighs: 200 lb }."),
    "tools owned": may(toolsOwned, "The bits that there are; without it, whatever is sold."),
    allow: may(allow, "Findings that you accept, each with the reason.", "accept"),
    finish: may(finish, "What the piece is finished with: { with: hard oil, coats: 2 }, or so for each part."),
    order: may(order, "Your wishes about the order of work: { this: mortises, before: tapers }."),
    notes: may(notes, "Words of your own for the reader, with the part or work that they are about."),
    "rough sizes": may(rough, "How much larger than finished solid wood is sawn from the board."),
  },
  LATER,
);
