/** Putting on the finish: a step for each, after what is finished before it is built in. */
import type { Action, Finishing } from "../../../build.ts";
import { gritWords } from "../../finishing/abrasives.ts";
import { bareTexts } from "../../finishing/bare-words.ts";
import { insideTexts } from "../../finishing/inside-words.ts";
import { keptOff } from "../../finishing/kept-off.ts";
import { smoulders, waterborne } from "../../finishing/products.ts";
import { SLIDE_SEATS } from "../../finishing/schedule.ts";
import { shutIn } from "../../finishing/shut-in.ts";
import { panesOf } from "../../order/glazing.ts";
import { listed, numberWord, pluralOf, type StepDraft, series, type Work } from "../draft.ts";
import { step } from "../making-step.ts";
import { groupedBy, ownKey } from "../wishes/own-key.ts";
import { maskTexts } from "./masked.ts";
import { apartText } from "./names.ts";
import { FUMES, productOf, RAGS } from "./products.ts";

/** Minutes (common practice, no source): to sand a part, to wet it and go over it once more, to put a coat on a square metre. */
const MINUTES = { sand: 3, raise: 1, coat: 15 } as const;

/** Minutes until wood that was wiped is dry; what is said of it. Common practice, no source. */
const WET = 60;
const RAISED =
  "Wipe the wood with a damp rag, let it dry for an hour, and sand once more, lightly, with the last grit: what is thinned with water raises the grain.";

/** Both faces take up moisture alike only under as many coats. */
export const ALIKE = "Give both faces as many coats: wood that is sealed on one face only cups.";

interface Coated {
  readonly parts: readonly string[];
  readonly title: string;
  readonly unit: string;
  /** In words. */
  readonly what: string;
  readonly fresh: readonly string[];
  readonly present?: readonly string[];
  /** They stand apart, and both faces are reached. */
  readonly apart?: true;
  /** The piece is together by then. */
  readonly last?: boolean;
  /** Some of it has its coats already. */
  readonly rest?: boolean;
  /** Told before all else, and after how it is put on. */
  readonly first?: readonly string[];
  readonly mind?: readonly string[];
}

/** A step that puts all coats of one finish on some parts. `share` of its area. */
export function coatStep(
  work: Work,
  finish: Finishing,
  { parts, title, unit, what, fresh, present, apart, last = false, rest = false, first = [], mind = [] }: Coated,
): StepDraft {
  const { product, area } = finish;
  const coats = coatsOn(finish, parts, apart === true);
  const { design, plan } = work;
  const there = {
    parts: parts.map(work.part),
    joints: design.joints,
    // Those of pins are told of with what stops them.
    holes: plan.holes.filter(({ kind }) => kind !== "pin"),
    glued: last,
  };
  const keepOff = finish.keepOff === undefined ? null : keptOff(finish.keepOff, there);
  const { dries: usual, handled, how, between } = productOf(product);
  const dries = finish.dries ?? usual;
  const wet = waterborne(product);
  const share = parts.length / Math.max(1, finish.parts.length);
  const each = Math.round(area * share * MINUTES.coat);
  const actions = Array.from({ length: coats }, (_, i): Action => ({ do: "finish", parts, coat: i + 1 }));
  return step(
    "finish",
    title,
    [
      ...first,
      `Sand what ${rest ? "has no coats yet and " : ""}will be seen with ${gritWords} along the grain, take the sharpness off the edges, and wipe off the dust.`,
      ...(wet ? [RAISED] : []),
      `Put ${coats === 1 ? "one coat" : `${numberWord(coats)} coats`} of ${product} on ${what}. ${how}.`,
      ...(coats > 1
        ? [
            `Let each coat dry ${hours(dries)}, or as long as the can says${between ? `, and go over it lightly with ${between} grit before the next` : ""}.`,
          ]
        : []),
      // What lies loose has no inside: as many coats all round.
      ...(apart ? [] : insideTexts(finish, parts.map(work.part), (id) => work.line(id).mark)),
      ...mind,
      ...(keepOff ? [`Keep it off: ${keepOff}.`] : []),
      ...maskTexts(work, parts, last),
      ...(apart ? [ALIKE] : []),
    ],
    actions,
    {
      ...{ unit, fresh, strains: true, ...(present && { present }) },
      bench: Math.round(parts.length * (MINUTES.sand + (wet ? MINUTES.raise : 0))) + coats * each,
      ...(coats > 1 && { again: { count: coats - 1, minutes: each, rest: dries } }),
      waits: [
        { for: coats > 1 ? "coats to dry" : "finish to dry", minutes: (wet ? WET : 0) + (coats - 1) * dries + handled },
      ],
      cautions: [...(smoulders(product) ? [RAGS] : []), FUMES],
    },
  );
}

/** As many as do inside, on what lies there with all its faces and is finished apart. */
function coatsOn({ coats, inside, insideFaces = [] }: Finishing, parts: readonly string[], apart: boolean): number {
  const wholly = new Set(insideFaces.flatMap(({ part, sides }) => (sides.length === 0 ? [part] : [])));
  return apart && inside !== undefined && parts.every((id) => wholly.has(id)) ? inside : coats;
}

/** "4 hours", "a day" */
function hours(minutes: number): string {
  const [unit, size] = minutes % 1440 === 0 ? ["day", 1440] : minutes % 60 === 0 ? ["hour", 60] : ["minute", 1];
  const n = minutes / (size as number);
  return n === 1 ? (unit === "hour" ? "an hour" : `a ${unit}`) : `${n} ${pluralOf(unit as string)}`;
}

