/** A plan in a workshop: its kerf, what it has, what things cost there. */
import type { Draft, StockDraft, ToolsDraft, WorkshopDraft } from "../../parse/draft.ts";
import type { Design } from "../design.ts";

/** One name for a thing however it is written: case, blanks, hyphens and the sign of multiplication do not matter. */
export const tradeName = (text: string): string =>
  text
    .normalize("NFC")
    .toLowerCase()
    .replaceAll("⁄", "/")
    .replace(/(?<=\d)[\s-]*(?:×|x|by)[\s-]*(?=\d)/gu, "x")
    .replace(/[\s_-]+/gu, "");

/** What a workshop has under the name of an item: the whole name as plans print it, or as far as its first comma. */
export const underName = <T>(table: ReadonlyMap<string, T>, item: string): T | undefined =>
  table.get(tradeName(item)) ?? table.get(tradeName(item.split(",")[0] ?? item));

/** The plan with what the workshop says. The workshop's kerf and prices count before the plan's, since they are nearer to the bench. */
export function inWorkshop(draft: Draft, workshop: WorkshopDraft | undefined): Draft {
  if (workshop === undefined) return draft;
  const stock = new Map([...draft.stock].map(([name, each]) => [name, withWorkshop(each, workshop)]));
  const tools = allTools(draft.tools, workshop.tools);
  return { ...draft, workshop, stock, kerf: workshop.kerf ?? draft.kerf, ...(tools && { tools }) };
}

/** What the design keeps of it. */
export function workshopOf({ workshop }: Draft): Pick<Design, "workshop"> {
  if (workshop === undefined) return {};
  const { file, squaring, carries, longestClamp, paper, supplies, prices } = workshop;
  return {
    workshop: {
      file,
      ...(squaring && { squaring }),
      ...(carries && { carries }),
      ...(longestClamp && { longestClamp }),
      ...(paper && { paper }),
      supplies: new Map(supplies.map(({ of, count }) => [tradeName(of), count])),
      prices: new Map(prices.flatMap(({ of, each }) => (each ? [[tradeName(of), each.value] as const] : []))),
    },
  };
}

/** What a stock may be called in a workshop. */
function namesOf({ name, soldAs, wood }: StockDraft): ReadonlySet<string> {
  const [sold, species] = [soldAs?.value ?? "", wood?.value ?? ""];
  const words = [name, sold, ...(sold === "" || species === "" ? [] : [`${sold} ${species}`, `${species} ${sold}`])];
  return new Set(words.filter((text) => text !== "").map(tradeName));
}

function withWorkshop(stock: StockDraft, { wood, prices }: WorkshopDraft): StockDraft {
  const names = namesOf(stock);
  const own = wood.filter(({ of }) => names.has(tradeName(of)));
  const price = prices.findLast(({ of }) => names.has(tradeName(of)));
  return {
    ...stock,
    ...(own.length > 0 && { onHand: own }),
    ...(price?.each && { price: price.each }),
    ...(price?.sheets && { sheets: price.sheets }),
    ...(price?.lengths && { soldIn: price.lengths }),
  };
}

/** What the plan counts on and what the workshop has, together. */
function allTools(plan: ToolsDraft | undefined, own: ToolsDraft | undefined): ToolsDraft | undefined {
  if (plan === undefined || own === undefined) return plan ?? own;
  return {
    ...((plan.mortiseBits || own.mortiseBits) && {
      mortiseBits: [...(plan.mortiseBits ?? []), ...(own.mortiseBits ?? [])],
    }),
    ...((plan.routerBits || own.routerBits) && {
      routerBits: [...(plan.routerBits ?? []), ...(own.routerBits ?? [])],
    }),
  };
}
