import type { Method } from "../../../../parse/draft.ts";
import type { Joint } from "../../../design.ts";

/** What the sentences speak of: what comes, and what is there. */
interface Said {
  readonly glued: boolean;
  readonly these: string;
  readonly those: string;
  /** No other method in the step says how they meet. */
  readonly alone: boolean;
}

const buttons = (room: string): string =>
  `Push the tongue of each button into its ${room}, and pull it out again by the gap: it must be able to move both ways. Do not glue.`;

/** What a maker has to know about a method besides where its fasteners go. Before the parts meet, and after. */
const TEXTS: Partial<Readonly<Record<Method, { readonly first?: string; readonly after?: string }>>> = {
  cleats: { after: "A cleat is screwed both ways: to what carries it, and to what it carries." },
  "slotted screws": {
    after:
      "Each screw stands in the middle of its slot. Turn it until the washer just turns hard: the wood must be able to slide.",
  },
  "oversized holes with washers": {
    after:
      "Each screw stands in the middle of its hole. Turn it until the washer just turns hard: the wood must be able to slide.",
  },
  "buttons in a groove": { after: buttons("groove") },
  "buttons in mortises": { after: buttons("mortise") },
  clips: { first: "Hook the clips into the groove.", after: "Do not glue: the wood must be able to move." },
  "figure-eight fasteners": {
    first:
      "Screw the figure-eight fasteners into their recesses, so loosely that they still swing; open the recesses with a chisel where they do not.",
    after: "Do not glue: the wood must be able to move.",
  },
  bolts: { after: "Tighten the nuts. It comes apart again: do not glue." },
  "bolts and cross dowels": {
    first:
      "Push the cross dowels into their bores, the thread in line with the bolt and the slot of the end towards it.",
    after: "It comes apart again: do not glue.",
  },
  "shelf pins": { first: "Push the pins into their holes and lay the shelf on them. It stays loose." },
};

/** How parts meet that fasteners hold, and what to mind. */
export function fastenedText(joints: readonly Joint[], { glued, these, those, alone }: Said): readonly string[] {
  const { method, still } = joints[0] as Joint;
  const { first, after } = TEXTS[method] ?? {};
  const rests = joints[0]?.kind === "resting";
  return [
    ...(first ? [first] : []),
    ...(glued ? ["Spread glue where they meet."] : []),
    ...(alone && !rests ? [`Set ${these} against ${those}.`] : []),
    ...(after ? [after] : []),
    ...(still ? [`It is held at its ${still.side}, and moves from there.`] : []),
  ];
}
