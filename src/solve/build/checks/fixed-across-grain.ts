import { fixedAcrossGrain } from "../../../findings/rules/fixed-across-grain.ts";
import { movementHoleTooSmall } from "../../../findings/rules/movement-hole-too-small.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { roundTo } from "../../../units/round.ts";
import { indexOf } from "../../design/space.ts";
import { changeOf, changeSinceFitted } from "../../design/use/seasons.ts";
import { USUAL_SITE } from "../../design/use/site.ts";
import type { Movement, Part, Stock } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Frame, frameMovement, framesOf, type Hold, holdsOf, strain, TAKEN } from "./wood/restraint.ts";

/** Two holds of a board, how far its wood moves between them, and how far it may. */
interface Pull {
  readonly first: Hold;
  readonly second: Hold;
  readonly movement: number;
  readonly limit: number;
}

/** A wide board is not fixed across its grain to what does not move with it. */
export const fixedAcrossGrainRule: Rule = (checked) => {
  const { design } = checked;
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const frames = framesOf(checked);
  return design.parts.flatMap((part) => {
    const stock = stocks.get(part.stock);
    const frame = frames[indexOf(part.axes.width)] as Frame;
    // Of what is not square to the room, its own directions are none of the frame.
    return stock?.movement === undefined || part.turned ? [] : judge(part, stock, stock.movement, frame, checked);
  });
};

function judge(part: Part, stock: Stock, movement: Movement, frame: Frame, checked: Checked): readonly Verdict[] {
  const { design } = checked;
  const site = design.site ?? USUAL_SITE;
  const worst = worstPull(part, stock, frame, checked);
  if (worst === null) return [];
  const slides = worst.first.anchor.slack + worst.second.anchor.slack > 0;
  const check = {
    rule: slides ? "movement-hole-too-small" : "fixed-across-grain",
    subject: part.id,
    value: worst.movement,
    limit: worst.limit,
    unit: "mm",
    basis: `Wood Handbook FPL-GTR-190, Eq. 13-2 and 13-3; coefficient: ${movement.basis}; moisture: ${site.basis}; limit: ${slides ? "geometry" : "common practice, no source"}`,
  };
  if (worst.movement <= worst.limit) return [{ check: { ...check, verdict: "holds" } }];
  const finding = slides ? holeFinding(part, stock, worst, checked) : fixedFinding(part, stock, worst, checked);
  return [{ check: { ...check, verdict: "warns" }, finding }];
}

/** The two holds between which the wood has least room for its movement. Null where the board is held at one place only. */
function worstPull(part: Part, stock: Stock, frame: Frame, { design }: Checked): Pull | null {
  const site = design.site ?? USUAL_SITE;
  const change = changeOf(stock, site);
  const [whole, fitted] = [change, changeSinceFitted(stock, site)].map((each) =>
    Math.abs(strain(part, stock, frame.axis, each)),
  ) as [number, number];
  const holds = holdsOf(part, frame).toSorted((a, b) => a.at - b.at);
  let worst: Pull | null = null;
  const ratio = (pull: Pull | null): number => (pull === null ? -1 : pull.movement / pull.limit);
  const pullOf = (first: Hold, second: Hold, give: number): Pull => {
    const room = first.anchor.slack + second.anchor.slack;
    // What holds it gives in the same proportion, whatever the change.
    const held = Math.max(0, second.at - first.at - (whole > 0 ? give / whole : 0));
    const moving = (share: number): number => share * held;
    const fast = { first, second, movement: moving(whole), limit: TAKEN };
    const loose = { first, second, movement: moving(fitted), limit: room };
    return room > 0 && ratio(loose) < ratio(fast) ? loose : fast;
  };
  for (const [i, first] of holds.entries()) {
    const others = holds.slice(i + 1).filter((second) => second.at > first.at);
    const open = others.filter((second) => ratio(pullOf(first, second, 0)) > Math.max(1, ratio(worst)));
    // What joints take even from a part that does not move at all needs no search for what holds it.
    for (const second of others.filter((each) => !open.includes(each))) {
      const pull = pullOf(first, second, 0);
      if (pull.movement / pull.limit <= 1 && ratio(pull) > ratio(worst)) worst = pull;
    }
    if (open.length === 0) continue;
    const give = frameMovement(part, first, frame, change);
    for (const second of open) {
      const moves = give(second);
      const pull = pullOf(first, second, moves);
      if (Number.isFinite(moves) && ratio(pull) > ratio(worst)) worst = pull;
    }
  }
  return worst;
}

function fixedFinding(part: Part, stock: Stock, pull: Pull, { design, print }: Checked) {
  const site = design.site ?? USUAL_SITE;
  const change = changeOf(stock, site);
  const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
  const free = Math.abs(strain(part, stock, indexOf(part.axes.width), changeSinceFitted(stock, site)));
  const moves = free * (pull.second.at - pull.first.at);
  return fixedAcrossGrain(part.at, {
    part: part.id,
    movement: tell(pull.movement),
    between: tell(pull.second.at - pull.first.at),
    to: [...new Set([pull.first.to, pull.second.to])],
    from: change.from,
    until: change.to,
    place: site.name,
    limit: tell(TAKEN),
    remedy: remedyFor(pull, moves, design.units, print),
  });
}

/** With screws: the hole that frees it. With glue: something that slides. */
function remedyFor({ first, second }: Pull, moves: number, units: "inch" | "mm", print: Checked["print"]): string {
  const { fastener } = second.anchor;
  if (fastener === null)
    return `do not glue it over its width: hold it with screws in oversized holes that give it ${print(up(moves, units))}, or in a groove without glue`;
  const oneJoint = first.anchor === second.anchor;
  const hole = print(up(fastener.rod + (oneJoint ? 1 : 2) * moves, units));
  const plain = fastener.kind === "wood screw" ? "" : "plain ";
  const freed = `${plain}screws clearance holes or slots of ${hole} (\`oversized\`), with washers`;
  return oneJoint
    ? `give ${plain === "" ? "its " : ""}${freed}`
    : `hold it fast at ${first.to} only, and give the ${freed}, at ${second.to}`;
}

function holeFinding(part: Part, stock: Stock, { first, second, movement }: Pull, { design, print }: Checked) {
  const site = design.site ?? USUAL_SITE;
  const change = changeSinceFitted(stock, site);
  const both = first.anchor.slack > 0 && second.anchor.slack > 0;
  const { fastener, slack } = (first.anchor.slack > 0 ? first : second).anchor;
  const rod = fastener?.rod ?? 0;
  const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
  return movementHoleTooSmall(part.at, {
    part: part.id,
    movement: tell(movement),
    hole: tell(rod + 2 * slack),
    wanted: print(up(rod + (both ? 1 : 2) * movement, design.units)),
    from: change.from,
    until: change.to,
    place: site.name,
  });
}

/** To the next 1/16 in or millimetre. */
const up = (mm: number, units: "inch" | "mm"): Length =>
  roundTo(millimetres(Math.ceil(mm * 1000), 1000), units === "inch" ? inches(1, 16) : millimetres(1), "up");
