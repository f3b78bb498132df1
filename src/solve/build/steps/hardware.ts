import { toNumber } from "../../../units/rational.ts";
import type { Action } from "../../build.ts";
import { faceAxis, faceOf, isHigh, opposite, otherAxes } from "../../design/space.ts";
import type { Fitting, Hardware } from "../../design.ts";
import { fastIds, hangsOn } from "../order/links.ts";
import { boredThrough } from "./bored-through.ts";
import { pluralOf, type StepDraft, series, type Work } from "./draft.ts";
import { goesInLast } from "./finishing/in-its-room.ts";
import { step } from "./making-step.ts";
import { sentence } from "./sentence.ts";
import { groupedBy, ownKey } from "./wishes/own-key.ts";
import { boredAheadText, boredBareText } from "./words/bored-ahead.ts";
import { listedAmong } from "./words/by-place.ts";
import { driverRoom } from "./words/driver-room.ts";
import { bareFace } from "./words/edges.ts";
import { boredIntoStuds, fittedWords } from "./words/fitted.ts";
import { liftCaution } from "./words/lifting.ts";
import { fromNearer, sideWord } from "./words/measured.ts";
import { ownScrewTexts } from "./words/own-screws.ts";

/** Minutes to put on one piece of hardware (common practice, no source). */
const MINUTES = 5;

/** Hardware is put on for good, the pieces of each part together. */
export function fitActions(hardware: readonly Hardware[]): readonly Action[] {
  const carriers = [...new Set(hardware.map(({ carriedBy }) => carriedBy))];
  return carriers.map((part) => ({
    do: "fit",
    hardware: hardware.filter(({ carriedBy }) => carriedBy === part).map(({ id }) => id),
    to: [part],
  }));
}

/** Some of what is fixed to the finished piece: one step for each kind of fitting, but for what is wished apart, those that tie it to the wall last. */
export function hardwareSteps(work: Work, which: (fitting: Fitting) => boolean): readonly StepDraft[] {
  const fittings = work.design.fittings.filter(which);
  const kinds = [...new Set(fittings.map(kindOf))];
  const last = (kind: string): number => (fittedWords(kind).inTheRoom ? 1 : 0);
  return kinds
    .toSorted((a, b) => last(a) - last(b))
    .flatMap((kind) => {
      const own = fittings.filter((each) => kindOf(each) === kind);
      return groupedBy(own, ({ hardware }) =>
        ownKey(
          work,
          { verb: "fit" },
          hardware.map(({ carriedBy }) => carriedBy),
        ),
      ).map((group) => kindStep(kind, group, work));
    });
}

/** What goes under the piece, and what ties it to the wall: whatever hangs or runs in it goes in after that. */
export const isForEmpty = (fitting: Fitting): boolean =>
  fittedWords(kindOf(fitting)).under === true || kindOf(fitting) === "wall strap";

/** What ties the piece to its wall is put on where it stands, when what carries it is on again. */
export const isInTheRoom = (fitting: Fitting): boolean => fittedWords(kindOf(fitting)).inTheRoom === true;

const kindOf = ({ hardware }: Fitting): string => hardware[0]?.item.kind ?? "";

