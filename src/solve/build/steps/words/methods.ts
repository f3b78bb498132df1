import type { Joint } from "../../../design.ts";
import { type Sentence, sentence } from "../sentence.ts";
import type { SlideRoom } from "./slide-room.ts";

/** Who is joined, by name. */
interface Sides {
  readonly everything: string;
  /** The mortises that tenons go into now, and in what. */
  readonly receiving: string;
  readonly these: string;
  readonly those: string;
  readonly glued: boolean;
  /** Its clamps close it, and no pegs that pull. */
  readonly clamped: boolean;
  readonly wedged: boolean;
  /** Screws or nails pull every joint together. */
  readonly drawn: boolean;
  /** Several bodies come one after another. */
  readonly several: boolean;
  /** Of slides: the room beside them, and what they want. */
  readonly room: SlideRoom | null;
  /** Where the glue keeps off, after the words that tell where it is spread. */
  readonly bare: string;
}
type Words = (sides: Sides) => readonly Sentence[];

const glue = (words: string): Sentence => sentence(words, { glues: true });
const clamp = (words: string, later: string | null = null): Sentence => sentence(words, { clamps: { later } });
const bring = (words: string): Sentence => sentence(words, { brings: "together" });
/** A push that closes, and ends with its clamps where it is glued. */
const pushed = (push: string, glued: boolean): Sentence =>
  glued ? sentence(`${push} and clamp.`, { clamps: { later: `${push}.` }, brings: "together" }) : bring(`${push}.`);

const when = (glued: boolean, ...texts: readonly Sentence[]): readonly Sentence[] => (glued ? texts : []);

const tenon: Words = ({ everything, receiving, glued, wedged }) => [
  ...when(glued, glue(`Brush glue into the ${receiving}; thinly on the tenons too.`)),
  bring(`Push ${everything} together until every shoulder is tight.`),
  ...when(glued, clamp("Clamp across each joint.")),
  ...when(wedged, "Drive a glued wedge into each kerf of the tenons, by turns, and trim flush when dry."),
];
const mitred: Words = ({ everything, glued }) => [
  ...when(glued, glue("Spread glue on the mitres; let the first coat soak into the end grain, then spread a second.")),
  bring(`Bring ${everything} together until the mitres close from the outer edge to the inner one.`),
  ...when(glued, clamp("Clamp round the whole, with blocks at the corners.")),
];
/** `clamped`: which way, and what keeps the cauls off the ends that come through. */
const fitted =
  (what: string, clamped: string): Words =>
  ({ everything, glued }) => [
    ...when(glued, glue(`Brush glue thinly on the sides of the ${what}.`)),
    bring(`Tap ${everything} together with a block of scrap until the ${what} are home.`),
    ...when(glued, clamp(clamped)),
  ];
/** Clamps that are counted; or one that holds a joint until it is fastened. */
function pressed(what: string, drawn: boolean): Sentence {
  if (!drawn) return clamp(`Clamp each ${what}, with a piece of scrap under the clamp.`);
  const held = `Hold each ${what} with a clamp, a piece of scrap under it, until it is fastened: one clamp serves, ${what} after ${what}.`;
  return clamp(held, held);
}
const slotted =
  (what: string): Words =>
  ({ everything, glued }) => [
    ...when(glued, glue(`Brush glue into the slots, and set the ${what} in.`)),
    pushed(`Push ${everything} together`, glued),
  ];

/** Pegs hold what its clamps have closed. */
const breadboard = (push: string): Sentence => {
  const turned =
    "Turn the clamps by turns until the shoulder is tight all along, then drive the pegs, without glue but for a drop under the last 1/8 in (3 mm) of each: it may hold in the face of the end, not in the tongue that slides.";
  return sentence(`${push} and clamp. ${turned}`, { clamps: { later: `${push}. ${turned}` }, brings: "together" });
};

