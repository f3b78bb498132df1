/** What is said of each kind of hardware when it is put on. Common practice, no source, unless it says otherwise. */

interface Words {
  /** After the sentences that say where each goes. */
  readonly after?: string;
  readonly caution?: string;
  /** It goes under the piece, which is turned over. */
  readonly under?: true;
  /** It is done where the piece will stand. */
  readonly inTheRoom?: true;
}

const TIPS = "A chest of drawers that tips over kills. Do not use it before it is tied to the wall.";

/** What holds a piece on a wall is more than the piece. */
export const WALL_CAUTION =
  "Whether this wall holds it is yours to judge: what it is made of, where its studs are, what runs inside. The screws are those of common practice for a sound wall; where local practice or rules ask for more, do that. If in doubt, ask somebody who knows the house.";

const WORDS: ReadonlyMap<string, Words> = new Map<string, Words>([
  ["knob", { after: "Turn the screw by hand until the knob does not turn any more; then a quarter turn." }],
  ["pull", { after: "Start both screws by hand before you tighten either." }],
  [
    "catch",
    { after: "Shut the door and look whether body and strike meet; shift the body in its slots until they do." },
  ],
  ["stop", { after: "Shut what it stops, and see that it lies flush and does not bounce." }],
  ["foot", { under: true }],
  [
    "leveller",
    { under: true, after: "In the room turn them until a level on the piece stays in the middle both ways." },
  ],
  ["caster", { under: true, after: "Drive the screws in the corners across from each other first." }],
  [
    "lid support",
    {
      after:
        "Open the lid to several angles and let go: it has to stay at each of them. If it does not, set the support tighter or add one.",
      caution:
        "A lid that falls can kill a child. Do not use the chest before the support holds the lid at every angle.",
    },
  ],
  [
    "wall strap",
    {
      inTheRoom: true,
      after:
        "Where the piece will stand, screw the other bracket into a stud of the wall, no lower than this one, and draw the strap tight.",
      caution: TIPS,
    },
  ],
  [
    "wall screw",
    {
      inTheRoom: true,
      after:
        "Find the studs, let a helper hold the piece, and drive each screw into the middle of a stud. A screw in plaster alone holds nothing.",
      caution: `Look for cables and pipes in the wall before you drill. ${WALL_CAUTION}`,
    },
  ],
]);

const NOTHING: Words = {};
export const fittedWords = (kind: string): Words => WORDS.get(kind) ?? NOTHING;
