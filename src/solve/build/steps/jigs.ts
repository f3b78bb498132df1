import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import type { Jig } from "../model/jig.ts";
import { capital, type StepDraft, series, type Work, withArticle } from "./draft.ts";
import { ROUTER_CAUTION, step } from "./making-step.ts";
import { JIGS } from "./precedence.ts";
import { type Sentence, sentence } from "./sentence.ts";

/** For screws in the edge of a jig. Common practice, no source. */
export const fencePilot = (units: Units): Length => (units === "inch" ? inches(3, 32) : millimetres(5, 2));

/** Minutes to make one (common practice, no source). */
const MINUTES = 10;

/** Templates are made before the first part is bored by them. */
export function jigSteps(work: Work): readonly StepDraft[] {
  const { jigs } = work;
  if (jigs.length === 0) return [];
  const told = jigs.map((jig) => text(jig, work));
  const used = told.map((each) => each.used);
  const title = jigs.length === 1 ? "Make the jig" : "Make the jigs";
  const more = { unit: JIGS, bench: MINUTES * jigs.length, cautions: [ROUTER_CAUTION], fresh: [] };
  return [
    step(
      "make",
      title,
      told.flatMap((each, i): readonly Sentence[] => {
        const { made, fences } = each;
        const before = fences === null ? -1 : told.slice(0, i).findIndex((other) => other.fences === fences);
        const own = before < 0 ? fences : fencesLike(jigs[before] as Jig);
        // How several are used alike is told behind the last of them.
        const use = each.used === null || used.includes(each.used, i + 1) ? null : each.used;
        const last = [own, use].filter((text) => text !== null).join(" ");
        if (last === "") return made;
        return [...made, own === null ? last : sentence(last, { uses: [{ of: "screws in fences" }] })];
      }),
      [],
      more,
    ),
  ];
}

interface Told {
  readonly made: readonly string[];
  /** Of a template: what lies against the edges of the part; null where there is none. */
  readonly fences: string | null;
  /** How it is laid on; null for a spacer. */
  readonly used: string | null;
}

const fencesLike = ({ id }: Jig): string =>
  `Rip and screw on two fences as for ${id}, as long as these edges, with two spare wood screws through each.`;

/** More places than these are read from the drawing. */
const MOST = 3;

const placesIn = (places: readonly string[], from: string): string =>
  places.length > MOST ? `at each place that its drawing has ${from}` : `at ${series(places)} ${from}`;

function text(jig: Jig, work: Work): Told {
  const { id, what, laid, end = "lower", width, length, count, holes, from, handed } = jig;
  const { print, drill, place } = work;
  const wood = from === null ? "scrap" : `an offcut of ${work.stock(from).label}`;
  const name = capital(id);
  const bored = `${withArticle(drill(holes[0]?.diameter ?? width))} hole`;
  const instead =
    from === null ? ` What else is ${print(width)} thick does as well, such as the shanks of bolts or bits.` : "";
  if (laid === "between")
    return {
      made: [
        `${name}, to hold ${what} apart: from ${wood} rip a strip ${print(width)} thick, long enough to be held at the saw, and cut ${count} spacers ${print(length)} long from its end.${instead}`,
      ],
      ...{ fences: null, used: null },
    };
  if (laid === "on the end")
    return {
      made: [
        `${name}, for ${what}: cut a strip of ${wood} to ${print(width)} × ${print(length)}, mark its ${end} end, and draw a line along its middle, down over both its ends.`,
        `On this line bore ${bored} ${placesIn(
          holes.map(({ y }) => place(y)),
          `from the ${end} end`,
        )}, square to the face, right through.`,
      ],
      fences: null,
      // The strip hides what it lies on.
      used: `Draw the line of the holes on a part farther than the strip reaches, and over the edge at its ${end} end. While the part lies flat, clamp the strip on it so that its line meets that of the holes at both ends, its ${end} end flush with the ${end === "lower" ? "lower end" : end} of the part. ${stopText(jig, print)}`,
    };
  const inch = work.design.units === "inch";
  const guided = work.plan.holes.some((hole, i) => !hole.through && jig.uses.holes.includes(i));
  const places = holes.map(({ x, y }) => `${place(x)} and ${place(y)}`);
  return {
    made: [
      `${name}, for ${what}: cut a piece of ${wood} to ${print(width)} × ${print(length)}, and mark two edges that meet square.`,
      places.length > MOST
        ? `Bore ${bored} at each place that its drawing has, measured from these two edges, square to the face, right through.`
        : `From these two edges bore ${bored} at ${series(places)}, square to the face, right through.`,
    ],
    fences: `From the same offcut rip two strips ${handed ? (inch ? "2 in" : "50 mm") : inch ? "1 1/2 in" : "40 mm"} wide, as long as these edges, for fences. Screw one flat against each edge, so that it stands ${inch ? "1/2 in" : "12 mm"} past the face that lies on the part${handed ? ", and past the other too" : ""}: two spare wood screws about ${inch ? "1 1/4 in" : "30 mm"} long through each into the middle of the edge, in ${drill(fencePilot(work.design.units))} pilot holes through the strip and on.`,
    used: `Hold the fences against the edges of the part and bore through the template${handed ? "; turn it over for the other hand" : ""}.${guided ? ` ${stopText(jig, print)}` : ""}`,
  };
}

/** The bit passes the jig before it reaches the part. */
const stopText = ({ thickness }: Jig, print: Work["print"]): string =>
  thickness
    ? `The stop is set for hole and jig together: where a step bores by it, its ${print(thickness)} are in the figure for the stop, not in the depth of the hole. If your offcut is thinner or thicker, set the stop by as much less or more.`
    : "Measure how thick it is, and add this to the depth of the holes where you set the stop.";
