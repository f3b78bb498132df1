/** What may not fit, and the cure that takes away least. Common practice, no source. */
import type { Advice } from "../model/advice.ts";
import type { Traits } from "./traits.ts";

interface Cure {
  readonly head: string | ((traits: Traits) => string);
  readonly text: string | ((traits: Traits) => string);
  readonly when: (traits: Traits) => boolean;
}

const HOUSED = ["dado", "groove", "rabbet", "tongue and groove", "sliding dovetail"] as const;
const TENONED = [
  ...(["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon"] as const),
  ...(["loose tenon", "bridle"] as const),
];

/** Gains are cut for leaves of the hinges. */
const letIn = ({ build }: Traits): boolean =>
  build.joints.some(
    ({ id, kind }) =>
      kind === "hinged" &&
      build.parts.some(({ features }) => features.some((each) => each.kind === "mortise" && each.for === id)),
  );

/** What parts go into with their whole section. */
function roomOf({ build, joined }: Traits): "dado" | "rabbet" | "groove" | "mortise" {
  const dados = new Set(build.joints.flatMap(({ id, method }) => (method === "dado" ? [id] : [])));
  const cut = build.parts.flatMap(({ features }) =>
    features.filter((each) => each.for !== null && dados.has(each.for)),
  );
  const is = (kind: string): boolean => cut.some((each) => each.kind === kind);
  if (is("dado")) return "dado";
  if ((is("rabbet") || joined("rabbet")) && !joined("groove")) return "rabbet";
  return is("mortise") && !joined("groove", "tongue and groove") ? "mortise" : "groove";
}

/** What is housed: only boards, where no panel lies free. */
const housedIn = (traits: Traits): "slat" | "panel" | "board" =>
  roomOf(traits) === "mortise"
    ? "slat"
    : traits.build.joints.some(({ kind, method }) => kind === "floating" && method === "groove") ||
        roomOf(traits) !== "groove"
      ? "panel"
      : "board";

