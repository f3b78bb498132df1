/** Tools and small things that the sentences of the steps ask for. */
import type { Step } from "../../build.ts";
import type { Need, Work } from "./draft.ts";

interface Asked extends Need {
  readonly says: RegExp;
  /** Only steps of this kind count, or none of this kind. */
  readonly kind?: Step["kind"];
}

const ASKED: readonly Asked[] = [
  {
    says: /\beye protection\b/iu,
    tool: "Safety glasses, hearing protection and a dust mask",
    why: "for all that cuts",
  },
  {
    says: /\bplan(?:e|ed|ing)\b/iu,
    kind: "mill",
    tool: "Jointer and planer, or a jack plane and a try plane",
    why: "to bring rough wood to its sizes",
  },
  { says: /\bfences?\b|\byour saw\b/iu, tool: "Push stick", why: "for narrow pieces at the saw" },
  { says: /\bsand\b/iu, tool: "Sanding block", why: "to keep faces flat and edges sharp" },
  { says: /\bat even distances\b|\bevenly about\b/iu, tool: "Dividers", why: "to step off equal spaces" },
  { says: /\bstraightedge\b/iu, tool: "Long straightedge", why: "to saw along, and to prove what is flat" },
  { says: /\bplane\b/iu, tool: "Hand plane", why: "to fit, and to take off what rubs" },
  { says: /\bscrape\b/iu, tool: "Scraper", why: "to take off hard glue" },
  {
    says: /\bcauls?\b/iu,
    tool: "Cauls: straight boards, waxed or taped",
    why: "to keep panels level under the clamps",
  },
  {
    says: /\bwaxed\b|\bwax what\b|\bor wax them\b/iu,
    tool: "Candle or paste wax",
    why: "so that glue lets go, and wood slides on wood",
  },
  { says: /\b(?:brush|spread|put) glue\b/iu, tool: "Glue brush", why: "to spread glue into joints" },
  {
    says: /\bclamp the work|\bclamp the strip|\bone clamp serves/iu,
    tool: "Two small clamps",
    why: "to hold what is cut and bored",
  },
  { says: /\bhold each pair with two small clamps/iu, tool: "Four small clamps", why: "to hold cauls" },
  { says: /\btap\b/iu, tool: "Mallet, and a block of scrap", why: "to bring joints and dowels home" },
  { says: /(?<!neither a chuck nor a )\bhammer\b(?! action)/iu, tool: "Hammer", why: "for what is driven" },
  { says: /\bchisel\b/iu, tool: "Chisels", why: "to clean out corners" },
  { says: /\bawl\b/iu, tool: "Awl", why: "to start small screws and holes" },
  {
    says: /\b(?:turn|driven?|start|screw)\b[^.;]*\bby hand\b|\bunscrew|\bscrew (?:it|them|each|on|the)\b|\b(?:turn|drive|start)\b[^.]*\bscrews?\b|\bscrews? (?:goes|go)\b/iu,
    tool: "Screwdrivers",
    why: "to turn screws by hand",
  },
  { says: /\bright-angle driver\b/iu, tool: "Right-angle driver", why: "for screws with little room behind them" },
  {
    says: /\bdrill bit in an extension\b/iu,
    tool: "Extension for drill bits, 12 in (300 mm) long",
    why: "to bore where a chuck has no room",
  },
  { says: /\btape [^.]* to the pins\b/iu, tool: "Masking tape", why: "to hold what lies loose while it is carried" },
  {
    says: /\boffset screwdriver\b|\boffset one\b/iu,
    tool: "Offset screwdriver",
    why: "for screws that no drill gets behind",
  },
  { says: /\bstubby screwdriver\b/iu, tool: "Stubby screwdriver", why: "for screws with little room behind them" },
  {
    says: /\bguide the drill square\b/iu,
    tool: "Drill guide, or a block bored square under a drill press",
    why: "so that holes in faces stand square",
  },
  { says: /\bstuds?\b/iu, tool: "Stud finder", why: "to find what holds in the wall" },
  {
    says: /\bmasonry bit\b/iu,
    tool: "Hammer drill and a masonry bit, as wide as the plugs name it",
    why: "to bore the wall",
  },
  { says: /\blevel (?:on|along|stays|until)\b|\bhold it level\b/iu, tool: "Level", why: "to set the piece up" },
  { says: /\bblanket\b/iu, tool: "Blanket", why: "to lay the work on" },
  { says: /\bsticks between\b/iu, tool: "Sticks of one thickness", why: "to let air between what rests" },
  { says: /\bgloves that glass\b/iu, tool: "Gloves that glass does not cut", why: "to carry panes" },
  { says: /\bwear gloves(?! that glass)\b/iu, tool: "Gloves", why: "for finish, as the can says" },
  { says: /\bbrush it\b|\bbrush or\b/iu, tool: "Brush or roller", why: "to put on the finish" },
  { says: /\bwipe off (?:there )?what squeezes\b/iu, tool: "Damp rag", why: "to wipe off glue" },
  { says: /\bwith a damp rag\b/iu, tool: "Damp rag", why: "to raise the grain before the finish" },
  { says: /\bhousehold iron\b/iu, tool: "Household iron, and a block of wood", why: "to put on edging" },
  { says: /\bmasking tape drawn tight\b/iu, tool: "Masking tape", why: "to hold edging" },
  {
    says: /\bor with tape\b|\btape (?:them|its edges)\b/iu,
    tool: "Masking tape",
    why: "to keep finish off",
  },
  {
    says: /\brub it\b|\bpad it\b|\bwipe off (?:all|the rest)\b/iu,
    tool: "Rags that leave no lint",
    why: "to put finish on and wipe it off",
  },
];

export function askedFor(steps: readonly Step[]): readonly Need[] {
  return ASKED.flatMap(({ says, kind, tool, why }) =>
    steps.some(
      (step) =>
        (kind === undefined || step.kind === kind) &&
        [...step.text, ...step.cautions, ...step.reminders].some((sentence) => says.test(sentence)),
    )
      ? [{ tool, why }]
      : [],
  );
}

/** kg: what is carried about stands nowhere level. */
const CARRIED = 5;

/** What pages beside the steps ask for: sheets are measured, and what stands on the floor is set level. */
export function askedBeside({ design, mass }: Work): readonly Need[] {
  const used = new Set(design.parts.map(({ stock }) => stock));
  const sheets = design.stock.some(({ name, form }) => form === "sheet" && used.has(name));
  const kinds = new Set(design.fittings.flatMap(({ hardware }) => hardware.map(({ item }) => item.kind)));
  return [
    ...(sheets
      ? [
          {
            tool: "Circular saw with a guide rail or straightedge, and boards to lay sheets on",
            why: "to break sheets down before they go to a table saw",
          },
        ]
      : []),
    ...(sheets ? [{ tool: "Caliper", why: "to measure how thick sheets are; ten offcuts in a stack will do" }] : []),
    ...(kinds.has("caster") || design.parts.reduce((so, { id }) => so + mass(id), 0) < CARRIED
      ? []
      : [{ tool: "Level", why: "to set the piece up" }]),
  ];
}
