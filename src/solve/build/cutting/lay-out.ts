import type { Finding } from "../../../findings/finding.ts";
import { alikeNotOnOneSheet } from "../../../findings/rules/alike-not-on-one-sheet.ts";
import type { Span } from "../../../findings/span.ts";
import { type Length, less, ZERO } from "../../../units/index.ts";
import type { Blank, Layout, LayoutProof } from "../../build.ts";
import type { Stock } from "../../design.ts";
import type { LaidOut, LayoutOptions } from "./ask.ts";
import { fitting, type Item, makeItem } from "./item.ts";
import { layStock } from "./lay-stock.ts";
import { prove } from "./prove.ts";
import { sawBoard } from "./saw-board.ts";
import { largestUsable, plainSupply, sizesOf } from "./sizes.ts";
import { tooLarge } from "./too-large.ts";
import { TRIM } from "./trim.ts";

/**
 * Lays every blank out on boards and sheets of its stock, cut from edge to edge: on what lies there first, then on what is bought at the
 * least cost (by area where prices are not known), then on the fewest, then with few settings of the saw and a large offcut. Stocks may
 * share boards: their layouts are those of the first of them. A blank that
 * no board can give is a finding, and is left out. A blank of a stock that is not in the list is a fault of the program.
 */
export function layOut(
  stock: readonly Stock[],
  blanks: readonly Blank[],
  kerf: Length,
  options: LayoutOptions = {},
): LaidOut {
  const { units = "inch", spans = new Map(), trim: usual = TRIM[units] } = options;
  const boardsOf = (name: string): string => options.boards?.get(name) ?? name;
  const homeless = blanks.find((blank) => !stock.some((each) => each.name === blank.stock));
  if (homeless !== undefined) throw new Error(`blank ${homeless.id} is of no stock of the plan`);
  const layouts: Layout[] = [];
  const proof: LayoutProof[] = [];
  const findings: Finding[] = [];
  for (const each of stock) {
    const supply = options.supply?.get(each.name) ?? plainSupply(each);
    const lay = (from: typeof supply): boolean => {
      const own = blanks.filter((blank) => boardsOf(blank.stock) === each.name);
      // What is as wide as its board has its other edge straightened, or both, when it is planed.
      const trims = [usual, { ...usual, farEdge: false }, { ...usual, roughEdge: ZERO }];
      const ways = trims.map((trim) => ({ trim, sizes: sizesOf(each, from, kerf, trim) }));
      const holds = ({ sizes }: (typeof ways)[number]): boolean =>
        !own.some((blank) => less(largestUsable(sizes).width, blank.width));
      const { trim, sizes } = ways.find(holds) ?? (ways[2] as (typeof ways)[number]);
      const usable = largestUsable(sizes);
      const all = own.map((blank) => makeItem(blank, kerf, usable));
      const used = stock.filter(({ name }) => own.some((blank) => blank.stock === name));
      const judged = used.map((one) =>
        tooLarge(
          all.filter(({ blank }) => blank.stock === one.name),
          { stock: one, usable, sizes, spans, units },
        ),
      );
      const unfit = new Set(judged.flatMap((of) => [...of.unfit]));
      const found = judged.flatMap((of) => of.findings);
      const items = all.filter((item) => !unfit.has(item)).map((item) => fitting(item, sizes));
      if (items.length === 0) {
        findings.push(...found);
        return true;
      }
      const { carry } = from;
      const laid = layStock(items, sizes, kerf, { ...options, ...(carry && { carry }) });
      if (laid === null) return false;
      const sawn = laid.packed.flatMap(({ type, root }) => {
        const size = sizes[type];
        return size === undefined ? [] : [{ type, layout: sawBoard(root, size, items, each, kerf) }];
      });
      // What lies there first, the small before the large.
      const ordered = sawn.toSorted((a, b) => a.type - b.type).map(({ layout }) => layout);
      layouts.push(...ordered);
      findings.push(...found, ...tornApart(ordered, items, spans, each));
      proof.push(
        prove({
          stock: each,
          stocks: used.map(({ name }) => name),
          sizes,
          supply: from,
          found: laid,
          kerf,
          trim,
          units,
        }),
      );
      return true;
    };
    // A blank that only pieces on hand could give, and cannot, is told by leaving them out; one that cannot be carried by not asking.
    const { carry: _, ...uncarried } = supply;
    if (!lay(supply) && !lay(uncarried)) lay({ ...uncarried, onHand: [] });
  }
  return { layouts, proof, findings };
}

/** Tells of blanks to be alike that lie on more than one board. */
function tornApart(
  layouts: readonly Layout[],
  items: readonly Item[],
  spans: ReadonlyMap<string, Span>,
  stock: Stock,
): readonly Finding[] {
  const byId = new Map(items.map(({ blank }) => [blank.id, blank]));
  const boards = new Map<string, Set<number>>();
  for (const [i, { placements }] of layouts.entries())
    for (const { blank } of placements) {
      const name = byId.get(blank)?.alike;
      if (name !== undefined) boards.set(name, (boards.get(name) ?? new Set()).add(i));
    }
  return [...boards].flatMap(([name, { size }]) => {
    if (size < 2) return [];
    const parts = items.flatMap(({ blank }) => (blank.alike === name ? [blank.part] : []));
    return [alikeNotOnOneSheet(spans.get(parts[0] ?? "") ?? stock.at, { parts: [...new Set(parts)], boards: size })];
  });
}
