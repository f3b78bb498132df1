import { failed, type Outcome, outcome } from "../../../findings/outcome.ts";
import { noPossibleOrder } from "../../../findings/rules/no-possible-order.ts";
import type { Span } from "../../../findings/span.ts";
import type { Solid } from "../../../geometry/index.ts";
import type { Leg } from "../../build.ts";
import type { Arrangement, Design } from "../../design.ts";
import { reach } from "../reach/index.ts";
import { blockingOf } from "./blocking.ts";
import { withRoom } from "./bores.ts";
import { choicesOf, type Refusal, type Taken } from "./choices.ts";
import { fillersOf } from "./fillers.ts";
import { glazingOf, goesInLast } from "./glazing.ts";
import { components, linksOf } from "./links.ts";
import { type Lock, lockOf } from "./locked.ts";
import { pegsOf } from "./pegs.ts";
import type { Assembly, Plan, Removable } from "./plan.ts";
import { removables } from "./removable.ts";
import { shutIn } from "./shut-in.ts";
import { type Piece, volumesOf } from "./splits.ts";
import { tiltOut, wayIn } from "./tilt.ts";
import { build, itemsOf, movingBodies, type Trapped } from "./units.ts";
import { waitingOf } from "./waiting.ts";
import { impossible, noUnit, type Sequence, sequencesOf, unitsWished } from "./wishes.ts";

/**
 * An order in which the piece can be put together, unit by unit: each body leaves and arrives in a straight line, hangs together by
 * its own joints, and every fastener is reached by a tool when its joint is closed. A piece that has none gives `no-possible-order`.
 */
export function orderOfWork(design: Design): Outcome<Plan> {
  const { parts } = design;
  const links = linksOf(design);
  const [largest = [], ...rest] = components(
    parts.map((_, i) => i),
    links,
  ).toSorted((a, b) => b.length - a.length);
  if (rest.length > 0) return failed([apart(design, largest, rest.flat())]);

  const judge = reach();
  const choices = choicesOf(
    parts,
    links,
    judge,
    [...parts, ...design.fittings].flatMap(({ holes }) => holes),
  );
  if ("why" in choices.travelling) return failed([refused(design, choices.travelling, [])]);
  const blocking = blockingOf(design, [...choices.travelling.values()]);
  const wishes = sequencesOf(design);
  const tilt = tilting(parts, [...choices.travelling.values()]);
  const { travelling } = choices;
  // What was found in the way once is known the next time.
  const tilts = new Map([["", tilt]]);
  const tiltWithout = (pulled: ReadonlySet<string>): Piece["tilt"] => {
    const key = [...pulled].join();
    const known =
      tilts.get(key) ??
      tilting(
        parts,
        [...travelling.values()].filter((each) => !isOf(pulled, each)),
      );
    tilts.set(key, known);
    return known;
  };
  const set = setInPlace(design);
  const setPlaces = new Set(parts.flatMap(({ id }, i) => (set.has(id) ? [i] : [])));
  const glazed = new Set(glazingOf(design));
  const glazing = new Set(parts.flatMap(({ id }, i) => (glazed.has(id) ? [i] : [])));
  const piece = {
    parts,
    links,
    blocking,
    choices,
    set: setPlaces,
    glazing,
    waiting: waitingOf(design),
    fillers: fillersOf(design),
    wishes,
    tilt,
    volumes: volumesOf(design),
  };
  const bodies = movingBodies(design);
  const units = unitsWished(design);
  const onBench = bodies.map((body) => body.filter((i) => !set.has(parts[i]?.id ?? "")));
  const attempt = (kept: readonly Sequence[]) => {
    const inUnits = (loose: ReadonlySet<string>) => {
      const inPlace =
        set.size > 0
          ? build({ ...piece, wishes: kept }, itemsOf(design, new Set([...set, ...loose]), onBench, units), travelling)
          : null;
      // Where no screwdriver goes in behind it, it is screwed on at the bench.
      return inPlace && !("parts" in inPlace)
        ? inPlace
        : build({ ...piece, wishes: kept }, itemsOf(design, loose, bodies, units), travelling);
    };
    // Glass goes into what stands, where it still gets in there; else into the unit that it belongs to.
    const standing = glazed.size > 0 ? inUnits(glazed) : null;
    return standing && !("parts" in standing) && goesInLast(standing.assembly, design) ? standing : inUnits(new Set());
  };
  const built = attempt(wishes);
  if ("parts" in built) {
    const possible = wishes.length > 0 && !("parts" in attempt([]));
    const guilty = possible ? (wishes.find((wish) => "parts" in attempt([wish])) ?? wishes[0]) : undefined;
    return failed([
      guilty
        ? impossible(design, guilty, links, blocking)
        : trapped(design, built, judge, lockOf(built.parts, links, blocking)),
    ]);
  }
  const split = units.filter((body) => !isUnit(built.assembly, names(design, body)));
  if (split.length > 0) return failed(split.map((body) => noUnit(design, body, blocking)));
  let off: readonly Removable[] | undefined;
  return outcome(
    {
      root: built.assembly,
      // Asked for by the steps only: where a plan is judged at other thicknesses it has none.
      get removable() {
        off ??= removables(design, built.assembly, blocking, tiltWithout, judge);
        return off;
      },
      ...fittings(design, built.taken),
    },
    // Pins can be pulled out.
    shutIn(design, blocking, tilting(parts, [])),
  );
}

