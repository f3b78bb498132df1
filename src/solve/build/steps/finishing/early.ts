/** What is finished, or sanded where the plan says nothing of finish, before the step in which it is built in. */
import type { Finishing } from "../../../build.ts";
import { panesOf } from "../../order/glazing.ts";
import { listed, type StepDraft, type Work } from "../draft.ts";
import { pluggingSteps } from "../plugging.ts";
import { addedIn } from "../touched.ts";
import { theBody } from "../words/bodies.ts";
import { movingName } from "../words/moving.ts";
import { woodMoves } from "../words/still.ts";
import { ALIKE, apartIn, coatStep, MOST, sandingStep } from "./coats.ts";
import { glazedLastOf } from "./glazed-last.ts";
import { goingIn, keptIn } from "./kept-in.ts";
import { slidesInTexts } from "./slides-in.ts";

/** What is finished before the step in which it is built in: panels that float in grooves, and what must not be treated on one face only. */
export function earlySteps(
  work: Work,
  use: StepDraft,
  done: Set<string>,
  all: readonly StepDraft[],
): readonly StepDraft[] {
  const added = addedIn(use.actions);
  const around = aroundGlass(work, added);
  const shelves = goingIn(work, use);
  if (work.finishing.length === 0) return earlySanding(work, added, { around, shelves }, done);
  return work.finishing.flatMap((finish): readonly StepDraft[] => {
    const kept = finish.parts.filter((id) => !done.has(id) && shelves.includes(id));
    for (const id of kept) done.add(id);
    const waits = keptIn(work);
    const early = finish.parts.filter((id) => !done.has(id) && !waits.has(id) && isEarly(work, finish, id));
    const lines = new Set(early.filter((id) => added.includes(id)).map((id) => work.line(id).mark));
    // What is the same is finished together, wherever it goes.
    const parts = early.filter((id) => lines.has(work.line(id).mark));
    for (const id of parts) done.add(id);
    const others = parts.length > 0 && isLastJoined(work, use, all) ? finish.parts.filter((id) => !done.has(id)) : [];
    const round = others.length > 0 && apartIn(work, [...parts, ...others]).length === 1;
    if (round) {
      for (const id of others) done.add(id);
      return [inOneRound(work, finish, parts, others)];
    }
    const bare = around.filter((id) => finish.parts.includes(id) && !done.has(id));
    for (const id of bare) done.add(id);
    return [
      ...apartIn(work, parts).map((own) => earlyCoats(work, finish, own)),
      ...apartIn(work, kept).map((own) => earlyCoats(work, finish, own, [keptText(own)])),
      ...apartIn(work, bare).map((own) => beforeGlass(work, finish, own)),
    ];
  });
}

/** Whether all else stands before a step that glues nothing, and nothing is done to it after: all can have its coats in one round. */
function isLastJoined(work: Work, use: StepDraft, all: readonly StepDraft[]): boolean {
  const place = all.indexOf(use);
  const added = new Set(addedIn(use.actions));
  const there = new Set(all.slice(0, place).flatMap(({ actions }) => addedIn(actions)));
  return (
    use.kind !== "glue-up" &&
    work.plan.removable.length === 0 &&
    pluggingSteps(work).length === 0 &&
    all.slice(place + 1).every(({ actions }) => addedIn(actions).length === 0) &&
    work.design.parts.every(({ id, making }) => making?.cut !== "over" && (there.has(id) || added.has(id)))
  );
}

function inOneRound(work: Work, finish: Finishing, parts: readonly string[], others: readonly string[]): StepDraft {
  return coatStep(work, finish, {
    parts: [...parts, ...others],
    title: `Finish all with ${finish.product} before ${listed(work, parts)} ${parts.length === 1 ? "is" : "are"} built in`,
    unit: `finish ${finish.surface}`,
    what: `${listed(work, parts)} and on the rest, which stands by now`,
    fresh: parts,
    present: others,
    apart: true,
    last: true,
    first: slidesInTexts(
      work,
      parts.filter((id) => floats(work, id)),
      finish,
    ),
    mind: ["When it is put together, lay it on something soft: the finish is hard by then, and marks all the same."],
  });
}

