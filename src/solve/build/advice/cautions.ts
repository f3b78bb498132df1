/** The one catalogue of cautions; of each, when a plan gives reason for it. Common practice, no source, but where one is named. */
import { inches, toMillimetres } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import { tooSmall } from "../cut-list/planed-whole.ts";
import { sayWeight, takesTwo } from "../cut-list/weight.ts";
import { smoulders } from "../finishing/products.ts";
import type { Advice } from "../model/advice.ts";
import type { Traits } from "./traits.ts";

/** The text, or null where it does not apply. */
type Caution = readonly [head: string, text: (traits: Traits) => string | null];

const when =
  (applies: (traits: Traits) => boolean, text: string) =>
  (traits: Traits): string | null =>
    applies(traits) ? text : null;

const CAUTIONS: readonly Caution[] = [
  ["Eyes and ears.", () => "Wear safety glasses for every cut and every hole, and hearing protection beside machines."],
  ["Lungs.", () => "Saw and sand where the air moves, with the dust sucked off, and wear a dust mask."],
  [
    "Blades.",
    () =>
      "Leave the guards on, and use a push stick for narrow pieces. Unplug a machine before you change its blade or bit. Keep your hands out of the line of the cut, and hold small parts with a clamp.",
  ],
  [
    "Router.",
    when(
      ({ build }) => build.tools.some(({ tool }) => /router/iu.test(tool)),
      "Clamp the work, feed against the turn of the bit, and come to the full depth in several passes.",
    ),
  ],
  ["Short parts.", shortParts],
  [
    "Wide bits.",
    when(
      ({ build }) => build.holes.some(({ stages }) => stages.some(({ diameter }) => toMillimetres(diameter) >= 25)),
      "A bit of 1 in (25 mm) and more can catch and turn the work out of your hand: clamp it down, bore slowly, at best under a drill press.",
    ),
  ],
  [
    "Brads and staples.",
    when(
      ({ build }) => build.fasteners.some(({ kind }) => kind === "brad" || kind === "staple"),
      "They can turn in the wood and come out at a side: keep the hand that holds the part well away.",
    ),
  ],
  // Where to ask, no more: EN 12150, ANSI Z97.1 and 16 CFR 1201 are about such glass.
  [
    "Glass.",
    when(
      ({ build }) =>
        build.design.stock.some(({ name, form }) => form === "pane" && build.parts.some(({ stock }) => stock === name)),
      "Wear gloves and eye protection, and have the edges seamed where it is cut. Where people pass, children play or floors are wet, local codes may ask for safety glass: ask the glazier, who knows EN 12150, or ANSI Z97.1 and 16 CFR 1201.",
    ),
  ],
  ["Lifting.", lifting],
  [
    "Glue.",
    when(
      ({ build }) => build.steps.some(({ actions }) => actions.some((action) => action.do === "glue")),
      "Keep it off your skin and out of your eyes, and read on its label what air and warmth it needs.",
    ),
  ],
  [
    "Finish.",
    when(
      finished,
      "Work where the air moves, away from flames and sparks, with the gloves and the mask that the label names. Let it cure before food, children or animals come near.",
    ),
  ],
  [
    "Rags.",
    when(
      ({ build }) => (build.finishing ?? []).some(({ product }) => smoulders(product)),
      "Rags, pads and sanding dust that are wet with a finish that holds drying oil can catch fire by themselves, hours later. Dry them spread out of doors, or drown them in a closed metal can.",
    ),
  ],
  ["Tipping over.", tipping],
  [
    "Fixing to a wall.",
    when(
      ({ has }) => has("wall screw", "wall strap"),
      "Screw into studs or solid masonry, never into plaster alone, and find out first where wires and pipes run. If you are not sure what the wall is, ask someone who builds them.",
    ),
  ],
  // CPSC, news release of April 1, 1982, on the lids of toy chests; ASTM F834.
  [
    "Lids.",
    ({ lids, build }) => {
      if (!lids) return null;
      const airy = build.checks.filter(({ rule }) => rule === "chest-without-air");
      const air =
        airy.length === 0
          ? ""
          : airy.every(({ verdict }) => verdict === "holds")
            ? ", and never close what lets air in"
            : ". It shuts tight, and nobody can breathe in it: keep it where no child plays";
      return `A lid that falls hurts fingers and heads, and a child can climb into a chest. Keep the lid support working${air.startsWith(",") ? "," : " and"} put no latch on that locks by itself${air}.`;
    },
  ],
  [
    "Tools, hardware, glues and finishes.",
    () => "Their makers’ instructions come before anything that this plan says.",
  ],
  [
    "Where you live.",
    () =>
      "This plan cannot know the rules there, nor your walls and floors. Where people could be hurt – things high up, heavy loads, small children, fixing to a wall – ask someone who knows the local codes, and leave to those who are licensed what is theirs to do: wiring, gas, and what carries a house.",
  ],
];