/** Whether what is put into both parts of a joint belongs to one of some joints. */
const isOf = (joints: ReadonlySet<string>, { fasteners }: Arrangement): boolean =>
  fasteners.some(({ joint }) => joints.has(joint));

/** Whether some parts are put together by themselves. */
const isUnit = (assembly: Assembly, ids: readonly string[]): boolean =>
  (assembly.parts.length === ids.length && ids.every((id) => assembly.parts.some((own) => own === id))) ||
  (assembly.kind === "union" && (isUnit(assembly.staying, ids) || isUnit(assembly.moving, ids)));

/** Ways in with one tilt, each looked for once, and not at all where what stood in every way before is still there. */
function tilting(parts: Design["parts"], pegged: readonly Arrangement[]): Piece["tilt"] {
  const known = new Map<string, readonly Leg[] | null>();
  const inTheWay = new Map<string, (readonly number[])[]>();
  // Most pieces need no tilt: their pegs are made into solids when one is first asked for.
  let own: readonly (readonly Solid[])[] | undefined;
  const solids = (places: readonly number[]): readonly Solid[] => {
    own ??= pegsOf(parts, pegged).map((pegs, i) => [parts[i], ...pegs].flatMap((each) => each?.solid ?? []));
    return places.flatMap((place) => own?.[place] ?? []);
  };
  return (moving, staying) => {
    const body = moving.join();
    const key = `${body}|${staying.join()}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const still = new Set(staying);
    const blocked = inTheWay.get(body) ?? [];
    if (blocked.some((places) => places.every((place) => still.has(place)))) return null;
    const out = tiltOut(solids(moving), solids(staying));
    const legs = "legs" in out ? wayIn(out.legs) : null;
    known.set(key, legs);
    if ("inTheWay" in out)
      inTheWay.set(body, [
        ...blocked,
        staying.filter((place) => solids([place]).some((solid) => out.inTheWay.has(solid))),
      ]);
    return legs;
  };
}

/** Fronts of drawers go on when the drawers run in their places. */
const setInPlace = ({ joints }: Design): ReadonlySet<string> =>
  new Set(joints.flatMap(({ setWith, parts: [, front] }) => (setWith ? [front] : [])));

/** Fasteners, holes and hardware in their final order. */
function fittings({ parts, joints, fittings: fixed }: Design, taken: Taken): Omit<Plan, "root" | "removable"> {
  const chosen = new Map(
    joints.flatMap(({ id }, i) => {
      const arrangement = taken.get(i);
      return arrangement ? [[id, arrangement] as const] : [];
    }),
  );
  const arrangements = [...chosen.values()];
  return {
    chosen,
    fasteners: arrangements.flatMap(({ fasteners }) => fasteners),
    holes: withRoom([...parts, ...arrangements, ...fixed].flatMap(({ holes }) => holes)),
    hardware: [...arrangements, ...fixed].flatMap(({ hardware }) => hardware ?? []),
  };
}

const names = ({ parts }: Design, places: readonly number[]): readonly string[] =>
  places.flatMap((place) => parts[place]?.id ?? []);

/** The first part in the source, and the others as further places. */
function pointing({ parts }: Design, places: readonly number[], label: string) {
  const [first, ...rest] = places.flatMap((place) => parts[place]?.at ?? []);
  const nowhere: Span = { start: 0, end: 0, line: 1, column: 1 };
  return { at: first ?? nowhere, also: rest.map((at) => ({ at, label })) };
}

function apart(design: Design, largest: readonly number[], loose: readonly number[]) {
  const { at, also } = pointing(design, loose, "and this");
  return noPossibleOrder(at, { because: "loose", parts: names(design, loose), from: names(design, largest) }, { also });
}

function trapped(
  design: Design,
  { parts, refusals, exhausted }: Trapped,
  judge: ReturnType<typeof reach>,
  lock: Lock | null,
) {
  const first = refusals.find(({ why }) => why === "reach") ?? refusals[0];
  const body = parts.flatMap((place) => design.parts[place] ?? []);
  if (first && !exhausted)
    return refused(
      design,
      first,
      first.why === "reach" ? judge.inTheWay(first.fastener, body).map(({ id }) => id) : [],
    );
  const core = lock?.parts ?? parts;
  const keys = lock?.keys.map((joint) => ({ method: joint.method, parts: joint.parts })) ?? [];
  const { at, also } = pointing(design, core, "with this");
  const because = exhausted && !lock ? "not found" : "locked";
  return noPossibleOrder(at, { because, parts: names(design, core), keys }, { also });
}

function refused(design: Design, refusal: Refusal, inTheWay: readonly string[]) {
  const { joint } = refusal.link;
  const parts = [...joint.parts];
  if (refusal.why === "holes") return noPossibleOrder(joint.at, { because: "holes", parts });
  if (refusal.why === "heads") {
    const { fastener, part } = refusal;
    const also = { also: [{ at: part.at, label: "where the head would be" }] };
    return noPossibleOrder(joint.at, { because: "heads", parts, item: fastener.item, inTheWay: [part.id] }, also);
  }
  const also = design.parts
    .filter(({ id }) => inTheWay.includes(id))
    .map(({ at }) => ({ at, label: "in the way of the tool" }));
  return noPossibleOrder(joint.at, { because: "reach", parts, item: refusal.fastener.item, inTheWay }, { also });
}
