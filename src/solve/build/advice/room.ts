/** From the workshop to where it stays. Common practice, no source. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { ONE_STUD, tooShortForTwoStuds } from "../at-the-wall.ts";
import { sayWeight, takesTwo } from "../cut-list/weight.ts";
import type { Advice } from "../model/advice.ts";
import { leftTogether, type Moved, movedAsOne } from "../moved-as-one.ts";
import { series } from "../steps/draft.ts";
import { behind } from "./behind.ts";
import type { Traits } from "./traits.ts";

type Say = (traits: Traits, print: Print) => string | null;
type Print = (mm: number) => string;

const ROOM: readonly (readonly [head: string, say: Say])[] = [
  ["On the way.", onTheWay],
  ["Level.", level],
  ["At the wall.", atTheWall],
  ["Behind it.", behind],
  ["What it carries.", carries],
  ["New finish.", newFinish],
  ["The air.", air],
  ["After the first winter.", afterWinter],
];

/** What is carried in one piece, the largest first; doors and drawers come out. What could be taken apart further is told besides. */
function onTheWay({ build, doors, drawers }: Traits, print: Print): string | null {
  const [largest, ...others] = bySize(leftTogether(build.design));
  const [apart] = bySize(movedAsOne(build.design));
  if (!largest || !apart) return null;
  // What lies in the largest is carried along, and weighs.
  const { liesIn = [] } = build;
  const told = ({ parts, sizes }: Moved, lying: readonly string[]): string => {
    const ids = new Set([...parts.map(({ id }) => id), ...lying]);
    const kg = build.parts.reduce((so, { id, mass }) => so + (ids.has(id) ? mass : 0), 0);
    return `measures ${sizes.map(print).join(" × ")} and weighs about ${sayWeight(kg, build.design.units)}${lying.length > 0 ? ", with what lies in it and does not come out" : ""}${takesTwo(kg) ? ": two people carry it" : ""}`;
  };
  const out = [...(doors ? ["doors"] : []), ...(drawers ? ["drawers"] : [])].join(" and ");
  const whole = `${out === "" ? "" : `Without its ${out} `}${others.length === 0 ? (out === "" ? "It" : "it") : `${out === "" ? "The" : "the"} largest piece that stays together`}`;
  const kept = new Set(apart.parts);
  const off = build.cutList.filter(({ parts }) =>
    largest.parts.some((part) => parts.includes(part.id) && !kept.has(part)),
  );
  const further =
    apart.parts.length < largest.parts.length && volume(apart.sizes) < volume(largest.sizes)
      ? ` With ${series(off.map(({ mark }) => mark))} taken off, which is made to come off again, the largest piece ${told(apart, [])}.`
      : "";
  const check = build.checks.filter(({ rule }) => rule === "does-not-go-through-the-door");
  const known = check.find(({ verdict }) => verdict === "accepted")?.because;
  const fits = known
    ? `It does not go straight through a doorway of ${print(29 * 25.4)} × ${print(78 * 25.4)}: measure every door on the way before you build it. ${sentence(known)}`
    : check.every(({ verdict }) => verdict === "holds")
      ? `${further === "" ? "It" : "That"} goes through a doorway of ${print(29 * 25.4)}; measure yours, and the turn of the stairs.`
      : `${further === "" ? "It" : "That"} does not go through a doorway of ${print(29 * 25.4)} × ${print(78 * 25.4)}: measure every door on the way before you build it.`;
  return `${whole} ${told(largest, liesIn)}.${further} ${fits}`;
}

