/** What hangs, runs or lies loose comes off for finishing, and goes on again. */
import type { Action } from "../../../build.ts";
import type { Removable } from "../../order/index.ts";
import { reversed } from "../../order/pegs.ts";
import { wayIn } from "../../order/tilt.ts";
import { capital, FIRST, listed, pluralOf, type StepDraft, type Work } from "../draft.ts";
import { drivings } from "../driving.ts";
import { fitActions } from "../hardware.ts";
import { inFront } from "../in-front.ts";
import { step } from "../making-step.ts";
import { sentence } from "../sentence.ts";
import { buttonsOffTexts, buttonsOnTexts } from "../words/buttons.ts";
import { closeAgain } from "../words/close.ts";
import { gripOf, gripsOf, pulledByScrew, shutIn } from "../words/fronts.ts";
import { liftCaution } from "../words/lifting.ts";
import { pinsAfterTexts, pinsBeforeTexts, pinsInTexts, pinsOf, pinsOutTexts } from "./by-their-pins.ts";
import { beforeItGoesIn, beforeTheTop, carriedOf, movesLast } from "./in-its-room.ts";
import { inTitle, namesOf } from "./names.ts";
import { staysOn } from "./staying.ts";
import { stopsTexts } from "./stops-up.ts";

/** Minutes for each body (common practice, no source): to take it off, to put it on again. */
const MINUTES = { off: 5, on: 8 } as const;

/** The unit of the step in which what came off goes on for good. */
export const PUT_ON_AGAIN = "put on again";

export function takingOffSteps(work: Work): readonly StepDraft[] {
  const { removable } = work.plan;
  if (removable.length === 0) return [];
  const names = namesOf(work, removable);
  const hung = hardwareOf(work, removable).length > 0;
  const stay = stayingOf(work, removable).length > 0;
  const set = work.design.joints.filter(({ setWith }) => setWith !== undefined);
  const grips = pulledByScrew(work, set) && shutIn(work, set) ? gripOf(work, set) : null;
  const hinged = hardwareOf(work, removable).some(({ item }) => item.kind.includes("hinge"));
  const one = removable.length === 1;
  const taken = step(
    "take-off",
    `Take off ${inTitle(work, removable, names)}`,
    [
      ...(removable.every((body) => slides(work, body))
        ? []
        : [
            `${FIRST}try everything: what moves moves freely, the gaps are even, nothing rubs. Plane what rubs now, while the wood is bare.`,
          ]),
      `Take off ${names}${hung ? `, and unscrew the hardware${stay ? " but for the slides" : ""}` : ""}. Write on ${one ? "it" : "each"} where it belongs, ${hinged ? "under a hinge or inside " : hung || stay ? "inside " : ""}where it will not be seen.`,
      ...drawnTexts(work, removable),
      ...closeAgain(work, drivesOf(removable)),
      ...pinsOutTexts(work, removable),
      ...pinsAfterTexts(work, removable),
      ...(grips
        ? [
            sentence(`Unscrew from their fronts the ${pluralOf(grips)} that were put on to pull by.`, {
              puts: { off: gripsOf(work, set) },
            }),
          ]
        : []),
      ...(stay
        ? [
            "Where a half of a slide is still held in its slots alone, bore a pilot hole under one of its round holes now, and drive a screw there: nothing may shift it any more.",
            "The halves of the slides stay on, as they are set: unscrewed, they would have to be set anew. Cover them with tape.",
          ]
        : []),
      ...buttonsOffTexts(work, screwsOf(removable)),
      ...(hung ? ["Keep the screws with their hardware, each lot in a bag with its place on it."] : []),
    ],
    removable.flatMap((body) => removeActions(work, body)),
    {
      ...{ unit: "take off", bench: removable.length * MINUTES.off },
      ...shown(work, removable),
      cautions: liftCaution(work, heaviest(work, removable)),
    },
  );
  if (!downAgain(removable)) return [taken];
  return [
    {
      ...taken,
      onHead: [
        `The work still lies upside down on ${names}: draw the screws that hold ${one && removable[0]?.parts.length === 1 ? "it" : "them"} from above, and lift the rest off. Write on ${one ? "it" : "each"} where it belongs, where it will not be seen.`,
        ...closeAgain(work, drivesOf(removable)),
        ...buttonsOffTexts(work, screwsOf(removable)),
      ],
    },
  ];
}