function kindStep(kind: string, own: readonly Fitting[], work: Work): StepDraft {
  const hardware = own.flatMap((each) => each.hardware);
  const carriers = [...new Set(hardware.map(({ carriedBy }) => carriedBy))];
  const words = fittedWords(kind);
  // Catches, stops and bumpers would be painted over.
  const afterFinish = work.finishing.length > 0 && !words.inTheRoom;
  const labels = [...new Set(own.map(({ hardware: [first] }) => first?.item.label ?? ""))];
  const room = driverRoom(work, hardware, [...carriers, ...around(work, carriers, own[0] as Fitting)]);
  const ahead = aheadOf(kind, work, room.blind);
  const draft = step(
    "fit",
    words.title?.(listedAmong(work, carriers)) ?? `Fit the ${own.length === 1 ? kind : pluralOf(kind)}`,
    [
      ...(words.before ? words.before(work) : []),
      ...labels.map(
        (label) =>
          `${afterFinish ? "Now that the finish is hard, take" : "Take"} ${counted(kind, label, own.filter(({ hardware: [first] }) => first?.item.label === label).length)}.`,
      ),
      ...(words.under ? [sentence("Turn the piece over on a blanket.", { turns: "and more" })] : []),
      ...places(own, work),
      ...(words.inTheRoom ? [] : ownScrewTexts(work, hardware)),
      ...room.texts,
      ...(typeof words.after === "string" ? [words.after] : (words.after?.(work, room.blind) ?? [])),
    ],
    [...boredInPlace(hardware, work, ahead), ...fitActions(hardware)],
    {
      unit: `fit ${kind}`,
      bench: own.length * (words.minutes ?? MINUTES),
      cautions: [
        ...(words.under
          ? liftCaution(
              work,
              work.design.parts.map(({ id }) => id),
            )
          : []),
        ...(typeof words.cautions === "function" ? words.cautions(work) : (words.cautions ?? [])),
      ],
      ...(words.under && { up: [0, 0, -1] as const }),
      ...(words.inTheRoom && { inTheRoom: true }),
      // What is new is the hardware.
      ...{ fresh: [], present: [...carriers, ...around(work, carriers, own[0] as Fitting)], of: carriers },
    },
  );
  if (!ahead.ahead) return draft;
  const where = places(own, work, room.blind).map((text) => text.replace(/^Fix .*? to /u, "into ").replace(/\.$/u, ""));
  return {
    ...draft,
    ahead: { now: boredAheadText(work, room.blind), before: boredBareText(work, room.blind, where.join("; ")) },
  };
}

/** Before the piece goes to its wall: where that is marked through the holes, and where behind it no drill goes in. */
const aheadOf = (kind: string, { design }: Work, blind: boolean): Ahead => {
  if (kind !== "wall screw" || (!blind && boredIntoStuds(kind, design))) return {};
  return { ahead: blind ? "from the other side" : "from this side" };
};
type Ahead = Pick<Extract<Action, { readonly do: "machine" }>, "ahead">;

/** Holes that are bored where the piece stands. */
function boredInPlace(hardware: readonly Hardware[], work: Work, ahead: Ahead): readonly Action[] {
  const ids = new Set(hardware.map(({ id }) => id));
  const through = new Set(work.design.joints.flatMap((joint) => boredThrough(work, joint)));
  const holes = work.plan.holes.flatMap((hole, i) =>
    !hole.atBench && hole.for !== null && ids.has(hole.for) && !through.has(i) ? [{ part: hole.part, i }] : [],
  );
  return [...new Set(holes.map(({ part }) => part))].map((part) => ({
    ...{ do: "machine", part, features: [], ...ahead },
    holes: holes.filter((each) => each.part === part).map(({ i }) => i),
  }));
}

/** The rest of the piece, empty for some fittings, or of what was taken off it; of a cleat on the wall nothing, since the piece comes later. */
function around(work: Work, carriers: readonly string[], fitting: Fitting): readonly string[] {
  const { design, plan } = work;
  const onWall = new Set(design.joints.filter(hangsOn).map(({ parts: [, cleat] }) => cleat));
  if (carriers.every((id) => onWall.has(id))) return [];
  const bodies = plan.removable.length > 0 ? plan.removable.map(({ parts }) => parts) : runningBodies(work);
  const apart = bodies.filter((parts) => carriers.some((id) => parts.includes(id))).flat();
  const off = !isInTheRoom(fitting) && carriers.every((id) => apart.includes(id));
  const later = isForEmpty(fitting) ? goesInLast(work) : new Set<string>();
  return (off ? apart : design.parts.map(({ id }) => id)).filter((id) => !carriers.includes(id) && !later.has(id));
}

/** Drawers: what is put inside one is seen when it is shown alone. */
function runningBodies({ design }: Work): readonly (readonly string[])[] {
  const runs = new Set(design.joints.flatMap(({ kind, parts: [own] }) => (kind === "running" ? [own] : [])));
  return fastIds(design).filter((ids) => ids.some((id) => runs.has(id)));
}

/** More of them are found by their holes, not by measures. */
const MOST = 3;

/**
 * Where each goes, those of one part in one sentence, and parts that are told alike in one. `behind`: as they are marked from the side across, for a
 * drill that comes from there.
 */