/** By what is wished apart. */
export const apartIn = (work: Work, parts: readonly string[]): readonly (readonly string[])[] =>
  groupedBy(parts, (id) => ownKey(work, { verb: "finish" }, [id]));

/** So many kinds of part are named in a title, or marked in the picture. */
export const MOST = 3;

/** Where the plan says nothing of finish: what is sanded all the same. */
export function sandingSteps(work: Work, done: ReadonlySet<string>): readonly StepDraft[] {
  if (work.finishing.length > 0) return [];
  const panes = panesOf(work.design);
  const of = work.design.parts.flatMap(({ id }) => (panes.has(id) || done.has(id) ? [] : [id]));
  if (of.length === 0) return [];
  const title = done.size > 0 ? "Sand the rest of the piece" : "Sand the piece";
  const { wholly, faces } = shutIn(work.design);
  const shut = wholly.size + faces.size > 0 ? [shutBare(done.size > 0)] : [];
  return [sandingStep(of, title, { fresh: [], present: standing(work) }, shut, apartText(work, of))];
}

/** `coated`: some parts had coats on both faces before. Common practice, no source. */
const shutBare = (coated: boolean): string =>
  `Whatever you take, leave the faces inside that are shut in bare${coated ? ", but for those of what has coats on both faces" : ""}, or put shellac on them: oil and varnish smell for months where little air moves.`;

/** The piece without what was taken off it. */
function standing({ design, plan }: Work): readonly string[] {
  const apart = new Set(plan.removable.flatMap((body) => body.parts));
  return design.parts.flatMap(({ id }) => (apart.has(id) ? [] : [id]));
}

/** Where the plan says nothing of finish. */
export const sandingStep = (
  of: readonly string[],
  title: string,
  shows: Pick<StepDraft["shows"], "fresh"> & Partial<StepDraft["shows"]>,
  mind: readonly string[] = [],
  apart: readonly string[] = [],
  first: readonly string[] = [],
): StepDraft =>
  step(
    "finish",
    title,
    [
      ...first,
      `Sand what will be seen with ${gritWords} along the grain, take the sharpness off the edges, and wipe off the dust.`,
      ...apart,
      "This plan says nothing of finish: put on what you like, as its can says, and try it on an offcut first. Its own days come on top of those that this plan counts.",
      ...mind,
    ],
    [],
    { unit: `sand ${of[0]}`, bench: of.length * MINUTES.sand, of, strains: true, cautions: [], ...shows },
  );

/** All the rest, a step for each finish, but for what is wished apart. */
export function lastCoats(work: Work, done: ReadonlySet<string>): readonly StepDraft[] {
  return work.finishing.flatMap((finish) =>
    apartIn(
      work,
      finish.parts.filter((id) => !done.has(id)),
    ).map((parts) => lastCoat(work, finish, parts, done)),
  );
}

function lastCoat(work: Work, finish: Finishing, parts: readonly string[], done: ReadonlySet<string>): StepDraft {
  const all = work.design.parts.map(({ id }) => id);
  const bare = finish.bare ?? [];
  const rest = all.length - panesOf(work.design).size - bare.length;
  const one = work.finishing.length === 1 && parts.length === rest;
  const title = one ? `Finish the piece with ${finish.product}` : `Finish ${short(work, parts)} with ${finish.product}`;
  const kinds = new Set(parts.map((id) => work.line(id).mark)).size;
  // Many kinds are one surface to the reader: the piece as it stands, and nothing marked.
  const shown =
    kinds > MOST
      ? { fresh: [], present: standing(work) }
      : { fresh: parts, present: all.filter((id) => !parts.includes(id)) };
  const { bareWhat } = finish;
  const everything = bareWhat ? `everything but ${series(bareWhat)}` : "everything";
  const left = work.finishing.length === 1 ? "all that has none yet" : "all that has no other finish";
  const what = one ? everything : kinds > MOST ? left : listed(work, parts);
  const seats = work.plan.hardware.some(({ item }) => /^(?:side|undermount) slide$/u.test(item.kind));
  const mind = [
    ...(kinds > MOST ? apartText(work, parts) : []),
    ...bareTexts(finish, work.design.parts, (id) => work.line(id).mark),
    ...frontTexts(work, finish),
    ...(seats && !bareWhat && one ? [`Keep it off ${SLIDE_SEATS}.`] : []),
  ];
  return coatStep(work, finish, {
    parts,
    title,
    unit: `finish ${finish.surface}`,
    what,
    mind,
    last: true,
    rest: done.size > 0,
    ...shown,
  });
}

/** A front that is screwed to a bare box stays on it: what is left free of its back has its coats there. */
function frontTexts({ design }: Work, { parts, bare = [] }: Finishing): readonly string[] {
  const own = design.joints.filter(
    ({ setWith, parts: [box, front] }) => setWith && bare.includes(box) && parts.includes(front),
  );
  return own.length === 0
    ? []
    : ["Leave the fronts on their boxes: coat face and edges, and on the back what stands past the box."];
}

const short = (work: Work, parts: readonly string[]): string =>
  new Set(parts.map((id) => work.line(id).mark)).size <= MOST ? listed(work, parts) : "the piece";
