/** What is said of each kind of hardware when it is put on. Common practice, no source, unless it says otherwise. */

import type { Units } from "../../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { add, less, max, subtract, ZERO } from "../../../../units/rational.ts";
import type { Design } from "../../../design.ts";
import { type FirstOfTwo, firstOfTwoStuds, heldOff, studsApart, tooShortForTwoStuds } from "../../at-the-wall.ts";
import { takesTwo } from "../../cut-list/weight.ts";
import { capital, definite, FIRST, numberWord, type Work, withArticle } from "../draft.ts";
import { beforeItIsTied, carriedOf, goesInLast, whenItHangs } from "../finishing/in-its-room.ts";
import { boredAheadText, wallBores } from "./bored-ahead.ts";
import { standsOverTexts } from "./lid-support.ts";
import { liftCaution } from "./lifting.ts";
import { strapStays } from "./strap-stays.ts";

/** Of the screw that goes into a stud. Common practice, no source. */
export const studPilot = (units: Units): Length => (units === "inch" ? inches(1, 8) : millimetres(3));

/** What is fixed to the wall with screws that want a pilot hole in its studs: in solid masonry they go into plugs. */
export const boredIntoStuds = (kind: string, { wall }: Pick<Design, "wall">): boolean =>
  kind === "wall strap" || (kind === "wall screw" && wall?.studs !== null);

interface Words {
  /** Before it is fixed to anything: told first. */
  readonly before?: (work: Work) => readonly string[];
  /** After the sentences that say where each goes. `blind`: no drill goes in behind some of its screws. */
  readonly after?: string | ((work: Work, blind: boolean) => readonly string[]);
  /** Of the step, from what it is put on. */
  readonly title?: (on: string) => string;
  readonly cautions?: readonly string[] | ((work: Work) => readonly string[]);
  /** It goes under the piece, which is turned over. */
  readonly under?: true;
  /** It is done where the piece will stand. */
  readonly inTheRoom?: true;
  /** For one piece, where it takes longer than others: its stud is found and bored, and the piece moved. */
  readonly minutes?: number;
}

const TIPS = "Furniture that tips over kills. Do not use it before it is tied to the wall.";

/** What holds a piece on a wall is more than the piece. */
export const WALL_CAUTION =
  "Whether this wall holds it is yours to judge: what it is made of, where its studs or its solid parts are, what runs inside. The screws are those of common practice for a sound wall; where local practice or rules ask for more, do that. If in doubt, ask somebody who knows the house.";