/** What is done at the moment that a joint closes, by method; others are set against each other. */
export const METHOD_WORDS: Readonly<Partial<Record<Joint["method"], Words>>> = {
  "mortise and tenon": tenon,
  "through tenon": tenon,
  "haunched tenon": tenon,
  "drawbored tenon": ({ everything, receiving, glued }) => [
    ...when(glued, glue(`Brush glue into the ${receiving}; thinly on the tenons too.`)),
    bring(`Push ${everything} together until the shoulders are nearly tight: the pegs draw them home.`),
  ],
  "loose tenon": slotted("loose tenons"),
  spline: slotted("splines"),
  biscuits: slotted("biscuits"),
  bridle: ({ everything, glued, drawn }) => [
    ...when(glued, glue("Brush glue on the cheeks.")),
    bring(`Push ${everything} together until the faces are flush.`),
    ...when(glued, pressed("cheek", drawn)),
  ],
  "half lap": ({ everything, glued, drawn }) => [
    ...when(glued, glue("Spread glue on the laps.")),
    bring(`Press ${everything} together at the laps until the faces are flush.`),
    ...when(glued, pressed("lap", drawn)),
  ],
  mitre: mitred,
  "splined mitre": (sides) => [
    ...when(sides.glued, "Glue the splines into one part of each corner."),
    ...mitred(sides),
  ],
  "keyed mitre": mitred,
  "box joint": fitted(
    "fingers",
    "Clamp along the walls both ways, over cauls that lie close beside the fingers, or that are cut out over the ends of those that come through: what presses on these ends holds the corner open.",
  ),
  dovetail: fitted(
    "tails",
    "Clamp the way the tails go in, over cauls that lie close beside them, or that are cut out over the ends of the pins between them: what presses on these ends holds the corner open.",
  ),
  "sliding dovetail": ({ these, those, glued }) => [
    ...when(
      glued,
      glue("Brush glue into the housings, and on the last third of the tails only: wet wood swells and sticks."),
    ),
    bring(`Slide ${these} and ${those} together along the housings, from the open ends.`),
  ],
  "tongue and groove": ({ everything, glued }) => [
    ...when(glued, glue("Brush glue into the grooves.")),
    pushed(`Push ${everything} together${glued ? "" : ", without glue, so that each board can move"}`, glued),
  ],
  "breadboard end": ({ these, those, glued, clamped }) => [
    ...when(glued, glue("Spread glue on the middle 4 in (100 mm) of the tongue only: the rest must be free to move.")),
    clamped
      ? breadboard(`Push ${these} and ${those} together`)
      : bring(`Push ${these} and ${those} together until the shoulder is tight.`),
  ],
  dowels: ({ everything, glued }) => [pushed(`Push ${everything} together`, glued)],
  "hangs on": ({ those }) => [
    `Hold the piece against the wall a little above its place, and lower it until its bevel lies in that of ${those} along its whole length.`,
    "Pull at its lower edge: it does not come off, and it lies against the wall above and below.",
  ],
  slides: ({ these, those, several, room }) => [
    `Take ${several ? "each slide" : "the slides"} apart. Screw the drawer half to the side of ${several ? "its drawer" : these}, in the holes bored there${room ? `, its front end ${room.onDrawer} of that side` : ""}. Screw the case half to ${those}, in the holes bored there${room ? `, its front end ${room.onCase} of that part` : ""}. Where a half has slots and round holes, drive its screws in the slots first, so that it can be shifted.`,
    `${several ? "Slide the halves into each other until they click, one drawer after another, and run each" : "Slide the halves into each other until they click, and run the drawer"} in and out.`,
    ...(room === null ? ["Where it is too loose, put card behind the case half."] : [room.told]),
  ],
  "undermount slides": ({ these, those }) => [
    `Screw the slides to ${those}, and the locks behind the front under the bottom.`,
    `Set ${these} on the pulled-out slides and push it home: the hooks go into the holes in its back, and the locks click.`,
  ],
  "runs on": ({ these, those }) => [`Wax what runs on what. Slide ${these} in on ${those}, and plane what binds.`],
  glue: ({ these, those, bare }) => {
    const push = `Set ${these} against ${those}`;
    return [
      sentence(`Spread glue where they meet${bare}. ${push} and clamp.`, {
        glues: true,
        clamps: { later: `Spread glue where they meet${bare}. ${push}.` },
        apart: [glue(`Spread glue where ${these} and ${those} meet${bare}.`), pushed(push, true)],
      }),
    ];
  },
};