/** Of a reason that the maker gave. */
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/u, "")}.`;

const bySize = (moved: readonly Moved[]): readonly Moved[] =>
  moved.toSorted((a, b) => volume(b.sizes) - volume(a.sizes));
const volume = (sizes: readonly number[]): number => sizes.reduce((so, each) => so * each, 1);

/** Of what has doors or drawers, or levellers, a step tells it. */
function level({ has, onWall, onFeet, doors, drawers }: Traits): string | null {
  if (onWall || has("leveller")) return null;
  if (has("caster")) return "Lock the casters before anybody leans on it.";
  if (doors || drawers) return null;
  return `Lay a level along it and across it, and put thin packing under ${onFeet ? "the feet that hang" : "what does not touch the floor"} until it stands plumb and does not rock.`;
}

function atTheWall({ has, stores, onWall, canTip, shallow, build }: Traits): string | null {
  if (onWall) {
    const count = build.hardware.filter(({ item, halfOf }) => item.kind === "wall screw" && !halfOf).length;
    const screws = count === 1 ? "The screw goes" : count === 2 ? "Both screws go" : `All ${count} screws go`;
    const onStuds = tooShortForTwoStuds(build.design)
      ? `A wall on studs has at most one behind it: ${ONE_STUD}.`
      : "Before a wall on studs each has to go into one, wherever that is, and two studs are needed.";
    if (build.design.wall?.studs === null)
      return `${screws} into plugs in solid masonry: for such a wall their places are drawn. ${onStuds} Where the wall is not plumb, put packing behind, so that the screws do not twist the piece.`;
    return `${screws} into studs, as the step tells; in solid masonry into plugs that take their whole length. Plaster or board alone holds nothing. Where the wall is not plumb, put packing behind, so that the screws do not twist the piece.`;
  }
  // Straps are told of in the step that fixes them.
  if (!stores || has("wall strap")) return null;
  if (canTip)
    return "What ties it to the wall is not in this plan: buy a strap that its maker sells for your wall, and for the weight of the piece and all that is in it, and fix it as its label says.";
  if (!shallow) return null;
  return "This plan has no fixing to a wall. Whoever hangs it up chooses one for that wall, and for the weight of the piece and all that is in it.";
}

/** What the plan was worked out for: no promise of what it bears. */
function carries({ build }: Traits): string | null {
  const { seats, carries: load, units } = build.design;
  const judged = build.checks.some(({ rule }) => rule === "shelf-sags" || rule === "seat-bends");
  if (!judged) return null;
  const told = [
    ...(seats
      ? [
          `The seat was worked out for ${seats.count === 1 ? "one person" : `${seats.count} people`} of ${sayWeight(seats.eachWeighs, units)}, sitting still.`,
        ]
      : []),
    ...(load && "kilograms" in load
      ? [`Each shelf was worked out for ${sayWeight(load.kilograms, units)}, spread evenly.`]
      : []),
    ...(load && "name" in load && load.name !== "nothing"
      ? [`What lies flat was worked out for ${load.name}, side by side.`]
      : []),
  ];
  return told.length === 0 ? null : `${told.join(" ")} It is no place to stand on.`;
}

function newFinish({ build }: Traits): string | null {
  const days = Math.max(0, ...(build.finishSchedule?.rows ?? []).map(({ cure }) => cure));
  return days === 0
    ? null
    : `Let it cure about ${days} days before it is loaded or wiped wet. Until then put nothing on it overnight.`;
}

function air({ build, solid }: Traits): string | null {
  if (!solid) return null;
  const place = build.design.site?.name ?? "a heated house";
  return `The plan reckons with ${place}. Keep it a hand’s breadth from radiators and stoves, and out of the draught of an air conditioner: wood follows the air.`;
}

function afterWinter({ build, doors, drawers, solid, floats, slides, has }: Traits): string | null {
  const of = (what: RegExp): boolean => build.fasteners.some(({ kind }) => what.test(kind));
  const turned = [...(of(/screw/u) ? ["screw"] : []), ...(of(/bolt/u) ? ["bolt"] : [])].join(" and ");
  const told = [
    ...(turned !== ""
      ? [
          `turn every ${turned} that can be reached a little tighter, by hand${slides ? ", but not those on which something slides" : ""}`,
        ]
      : []),
    ...(slides ? ["look that the top still slides on what holds it, and has not been glued or jammed"] : []),
    ...(floats ? ["touch up a bare line at the edge of a panel that has shrunk"] : []),
    ...(doors ? ["set the doors anew"] : []),
    ...(drawers && !has("side slide", "undermount slide") ? ["rub wax where a drawer runs dry"] : []),
    ...(solid && (build.finishing ?? []).length > 0 ? ["renew the finish where it has gone dull"] : []),
  ];
  if (told.length === 0) return null;
  const list = [told.slice(0, -1).join("; "), ...told.slice(-1)].filter((each) => each !== "").join("; and ");
  return `${list.charAt(0).toUpperCase()}${list.slice(1)}.`;
}

/** Sizes in whole millimetres or sixteenths of an inch: nobody measures a doorway more finely. */
export function roomFor(traits: Traits, print: (length: Length) => string): readonly Advice[] {
  const inch = traits.build.design.units === "inch";
  const say: Print = (mm) => print(inch ? inches(Math.round((mm / 25.4) * 16), 16) : millimetres(Math.round(mm)));
  return ROOM.flatMap(([head, textOf]) => {
    const text = textOf(traits, say);
    return text === null ? [] : [{ head, text }];
  });
}