const WORDS: ReadonlyMap<string, Words> = new Map<string, Words>([
  [
    "knob",
    {
      after:
        "The screw goes in from behind. Turn it by hand until the knob is tight, then a quarter turn more: the knob must not turn.",
    },
  ],
  ["pull", { after: "Start both screws by hand before you tighten either." }],
  [
    "hook",
    { after: "The hook has its own thread. Turn it into its hole by hand until it is tight and its mouth looks up." },
  ],
  [
    "catch",
    { after: "Shut the door and look whether body and strike meet; shift the body in its slots until they do." },
  ],
  ["stop", { after: "Shut what it stops, and see that it lies flush and does not bounce." }],
  [
    "drawer stop",
    {
      after:
        "It lies inside the drawer. Screw it on so tight that it stays as it is turned, and leave it level. When the drawer has gone in half way, reach into it where it is open, and turn the stop up; level again, it lets the drawer out.",
    },
  ],
  ["foot", { under: true }],
  [
    "leveller",
    { under: true, after: "In the room turn them until a level on the piece stays in the middle both ways." },
  ],
  ["caster", { under: true, after: "Drive the screws in the corners across from each other first." }],
  [
    "lid support",
    {
      after: (work) => [
        ...standsOverTexts(work),
        "Its own instructions come first: where they set it in another place for a lid of this weight, that holds. Open the lid to several angles and let go: it has to stay at each of them. If it does not, set the support tighter or add one.",
      ],
      cautions: [
        "A lid that falls can kill a child. Do not use the chest before the support holds the lid at every angle.",
      ],
    },
  ],
  [
    "wall strap",
    {
      inTheRoom: true,
      minutes: 25,
      before: (work) => {
        const near = work.design.units === "inch" ? "4 in" : "100 mm";
        const pull = takesTwo(standingMass(work)) ? "With a second person pull" : "Pull";
        return [
          ...beforeItIsTied(work),
          `${FIRST}mark on the wall where the piece will stand, and find and mark the studs behind it. Where one is within ${near} of the place of a bracket on the piece, the wall's bracket goes on that stud, and the strap may slant. Where none is, move the piece's bracket along to the next stud, ${strapStays(work)}, and bore ${boresOf(work, "wall strap")} for it there.`,
          `${pull} the piece an arm's length from the wall.`,
        ];
      },
      after: (work) => {
        const { design, drill } = work;
        const pilot = withArticle(drill(studPilot(design.units)));
        const one = countOf(work, "wall strap") === 1;
        const straps = one ? "the strap" : "the straps";
        const stood = leavesFloor(work) ? "" : "lay under it again what made it stand level, ";
        return [
          `A strap has two brackets: this one, and one for the wall. Bore ${pilot} pilot hole into the middle of ${one ? "the" : "each"} stud, as deep as the wall screw is long, and screw on the bracket for the wall with the wall screw, no lower than the one on the piece; where a baseboard holds the piece off the wall, on a block as thick as that.`,
          `Thread ${one ? "the strap" : "each strap"} loosely through both brackets while you reach them, its end led out a hand's breadth past the nearer side or over the top: behind the piece no hand goes in. ${one ? "If it has no end to pull, close it" : "A strap without an end to pull is closed"} before, as short as lets the piece come home.`,
          `Push the piece home, ${stood}pull ${straps} tight by ${one ? "its end" : "these ends"}, and try: the top must not come forward by more than a finger's breadth.`,
          `In masonry take the plug and screw that ${one ? "the maker of the strap sells" : "the makers of the straps sell"} for such a wall and such a pull, and bore with the bit and as deep as is said with them. Plaster or board alone holds nothing.`,
        ];
      },
      cautions: (work) => [TIPS, ...(beforeItIsTied(work).length > 0 ? liftCaution(work, carriedOf(work)) : [])],
    },
  ],
  [
    "wall screw",
    {
      inTheRoom: true,
      minutes: 10,
      title: (on) => `Screw ${on} to the wall`,
      // Where it hangs follows from the studs, and the holes from where it hangs.
      before: (work) => {
        const studs = studsApart(work.design);
        const apart = studs ? `, as a rule ${work.print(studs)} apart` : "";
        return work.design.wall?.studs === null
          ? []
          : [`${FIRST}find the studs behind the place where it will hang${apart}. ${placedByStuds(work)}`.trimEnd()];
      },
      after: (work, blind) => {
        const { design, print, drill } = work;
        const hangs = design.joints.some(({ method }) => method === "hangs on") ? [] : whenItHangs(work);
        const up = whichWayUp(design, print);
        const ahead = [
          ...(up === "" ? [] : [up]),
          boredAheadText(work, blind),
          "Let a helper hold it level, mark the wall through the holes, and take it away.",
        ];
        const again = "hold it as before and drive the screws.";
        const packing = heldOff(design).map(
          ({ part, by }) =>
            `${capital(definite(work, [part]))} stands ${print(by)} clear of the wall: behind each of its screws put a piece of packing as thick as that, with a hole for the screw through it, or the screw bends the wood.`,
        );
        const move = tooShortForTwoStuds(design)
          ? "at most one lies behind so short a piece, and “At the wall” under “In the room” says how it is fixed then"
          : "move each along to the middle of a stud";
        if (design.wall?.studs === null)
          return [
            ...packing,
            ...ahead,
            ...masonryTexts(work),
            `Then ${again}`,
            `The screws are set for a wall of solid masonry, where plugs hold anywhere. Before a wall on studs they do not stay where they are drawn: ${move}.`,
            ...hangs,
          ];
        const pilot = `${withArticle(drill(studPilot(design.units)))} pilot hole as deep as its screw reaches`;
        const more =
          countOf(work, "wall screw") === 1 ? " If you find two studs behind it, drive a screw into each." : "";
        return [
          `The screws go into the studs that you found, and nowhere else: where a stud lies elsewhere than drawn, move the screw along to its middle, and bore there.${more}`,
          ...packing,
          ...(blind
            ? [...ahead, `Bore ${pilot} into the stud behind each, ${again}`]
            : [
                `${up === "" ? "" : `${up} `}Let a helper hold it level, ${wallBores(work)}, and through each ${pilot} into the stud; then drive the screws.`,
              ]),
          "A screw in plaster alone holds nothing.",
          ...hangs,
        ];
      },
      cautions: ["Look for cables and pipes in the wall before you drill.", WALL_CAUTION],
    },
  ],
]);

