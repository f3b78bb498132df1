import type { Bin, Item } from "../item.ts";
import { type Effort, pack } from "./greedy.ts";
import { better, evenness, judge, type Merit } from "./judge.ts";
import type { Board } from "./place.ts";
import { inOrder, RULES, type Rule } from "./rules.ts";
import { shuffler } from "./shuffle.ts";

/** Effort after which the search stops: about a tenth of a second. */
const LIMIT = 4_000_000;
/** Share of it for the rules as they are; the rest goes to changed orders. */
const FOR_RULES = LIMIT / 4;

interface Attempt {
  readonly boards: readonly Board[];
  readonly merit: Merit;
  readonly items: readonly Item[];
  readonly open: Bin;
  readonly rule: Rule;
}

/**
 * Boards that hold every blank: the best of all greedy rules, then of the best rule with blanks exchanged in its order, until
 * the cost comes down to `bound` or the effort is spent, of which `plain` takes little. `bins` are the kinds of board that may be bought, the cheapest first.
 */
export function findBoards(
  items: readonly Item[],
  bins: readonly Bin[],
  bound: number,
  plain = false,
): readonly Board[] {
  const limit = plain ? FOR_RULES / 4 : LIMIT;
  const effort: Effort = { spent: 0 };
  let best: Attempt | undefined;
  const attempt = (ordered: readonly Item[], open: Bin, rule: Rule): Attempt => {
    const boards = pack(ordered, bins, open, rule, effort);
    const tried = { boards, merit: judge(boards), items: ordered, open, rule };
    if (best === undefined || better(tried.merit, best.merit)) best = tried;
    return tried;
  };
  const openings = bins.toReversed();
  const some = items.some(({ blank }) => blank.alike !== undefined);
  for (const rule of RULES) {
    if (best !== undefined && effort.spent > Math.min(limit, FOR_RULES)) break;
    const ordered = inOrder(items, rule.order);
    for (const order of some ? [alikeFirst(ordered), ordered] : [ordered])
      for (const open of openings) attempt(order, open, rule);
  }
  if (best === undefined) return [];
  let current = best;
  let fill = evenness(current.boards);
  const shuffle = shuffler();
  while ((best.merit.cost > bound || best.merit.apart > 0) && items.length > 1 && effort.spent < limit) {
    const open = openings[shuffle.below(openings.length)] ?? current.open;
    const rule = shuffle.below(4) === 0 ? (RULES[shuffle.below(RULES.length)] ?? current.rule) : current.rule;
    const tried = attempt(shuffle.exchanged(current.items), open, rule);
    const filled = evenness(tried.boards);
    const worse = tried.merit.apart - current.merit.apart || tried.merit.cost - current.merit.cost || filled - fill;
    if (worse > 0) continue;
    [current, fill] = [tried, filled];
  }
  return best.boards;
}

/** Blanks to be alike one after another at the front, so that one board takes them. */
function alikeFirst(items: readonly Item[]): readonly Item[] {
  const names = [...new Set(items.flatMap(({ blank }) => blank.alike ?? []))];
  const place = ({ blank }: Item): number => (blank.alike === undefined ? names.length : names.indexOf(blank.alike));
  return items.toSorted((a, b) => place(a) - place(b));
}
