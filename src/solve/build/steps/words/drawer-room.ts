/** What drawers run in: how wide their boxes come out, and the room between the walls that carry them. */
import { less, subtract } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { roomStep } from "../../../design/boring/marks.ts";
import { called, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { type Run, runsOf, whichRuns } from "./drawer-runs.ts";

/** Of boxes that are closed in a step, told of the first and made alike: the width that the run of each wants. `copies`: what is there before and after, of each. */
export function boxTexts(
  work: Work,
  copies: readonly { readonly before: readonly string[]; readonly after: readonly string[] }[],
): readonly string[] {
  const all = runsOf(work);
  const runs = copies.flatMap(({ before, after }) =>
    all.filter(
      ({ sides, outside, room: own }) =>
        sides.length > 1 &&
        less(outside, own) &&
        sides.every((id) => after.includes(id)) &&
        !sides.every((id) => before.includes(id)),
    ),
  );
  const [first] = runs;
  if (!first) return [];
  const which = whichRuns(all);
  const slides = first.method.endsWith("slides");
  const told = groupedBy(runs, (run) => sizesOf(work, run).join()).map((own, i, groups) => {
    const [smaller, outside, between] = sizesOf(work, own[0] as Run);
    const play = `, for ${slides ? "both slides" : "play"},`;
    const than = `than you measured ${betweenWords(work, runs)}`;
    const of = groups.length > 1 ? which(own) : null;
    return `${of ? `for ${of} ` : ""}${smaller} less${i === 0 ? `${play} ${than}` : ""}${groups.length > 1 ? "," : ";"} ${outside} where that is ${between}`;
  });
  return [
    `Measure over both sides, in front and behind, before the glue grabs: ${told.join("; ")}, as drawn. ${slides ? "A little less is made up with card behind a slide; what is wider binds, and" : "What is wider binds, and"} has to be planed.`,
  ];
}

/** How much less a box is than its room, how wide, and how wide that, as the opening is told when it is measured. */
function sizesOf(work: Work, { outside, room: own, method }: Run): readonly [string, string, string] {
  const room = roundTo(own, roomStep(work.design, method));
  return [work.print(subtract(room, outside)), work.print(outside), work.print(room)];
}

/** The room itself, to the same step wherever it is told. */
const roomWords = (work: Work, run: Run): string => sizesOf(work, run)[2];

function betweenWords(work: Work, runs: readonly Run[]): string {
  const pairs = runs.map(({ walls }) => walls.map((id) => called(work, id)));
  const [[one = "", two = ""] = []] = pairs;
  if (pairs.every((pair) => pair[0] === one && pair[1] === two) && one !== two)
    return `between the ${one} and the ${two}`;
  const marks = [...new Set(runs.flatMap(({ walls }) => walls.map((id) => work.line(id).mark)))];
  return `between ${runs.length > 1 ? "their" : "its"} walls (${series(marks)})`;
}

/** Of a case that has both walls now: the room, which may not narrow towards the back. What is glued can be moved until that has set. */
export function roomTexts(
  work: Work,
  before: readonly string[],
  after: readonly string[],
  glued: boolean,
): readonly string[] {
  const all = runsOf(work);
  const fresh = all.filter(
    ({ walls }) => walls.every((id) => after.includes(id)) && !walls.every((id) => before.includes(id)),
  );
  const which = whichRuns(all);
  return groupedBy(fresh, ({ walls, room: own }) => `${walls.join()} ${work.print(own)}`).map((runs) => {
    const { walls } = runs[0] as Run;
    const [one, two] = walls.map((id) => called(work, id));
    const of = which(runs);
    return `${of ? `Where ${of} ${runs.length === 1 ? "runs" : "run"}` : "Where drawers run"}, measure from the ${one} to the ${two} in front, in the middle and behind, above and below: ${roomWords(work, runs[0] as Run)} everywhere. ${glued ? "Where it is less or more, shift the clamps or wedge it apart with a stick of that length until the glue has set." : "Where it is less, plane what was just put on; where it is more, lay card behind it."}`;
  });
}