/** Of what is long enough for two studs in some places only: where it hangs follows from them. */
function placedByStuds(work: Work): string {
  const { design, place } = work;
  const first = firstOfTwoStuds(design);
  const datum = first && (first.beside ? `the inner face of ${definite(work, [first.beside])}` : leftOf(work, first));
  // A cleat that stood off the wall by a board would hold what hangs on it at a slope.
  const hung = design.joints.some(({ method }) => method === "hangs on");
  const board = hung
    ? ""
    : ", or, where it has to hang elsewhere, screw a board across two studs first and fix it on that";
  return first
    ? `Two lie behind it only where the middle of the first is ${place(first.from)} to ${place(first.to)} to the right of ${datum}: choose the place of the piece by that${board}. `
    : "";
}

/** What hangs may reach past what is screwed to the studs. */
function leftOf(work: Work, { part, inside, from, to }: FirstOfTwo): string {
  if (!less(ZERO, inside)) return "its left end";
  const { design, place } = work;
  const own = `the left end of ${definite(work, [part])}`;
  return design.joints.some(({ method }) => method === "hangs on")
    ? `${own}, ${place(add(from, inside))} to ${place(add(to, inside))} from the left of the piece`
    : own;
}

/** What is bored and plugged in solid masonry: the makers of plugs say with which bit, and how deep. */
function masonryTexts({ plan, print, design }: Work): readonly string[] {
  const thread = plan.hardware.find(({ item }) => item.kind === "wall screw")?.item.measures.get("thread");
  const past = design.units === "inch" ? "3/8 in" : "10 mm";
  return [
    `Take plugs that are made for what this wall is built of and for a screw ${thread ? `${print(thread)} thick` : "as thick as yours"}, as long as what of the screw goes into the wall behind the plaster; what stands on their packing holds before what is said here.`,
    `Bore the wall square with a masonry bit as wide as the plug says, and ${past} deeper than the screw comes, with hammer action in solid brick, stone or concrete only; clear out the dust, and push each plug in until it lies behind the plaster.`,
  ];
}

/** kg of what stands there when it is tied. */
function standingMass(work: Work): number {
  const later = goesInLast(work);
  return work.design.parts.reduce((so, { id }) => so + (later.has(id) ? 0 : work.mass(id)), 0);
}

const countOf = ({ plan }: Work, kind: string): number =>
  plan.hardware.filter(({ item, halfOf }) => item.kind === kind && !halfOf).length;

const leavesFloor = ({ plan }: Work): boolean => plan.hardware.some(({ item }) => item.kind === "caster");

/** Of a cleat on the wall: how it lies there, and how high the piece comes. */
function whichWayUp({ joints, parts }: Work["design"], print: Work["print"]): string {
  const cleat = joints.find(({ method }) => method === "hangs on")?.parts[1];
  const own = parts.find(({ id }) => id === cleat);
  if (!own) return "";
  const top = parts.map(({ body }) => body.high[2]).reduce(max);
  return `Its bevel looks up and towards the wall. The top of the piece comes ${print(subtract(top, own.body.high[2]))} above its upper edge.`;
}

/** "two 3/32 in holes 3/8 in deep": what is bored for one piece of a kind. */
function boresOf({ plan, drill, print }: Work, kind: string): string {
  const own = plan.hardware.find(({ item, halfOf }) => item.kind === kind && !halfOf);
  const holes = plan.holes.filter((hole) => hole.for === own?.id && hole.kind === "pilot");
  const last = holes[0]?.stages.at(-1);
  if (!last) return "its holes";
  const [n, word] = holes.length === 1 ? ["one", "hole"] : [numberWord(holes.length), "holes"];
  return `${n} ${drill(last.diameter)} ${word} ${print(last.depth)} deep`;
}

const NOTHING: Words = {};
export const fittedWords = (kind: string): Words => WORDS.get(kind) ?? NOTHING;
