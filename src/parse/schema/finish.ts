/** What the finished piece is painted, oiled or varnished with. */
import type { FinishDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { named } from "../kinds/named.ts";
import { references } from "../kinds/places.ts";
import { coverage, duration } from "../kinds/quantities.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { plainNumber, text } from "../kinds/simple.ts";
import { squash } from "../names.ts";
import { settingOf } from "../yaml/nodes.ts";

const MOST_COATS = 10;
const coats: Kind<number> = {
  words: `a whole number from 1 to ${MOST_COATS}`,
  json: { type: "integer", minimum: 1, maximum: MOST_COATS },
  read(node, where) {
    const count = plainNumber.read(node, where);
    if (count === undefined) return undefined;
    return Number.isInteger(count) && count >= 1 && count <= MOST_COATS ? count : tellWrong(where, node, coats.words);
  },
};

const surface = settings("a finish", {
  with: need(text(100), "What it is, as shops call it: hard wax oil."),
  coats: may(coats, "How many coats: 2 if nothing is said."),
  covers: may(
    coverage,
    "What it covers in one coat: 12 m2 per litre, 400 sq ft per gallon. By its kind if nothing is said.",
  ),
  dries: may(duration, "How long a coat dries before the next: 4 h. By its kind if nothing is said.", "between coats"),
  inside: may(coats, "How many coats inside, where that is not the same."),
  "keep off": may(
    text(200),
    "Where none of it may go: pin holes, seats of hinges. Of tenons, mortises, grooves and pin holes those are named that are open when it goes on.",
  ),
  "both faces alike": may(
    references,
    "What warps if its faces are not treated alike: it is finished before it is put on.",
  ),
});

type Surface = NonNullable<ReturnType<typeof surface.read>>;
const draft = (of: FinishDraft["of"], at: FinishDraft["at"], { said }: Surface): FinishDraft => ({
  at,
  of,
  with: said.with.value,
  coats: said.coats?.value ?? 2,
  ...(said.covers && { covers: said.covers.value }),
  ...(said.dries && { dries: said.dries.value }),
  ...(said.inside && { inside: said.inside.value }),
  ...(said["keep off"] && { keepOff: said["keep off"].value }),
  ...(said["both faces alike"] && { alike: said["both faces alike"].value }),
});

const REST = new Set(["everythingelse", "everything", "therest", "rest", "all"]);
const one = made(surface, (value, node) => [draft(null, node.at, value)]);
const several = made(
  named(surface, "part or group", (name) => name.length > 0),
  (entries) =>
    entries.map(({ name, at, value }) =>
      draft(REST.has(squash(name)) ? null : { path: name.split("."), at }, at, value),
    ),
);

/** `{ with: hard oil }` for the whole piece, or one for each part and group and for everything else. */
export const finish: Kind<readonly FinishDraft[]> = {
  ...byForm({ map: one }),
  words: "settings of a finish, or one for each part",
  json: { anyOf: [one.json, several.json] },
  read: (node, where) =>
    node.kind === "map" && settingOf(node, "with") === undefined ? several.read(node, where) : one.read(node, where),
};