/** Tops that are screwed on come off when what hangs and runs below them is out of the way of a driver. */
function drawnTexts(work: Work, removable: readonly Removable[]): readonly string[] {
  const fast = removable.filter((body) => slides(work, body));
  if (fast.length === 0) return [];
  const names = namesOf(work, fast);
  const last =
    fast.length < removable.length ? `${capital(names)} ${fast.length === 1 ? "comes" : "come"} off last: ` : "";
  const draw = `draw ${fast.length === 1 ? "its" : "their"} screws from below and lift ${fast.length === 1 ? "it" : "them"} off.`;
  return [`${last}${last === "" ? capital(draw) : draw}`];
}

/** What is only fastened free to move comes before what hangs and runs: that is in its way. */
export function againSteps(work: Work): { readonly fast: readonly StepDraft[]; readonly rest: readonly StepDraft[] } {
  const bodies = work.plan.removable.toReversed();
  const first = bodies.findIndex((body) => !slides(work, body));
  const fast = first < 0 ? bodies : bodies.slice(0, first);
  const rest = first < 0 ? [] : bodies.slice(first);
  return {
    fast: fast.length === 0 ? [] : [againStep(work, fast, true)],
    rest: rest.length === 0 ? [] : [againStep(work, rest, false)],
  };
}

function againStep(work: Work, bodies: readonly Removable[], fast: boolean): StepDraft {
  const names = namesOf(work, bodies);
  const hung = hardwareOf(work, bodies).length > 0;
  const isIn = (ids: ReadonlySet<string>): boolean => bodies.some(({ parts }) => parts.some((id) => ids.has(id)));
  const moves = isIn(movesLast(work));
  const set = fast ? beforeTheTop(work, topOf(work)) : moves && !carriedEarly(work) ? beforeItGoesIn(work) : [];
  const runs = bodies.filter((body) => runsIn(work, body)).length > 1;
  const stay = stayingOf(work, bodies).length > 0;
  const one = bodies.length === 1;
  const own = new Set(hardwareOf(work, bodies).map(({ id }) => id));
  const lid = moves && work.plan.hardware.some(({ id, item }) => item.kind === "lid support" && !own.has(id));
  const again = step(
    "fit",
    `Put ${inTitle(work, bodies, names)} on again`,
    [
      ...set,
      ...pinsBeforeTexts(work, bodies),
      ...pinsInTexts(work, bodies),
      downAgain(bodies)
        ? `When the finish is hard, lay ${names} in ${one ? "its place" : "their places"} from above, and drive the screws from below, each by its hole.`
        : `When the finish is hard, put ${names} back ${fast ? `the way ${one ? "it" : "they"} went on the first time` : `where ${one ? "it was" : "each was"}`}${hung ? ", with the same hardware in the same holes" : stay ? ": slide the halves into each other until they click" : ""}.`,
      ...closeAgain(work, drivesOf(bodies)),
      ...(hung ? ["Turn the screws backwards until they drop into their old threads, then drive them by hand."] : []),
      ...buttonsOnTexts(work, screwsOf(bodies)),
      ...slidingTexts(work, bodies),
      ...(runs
        ? ["Put in one drawer after another, and shut each before the next: several open at once tip a piece over."]
        : []),
      ...stopsTexts(work, bodies),
      ...(lid
        ? [
            "Nothing holds the lid open yet: leave it shut, and let a second person hold it while its support is put on.",
          ]
        : moves
          ? [`Open and shut everything once more${runs ? ", one after another" : ""}.`]
          : []),
    ],
    bodies.flatMap((body) => [...addActions(work, body), ...fitActions(hardwareOf(work, [body]))]),
    {
      ...{ unit: PUT_ON_AGAIN, bench: bodies.length * MINUTES.on },
      ...shown(work, bodies),
      cautions: [
        ...(set.length > 0
          ? liftCaution(
              work,
              carriedOf(work).filter((id) => !bodies.some(({ parts }) => parts.includes(id))),
            )
          : []),
        ...liftCaution(work, heaviest(work, bodies)),
      ],
    },
  );
  const driven = screwsOf(bodies).map(({ id }) => id);
  return { ...again, shows: { ...again.shows, fasteners: driven } };
}