function finished({ build }: Traits): boolean {
  return (build.design.finishes ?? []).length > 0;
}

/** What is shorter is drawn into a planer or off a saw's table. */
function shortParts({ build }: Traits): string | null {
  const least = build.design.units === "inch" ? "12\u202fin" : "300\u202fmm";
  const marks = build.cutList.filter(({ length }) => less(length, inches(12))).map(({ mark }) => mark);
  if (marks.length === 0) return null;
  const [who, them] = marks.length === 1 ? ["is", "it"] : ["are", "them"];
  const planed = build.blanks.some(({ planedWhole }) => planedWhole && tooSmall(planedWhole, build.design.units).short)
    ? ` What is planed of ${them} by machine stays in a longer piece until then, as the steps tell.`
    : "";
  return `${some(marks)} ${who} shorter than ${least}. At the saw hold ${them} by a clamp or a sled and not by the hand, with nothing for ${them} to jam against.${planed}`;
}

const MOST = 8;
const some = (marks: readonly string[]): string =>
  marks.length > MOST
    ? `${marks.length} of the parts`
    : [marks.slice(0, -1).join(", "), ...marks.slice(-1)].filter((each) => each !== "").join(" and ");

function lifting({ build, mass }: Traits): string | null {
  const { design, layouts } = build;
  const sheets = layouts
    .filter(({ kind, source }) => kind === "sheet" && source === "buy")
    .flatMap(({ stock, thickness, width, length }) => {
      const own = design.stock.find(({ name }) => name === stock);
      const [t, w, l] = [thickness, width, length].map((each) => toMillimetres(each) / 1000) as [
        number,
        number,
        number,
      ];
      return own ? [{ label: own.label, kg: t * w * l * own.density }] : [];
    })
    .toSorted((a, b) => b.kg - a.kg);
  const [sheet] = sheets;
  const { units } = design;
  const told = [
    ...(sheet && takesTwo(sheet.kg) ? [`A sheet of ${sheet.label} weighs about ${sayWeight(sheet.kg, units)}.`] : []),
    ...(takesTwo(mass) ? [`The finished piece weighs about ${sayWeight(mass, units)}.`] : []),
  ];
  return told.length === 0 ? null : `${told.join(" ")} Carry and turn that with a second person.`;
}

function tipping({ build, drawers, canTip, has }: Traits): string | null {
  if (!canTip) return null;
  const tied = has("wall strap")
    ? "Fix the wall strap before anything is put in, and look after it whenever the piece is moved."
    : "Tie it to the wall where children or animals could pull or climb, with a strap for your wall: see “In the room”.";
  const open = drawers ? " Open one drawer at a time." : "";
  return build.parts.length === 0 ? null : `${tied} Keep heavy things low, and nothing tempting on top.${open}`;
}

export const cautionsFor = (traits: Traits): readonly Advice[] =>
  CAUTIONS.flatMap(([head, textOf]) => {
    const text = textOf(traits);
    return text === null ? [] : [{ head, text }];
  });
