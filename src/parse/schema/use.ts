/** What the piece is for: where it stands, what it carries, who sits on it. */
import type { LoadDraft, SeatsDraft, SiteDraft, WallDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { reference } from "../kinds/places.ts";
import { mass, percentRange, temperature } from "../kinds/quantities.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, plainNumber, word } from "../kinds/simple.ts";

const named = made(
  word(["heated house", "dry desert", "damp coast", "unheated porch"], {
    house: "heated house",
    indoors: "heated house",
    desert: "dry desert",
    coast: "damp coast",
    porch: "unheated porch",
    garage: "unheated porch",
    shed: "unheated porch",
  }),
  (name, node): SiteDraft => ({ name, at: node.at }),
);

const air = settings(
  "a place",
  {
    humidity: need(
      percentRange,
      "The relative humidity of its air, from the driest to the dampest season: 30 to 60 %.",
    ),
    temperature: may(temperature, "The temperature of its air: 20 C or 68 F. 20 C if nothing is said."),
  },
  ["skirting"],
);

/** Where the piece will stand. */
export const place: Kind<SiteDraft> = byForm({
  text: named,
  map: made(
    air,
    ({ at, said }): SiteDraft => ({ humidity: said.humidity.value, celsius: said.temperature?.value ?? 20, at }),
  ),
});

const studs = settings("a wall", {
  "studs apart": may(formula, "From the middle of one stud to that of the next: 16 in or 400 mm if nothing is said."),
});

/** What the piece hangs on. */
export const wall: Kind<WallDraft> = byForm({
  text: made(
    word(["studs", "solid"], { masonry: "solid", brick: "solid", concrete: "solid", boards: "solid" }),
    (of, node): WallDraft => ({ of, at: node.at }),
  ),
  map: made(
    studs,
    ({ at, said }): WallDraft => ({
      ...{ of: "studs", at },
      ...(said["studs apart"] && { apart: said["studs apart"].value }),
    }),
  ),
});

const loadWord = word(["books", "jars", "shoes", "clothes", "nothing"]);

/** `books`, or a mass. */
export const carries: Kind<LoadDraft> = {
  words: "books, jars, shoes, clothes, nothing, or a mass such as 40 lb or 6 kg each",
  json: { anyOf: [loadWord.json, mass.json] },
  read(node, where) {
    if (node.kind === "text" && /^\s*\p{L}/u.test(node.text)) {
      const name = loadWord.read(node, where);
      return name === undefined ? undefined : { name };
    }
    const kilograms = mass.read(node, where);
    return kilograms === undefined ? undefined : { kilograms };
  },
};

const seats = settings("what a piece is used for", {
  seats: need(plainNumber, "For how many people there is room to sit."),
  "each weighs": may(mass, "What each of them weighs: 200 lb if nothing is said.", "each"),
  on: may(reference, "The part that they sit on; without it, whatever lies flat and highest."),
});

/** Who sits on it. */
export const usedFor: Kind<SeatsDraft> = made(
  seats,
  ({ at, said }): SeatsDraft => ({
    at,
    seats: said.seats,
    ...(said["each weighs"] && { eachWeighs: said["each weighs"].value }),
    ...(said.on && { on: said.on.value }),
  }),
);