/** What is lowered on the piece where that stands, before anything hangs or runs in it. */
function topOf(work: Work): readonly string[] {
  const bodies = work.plan.removable.toReversed();
  const first = bodies.findIndex((body) => !slides(work, body));
  const top = bodies.slice(0, Math.max(0, first));
  return top.length > 0 && downAgain(top) ? top.flatMap(({ parts }) => parts) : [];
}

const carriedEarly = (work: Work): boolean => beforeTheTop(work, topOf(work)).length > 0;

/** What is fastened from below, and lowered on what stands there: the first time the work may have stood on its head. */
const downAgain = (bodies: readonly Removable[]): boolean =>
  bodies.every(
    ({ along, drives }) =>
      along[2] < -0.7 && drives.length > 0 && drives.every(({ fastener }) => fastener.direction[2] > 0.7),
  );

const slides = ({ design }: Work, { joints }: Removable): boolean =>
  joints.every((id) => design.joints.find((joint) => joint.id === id)?.kind === "sliding");

const runsIn = ({ design }: Work, { joints }: Removable): boolean =>
  joints.some((id) => design.joints.some((joint) => joint.id === id && joint.kind === "running"));

/** What is screwed on free to move stays free. */
function slidingTexts(work: Work, bodies: readonly Removable[]): readonly string[] {
  const own = bodies.filter((body) => slides(work, body));
  if (own.length === 0) return [];
  const what = listed(
    work,
    own.flatMap(({ parts }) => parts),
  );
  return [`Fasten ${what} no harder than the first time: the wood must still be able to slide.`];
}

const removeActions = (work: Work, { parts, along, legs, to, drives, pulled }: Removable): readonly Action[] => [
  ...(pulled ? [{ do: "pull", fasteners: pinsOf(work, pulled) } as const] : []),
  {
    do: "remove",
    parts,
    from: to,
    // Out is in, backwards.
    legs: legs ? wayIn(legs) : [{ along: reversed(along), distance: null }],
    undrives: drives.map(({ fastener }) => fastener.id),
  },
];

const addActions = (work: Work, { parts, along, legs, to, drives, pulled }: Removable): readonly Action[] => [
  { do: "add", parts, to, how: legs ? "tilted" : "straight", legs: legs ?? [{ along, distance: null }] },
  ...(pulled ? [{ do: "push", fasteners: pinsOf(work, pulled) } as const] : []),
  ...drivings(drives),
];

const drivesOf = (bodies: readonly Removable[]) => bodies.flatMap(({ drives }) => drives);
const screwsOf = (bodies: readonly Removable[]) => drivesOf(bodies).map(({ fastener }) => fastener);

const allOf = ({ plan }: Work, bodies: readonly Removable[]) => {
  const joints = new Set(bodies.flatMap((body) => body.joints));
  return plan.hardware.filter(({ joint }) => joint !== null && joints.has(joint));
};

/** What comes off with some bodies, and what stays on. */
const hardwareOf = (work: Work, bodies: readonly Removable[]) =>
  allOf(work, bodies).filter((each) => !staysOn(work, each));
const stayingOf = (work: Work, bodies: readonly Removable[]) =>
  allOf(work, bodies).filter((each) => staysOn(work, each));

/** The piece as it stands, and of each body that comes off or goes on the part in front: what is behind it goes with it. */
function shown(work: Work, bodies: readonly Removable[]) {
  const fresh = bodies.map(({ parts }) => inFront(work, parts));
  const off = work.plan.removable.toReversed();
  // What goes on later is not there yet.
  const last = off.findLastIndex((body) => bodies.includes(body));
  const missing = new Set(off.slice(last + 1).flatMap(({ parts }) => parts));
  const present = work.design.parts.map(({ id }) => id).filter((id) => !fresh.includes(id) && !missing.has(id));
  return { fresh, present };
}

function heaviest(work: Work, bodies: readonly Removable[]): readonly string[] {
  const mass = ({ parts }: Removable): number => parts.reduce((so, id) => so + work.mass(id), 0);
  return bodies.toSorted((a, b) => mass(b) - mass(a))[0]?.parts ?? [];
}