function places(fittings: readonly Fitting[], work: Work, behind = false): readonly string[] {
  const key = ({ part, face }: Fitting): string => `${part} ${face}`;
  const told = [...new Set(fittings.map(key))].map((each) => {
    const own = fittings.filter((fitting) => key(fitting) === each);
    const [{ part: id, face }] = own as [Fitting];
    const side = `the ${behind ? opposite(face) : face} ${sideWord(work.part(id), faceAxis(face))}`;
    const bored = own.some(({ holes }) => holes.some(({ atBench }) => atBench));
    const many = bored && own.length > MOST;
    const where = many ? "" : whereWords([...new Set(own.map((fitting) => placeOf(fitting, work)))], own.length > 1);
    const bores = own.flatMap(({ holes: all }) => all.filter(({ atBench }) => atBench)).length;
    const holes = bored
      ? `, in the ${bores === 1 ? "hole" : "holes"} bored for ${own.length === 1 ? "it" : "them"}`
      : "";
    const others = own.flatMap((each) => each.hardware.filter(({ carriedBy }) => carriedBy !== id));
    const mates = listedAmong(work, [...new Set(others.map(({ carriedBy }) => carriedBy))]);
    const halves = own.length === 1 ? "its other half goes" : "their other halves go";
    const half = others.length > 0 ? `; ${halves} to ${mates}` : "";
    return {
      id,
      before: `to ${side} of`,
      what: own.length === 1 ? "it" : own.length === fittings.length ? "them" : `${own.length} of them`,
      after: `${where}${holes}${half}.`,
    };
  });
  const kind = ({ id, what, before, after }: (typeof told)[number]): string =>
    [work.line(id).mark, what, before, after].join("|");
  return [...new Set(told.map(kind))].map((each) => {
    const alike = told.filter((one) => kind(one) === each);
    const [{ id, before, what, after }] = alike as [(typeof told)[number]];
    const on =
      alike.length === 1
        ? listedAmong(work, [id])
        : `each of ${listedAmong(
            work,
            alike.map((one) => one.id),
          )}`;
    const one = fittings.length === 1 || what !== "it" ? what : "one";
    return `Fix ${one} ${before} ${on}${after}`;
  });
}

/** Where the middles are: of one, of two, of several. */
function whereWords([first = "", second, ...more]: readonly string[], several: boolean): string {
  if (second === undefined) return `, the middle ${several ? "of each " : ""}${first}`;
  if (more.length === 0) return `, the middle of one ${first}, of the other ${second}`;
  return `, the middles: ${[first, second, ...more].join("; ")}`;
}

/** "2 in from the top edge and 1 in from the right edge" */
function placeOf(fitting: Fitting, work: Work): string {
  const {
    part: id,
    face,
    hardware: [first],
  } = fitting;
  if (!first) return "";
  const part = work.part(id);
  const axis = faceAxis(face);
  const meeting = {
    ...{ normal: axis, side: isHigh(face) ? (1 as const) : (-1 as const) },
    level: toNumber((isHigh(face) ? part.body.high : part.body.low)[axis]),
  };
  // An end that is let in is out of reach by then.
  const { box, inside } = part.turned
    ? { box: part.blank, inside: new Map<string, string>() }
    : bareFace(work, id, { low: first.at, high: first.at }, meeting, around(work, [id], fitting));
  const said = otherAxes(axis)
    .toReversed()
    .map((each) => {
      const at = first.at[each];
      const told = fromNearer({ print: work.place }, { ...part, blank: box }, each, at, at);
      const held = [false, true]
        .map((high) => faceOf(each, high))
        .find((side) => told?.includes(` from the ${side} `) && inside.has(side));
      return told && held ? told.replace(/ from the .*$/u, ` from the ${inside.get(held)}`) : told;
    });
  return series(said.flatMap((each) => each ?? [])) || "in the middle";
}

/** "2 knobs 1 1/4 in across", as the shopping list calls them. */
const counted = (kind: string, label: string, n: number): string => {
  if (!label.startsWith(kind)) return `${n} ${label}`;
  const more = label.slice(kind.length);
  const rest = more.startsWith(", ") ? ` (${n > 1 ? "each " : ""}${more.slice(2)})` : more;
  return `${n} ${n > 1 ? pluralOf(kind) : kind}${rest}`;
};
