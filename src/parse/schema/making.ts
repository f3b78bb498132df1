import type { BandingDraft, CutDraft, Face, RoughDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { FACES, faces, references } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, formulaIn, plainNumber, text, word, yesNo } from "../kinds/simple.ts";
import { slice } from "../yaml/nodes.ts";

/** No part is glued up from more pieces than this in one direction. */
const MOST_PIECES = 20;

const pieces: Kind<number> = {
  words: `a whole number from 2 to ${MOST_PIECES}`,
  json: { type: "integer", minimum: 2, maximum: MOST_PIECES },
  read(node, where) {
    const number = plainNumber.read(node, where);
    if (number === undefined) return undefined;
    return Number.isInteger(number) && number >= 2 && number <= MOST_PIECES
      ? number
      : tellWrong(where, node, this.words);
  },
};

const bands = settings("edge banding", {
  edges: need(faces, "The edges and ends that are banded, by their faces.", "edge"),
  with: may(text(60), "What they are banded with: maple edging."),
  thick: may(formula, "How thick the band is: 0.02 in or 0.5 mm if nothing is said.", "thickness"),
  deducted: may(yesNo, "Whether the part is cut smaller by the band. It is wherever the edge bounds a fit."),
});

const banding = byForm({
  text: made(faces, (edges: readonly Face[], node): BandingDraft => ({ at: node.at, edges })),
  list: made(faces, (edges: readonly Face[], node): BandingDraft => ({ at: node.at, edges })),
  map: made(
    bands,
    ({ at, said }): BandingDraft => ({
      at,
      edges: said.edges.value,
      ...(said.with && { item: said.with.value }),
      ...(said.thick && { thick: said.thick.value }),
      ...(said.deducted && { deducted: said.deducted }),
    }),
  ),
});

const CUT_WORDS = "`from the list`, `to the opening`, `to the piece`, or such as `over by 1/16, then flush`";

/** How a part comes to its size. */
const cut: Kind<CutDraft> = {
  words: CUT_WORDS,
  json: { type: "string", pattern: "^(from the list|to the opening|to the piece|over by .+)$" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, CUT_WORDS);
    const said = node.text.trim().toLowerCase().replace(/\s+/g, " ");
    if (said === "from the list") return { at: node.at, how: "list" };
    if (said === "to the opening") return { at: node.at, how: "opening" };
    if (said === "to the piece") return { at: node.at, how: "piece" };
    const words = slice(node, 0);
    const over = /^over\s+by\s+/i.exec(words.text);
    if (over === null) return tellWrong(where, node, CUT_WORDS);
    const end = /\s*,?\s*then\s+.*$/i.exec(words.text)?.index ?? words.text.length;
    const by = formulaIn(slice(words, over[0].length, end), where);
    return by === undefined ? undefined : { at: node.at, how: "over", by };
  },
};

const goodFace = word(["inside", "outside", "both", ...FACES], { "both faces": "both", "both sides": "both" });

/** What a part is made from and how it comes to its size. */
export const making = {
  boards: may(pieces, "How many boards it is glued up from, edge to edge."),
  layers: may(pieces, "How many layers it is glued up from, face to face."),
  "edge banding": may(banding, "Edges that get a band: front, or settings.", "bands", "banding"),
  "from one strip": may(text(60), "The strip that it is cut from in one row with others, by a name of your own."),
  alike: may(references, "Parts that have to come from the same sheet as this one."),
  cut: may(cut, `How it comes to its size: ${CUT_WORDS}.`),
  "good face": may(goodFace, "The face that is to be seen: inside, outside, both, or a face.", "show face"),
};

const more = {
  longer: may(formula, "How much longer."),
  wider: may(formula, "How much wider."),
  thicker: may(formula, "How much thicker."),
};
const slabs = settings("rough sizes of slabs", {
  ...more,
  "each board wider": may(formula, "How much wider each board is before its edges are jointed."),
});

const roughSettings = settings("rough sizes", {
  parts: may(
    settings("rough sizes of parts", more),
    "What solid parts are sawn over their size, before they are planed.",
  ),
  slabs: may(slabs, "What glued-up parts are left over their size until they are flat."),
  legs: may(settings("rough sizes of legs", more), "The same for parts as thick as they are wide."),
});

/** How much larger than finished wood is sawn from the board. */
export const rough: Kind<RoughDraft> = made(roughSettings, ({ at, said }): RoughDraft => {
  const of = (found: { readonly longer?: Field; readonly wider?: Field; readonly thicker?: Field } | undefined) => ({
    ...(found?.longer && { longer: found.longer.value }),
    ...(found?.wider && { wider: found.wider.value }),
    ...(found?.thicker && { thicker: found.thicker.value }),
  });
  const each = said.slabs?.value.said["each board wider"];
  return {
    at,
    parts: of(said.parts?.value.said),
    slabs: { ...of(said.slabs?.value.said), ...(each && { eachBoardWider: each.value }) },
    legs: of((said.legs ?? said.parts)?.value.said),
  };
});
type Field = { readonly value: NonNullable<RoughDraft["parts"]["longer"]> };