const CURES: readonly Cure[] = [
  {
    head: (traits) => `A ${housedIn(traits)} does not go into its ${roomOf(traits)}.`,
    text: (traits) => {
      const [what, room] = [`${housedIn(traits)}’s ${roomOf(traits) === "mortise" ? "end" : "edge"}`, roomOf(traits)];
      return `Sand or plane the ${what} where it is hidden, not the ${room}: a ${room} that has become wide stays wide. If it rattles, glue a shaving or a strip of veneer into the ${room}.`;
    },
    when: ({ joined }) => joined(...HOUSED),
  },
  {
    head: "A tenon does not go in, or its shoulder stands open.",
    text: "Take thin shavings off the cheeks until it goes in by the push of a hand. If the shoulder stands open with the tenon home, look for glue or chips at the bottom, then shorten the tenon or undercut the shoulder. A tenon that has become thin gets a shaving glued on.",
    when: ({ joined }) => joined(...TENONED),
  },
  {
    head: "Fingers or dovetails do not go together, or stand open.",
    text: "Try the corner dry and look where it shines: pare there, a shaving at a time, and never on the part that was cut first. Where one stands open, glue in a thin wedge of the same wood, the grain along it, and plane it flush when the glue is hard.",
    when: ({ joined }) => joined("box joint", "dovetail"),
  },
  {
    head: "Dowels do not line up.",
    text: "Glue a dowel into the hole that is out of place, saw it off flush, and bore it anew. Do not make the hole wider.",
    when: ({ build }) => build.fasteners.some(({ kind }) => kind === "dowel"),
  },
  {
    head: "A screw turns and does not draw.",
    text: "Fill its hole with slivers of wood and glue, let that dry, bore the pilot again and drive the screw by hand.",
    when: ({ build }) => build.fasteners.some(({ kind }) => /screw/u.test(kind)) || build.hardware.length > 0,
  },
  {
    head: "The case is out of square.",
    text: ({ doors, drawers, looseBack }) =>
      `Measure both diagonals. While the glue is wet, a clamp along the longer one pulls it square. ${looseBack ? "Afterwards the back does: loosen it, push the case square, and fasten it again." : "Once it is hard it stays as it is: fit what goes into it to what is there."}${doors || drawers ? ` Every gap of a ${[...(doors ? ["door"] : []), ...(drawers ? ["drawer"] : [])].join(" or ")} depends on that.` : ""}`,
    when: ({ stores, build }) => stores && build.parts.length > 4,
  },
  {
    head: "A door stands crooked or rubs (cup hinges).",
    text: "Turn the screws on the hinges, not the wood: one moves the door sideways, one in and out, and the plates are moved up and down. Lower hinge first, then the upper. If the screws come to their ends, look whether the case is square.",
    when: ({ has }) => has("cup hinge", "cup hinge for an inset door", "cup hinge for a face frame"),
  },
  {
    head: "A door rubs or springs open (butt hinges).",
    text: (traits) =>
      `If it rubs above at its closing edge, put a strip of card behind the lower leaf${letIn(traits) ? ", or let in the upper one a shaving deeper" : ""}; below, ${letIn(traits) ? "the other way about" : "behind the upper one"}. If it springs open, ${letIn(traits) ? "the leaves lie too deep" : "the gap at the hinges is too narrow"} or a screw head stands out: put card behind. Plane the closing edge only when that is not enough, and there lean the plane inwards by two or three degrees.`,
    when: ({ has, doors }) => doors && has("butt hinge", "continuous hinge"),
  },
  {
    head: "A drawer binds or hangs loose on its slides.",
    text: ({ build }) =>
      `Measure the opening in front, in the middle and behind. Where it is wider than the slides need, put strips of card between slide and side; where it is narrower, plane down the box side${build.parts.some(({ id }) => id.endsWith("-packing")) ? " or the packing" : ""}. Both slides must lie at one height and parallel: check with a spacer, not with a tape.`,
    when: ({ has }) => has("side slide"),
  },
  {
    head: "A drawer stands askew (undermount slides).",
    text: "The adjusters at its front corners lift it and shift it sideways. Does it not lock, look whether the notches at its back are deep enough and nothing stands up under its bottom.",
    when: ({ has }) => has("undermount slide"),
  },
  {
    head: "A wooden drawer sticks.",
    text: "Look for the shiny places on sides and runners, plane only those, then rub them with wax. If it sticks in wet weather only, wait for a dry day before you plane: what is taken off is missing in winter.",
    when: ({ drawers, has }) => drawers && !has("side slide", "undermount slide"),
  },
  {
    head: "A drawer front stands crooked.",
    text: "Take its screws out from inside, plug their holes in the front with glued slivers or dowels, set it again with shims of the gap’s thickness all round, hold it with tape or a clamp, and bore and screw it anew.",
    when: ({ build }) => build.joints.some(({ setWith }) => setWith !== undefined),
  },
  {
    head: "A shelf rocks on its pins.",
    text: "One hole is too high or not deep enough. Bore it to its depth; if that is not it, bind a turn of tape round the pin that stands lowest.",
    when: ({ joined }) => joined("shelf pins"),
  },
  {
    head: "A lid drops, or does not close flat.",
    text: "A lid that drops has a support too weak for it: count the load of its label against the lid’s weight before you set it tighter. If a corner stands up, lay the lid on a flat bench: where it is twisted, move one hinge a card’s thickness in or out.",
    when: ({ lids }) => lids,
  },
  {
    head: "A glued-up panel has cupped.",
    text: "Stand it on edge for some days with air on both faces, and finish both faces alike. What is still bent is drawn flat by what fastens it, if that lets it slide. Do not plane it at once: it will move back.",
    when: ({ build }) => build.parts.some(({ making }) => (making?.boards ?? 1) > 1),
  },
  {
    head: "It rocks.",
    text: ({ onFeet }) => {
      const [feet, draw] = onFeet
        ? ["feet hang", "draw round every foot with a pencil on a block, and saw all of them to that line"]
        : [
            "corners stand off it",
            "draw a line all along the bottom with a pencil on a block, and plane down to it what stands out",
          ];
      return `Turn it by half a turn on the same spot. If other ${feet} now, the floor is uneven: put thin pieces of wood under them. If the same ${feet}, it is the piece: set it on a flat sheet, shim it until it stands plumb, ${draw}.`;
    },
    when: ({ onWall, has }) => !onWall && !has("leveller", "caster"),
  },
];

export const curesFor = (traits: Traits): readonly Advice[] =>
  CURES.filter((cure) => cure.when(traits)).map(({ head, text }) => ({
    head: typeof head === "string" ? head : head(traits),
    text: typeof text === "string" ? text : text(traits),
  }));