/** Where the plan says nothing of finish: what is badly reached once it is built in. */
function earlySanding(
  work: Work,
  added: readonly string[],
  { around, shelves }: { readonly around: readonly string[]; readonly shelves: readonly string[] },
  done: Set<string>,
): readonly StepDraft[] {
  const isBare = (id: string): boolean => !done.has(id) && !panesOf(work.design).has(id);
  const glazed = around.filter(isBare);
  const marks = new Set(added.filter((id) => floats(work, id)).map((id) => work.line(id).mark));
  const panels = work.design.parts.flatMap(({ id }) =>
    isBare(id) && floats(work, id) && marks.has(work.line(id).mark) ? [id] : [],
  );
  const kept = shelves.filter(isBare);
  for (const id of [...glazed, ...panels, ...kept]) done.add(id);
  const before = (ids: readonly string[], why: readonly string[]): readonly StepDraft[] => {
    if (ids.length === 0) return [];
    const first = slidesInTexts(
      work,
      ids.filter((id) => floats(work, id)),
      null,
    );
    const title = `Sand ${listed(work, ids)} before ${ids.length === 1 ? "it is" : "they are"} built in`;
    return [sandingStep(ids, title, { fresh: firstOf(work, ids) }, [...why, ALIKE], [], first)];
  };
  return [
    ...before(panels, [
      "In its frame a panel is badly reached at its edges, and an edge that came out of its groove would be bare.",
    ]),
    ...before(kept, [keptText(kept)]),
    ...(glazed.length > 0
      ? [sandingStep(glazed, `Sand ${roundGlass(work, glazed)} before the glass goes in`, { fresh: glazed })]
      : []),
  ];
}

const keptText = (ids: readonly string[]): string =>
  ids.length === 1
    ? "Once the piece is closed and its doors are on, it does not come out for that."
    : "Once the piece is closed they do not come out for that by one tilt, and leading them past each other scrapes them.";

/** Of bodies alike the first, with all of these that is joined to it. */
export function firstOf({ design }: Pick<Work, "design">, ids: readonly string[]): readonly string[] {
  const body = new Set(ids.slice(0, 1));
  for (const id of body)
    for (const { parts } of design.joints)
      if (parts.includes(id)) for (const other of parts) if (ids.includes(other)) body.add(other);
  return [...body];
}

function earlyCoats(work: Work, finish: Finishing, parts: readonly string[], why: readonly string[] = []): StepDraft {
  const title = `Finish ${listed(work, parts)} before ${parts.length === 1 ? "it is" : "they are"} built in`;
  return coatStep(work, finish, {
    parts,
    title,
    unit: `finish ${parts[0]}`,
    what: listed(work, parts),
    fresh: firstOf(work, parts),
    apart: true,
    first: slidesInTexts(
      work,
      parts.filter((id) => floats(work, id)),
      finish,
    ),
    mind: why,
  });
}

/** The frames of panes that arrive in their rabbets, and the beads that follow: no brush has to pass by glass. What comes off is glazed last. */
function aroundGlass({ design, plan }: Work, added: readonly string[]): readonly string[] {
  const last = glazedLastOf({ design, plan });
  const panes = [...panesOf(design)].filter((id) => added.includes(id) && !last.has(id));
  const touching = design.joints.filter(
    ({ method, parts }) => method === "glazed" && parts.some((id) => panes.includes(id)),
  );
  const touch = touching.flatMap(({ parts }) => parts);
  const own = new Set(touch);
  return design.parts.flatMap(({ id }) => (own.has(id) ? [id] : []));
}

const beforeGlass = (work: Work, finish: Finishing, parts: readonly string[]): StepDraft =>
  coatStep(work, finish, {
    parts,
    title: `Finish ${roundGlass(work, parts)} before the glass goes in`,
    unit: `finish ${parts[0]}`,
    what: listed(work, parts),
    fresh: parts,
    last: true,
  });

/** The body that they make, where they are of more kinds than a title holds and it has a name. */
function roundGlass(work: Work, parts: readonly string[]): string {
  const kinds = new Set(parts.map((id) => work.line(id).mark));
  const body = kinds.size > MOST ? movingName(work, parts) : null;
  return body === null ? listed(work, parts) : theBody(body);
}

/** The wood moves: an edge that came out of its groove would be bare. */
const isEarly = (work: Work, { alike }: Finishing, id: string): boolean =>
  floats(work, id) || (alike?.includes(id) ?? false);

/** Solid wood in a groove, free to move. */
const floats = (work: Work, id: string): boolean =>
  work.design.joints.some(({ method, glue, parts: [panel] }) => panel === id && method === "groove" && !glue) &&
  woodMoves(work, id);
