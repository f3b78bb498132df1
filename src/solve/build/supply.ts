import { max, min } from "../../units/rational.ts";
import type { Design, Stock } from "../design.ts";
import type { LayoutOptions, OnHand, Sold, Supply } from "./cutting/ask.ts";
import { TRIM } from "./cutting/trim.ts";

/** What a plan's stock is cut from: the sizes that are sold with their prices, what lies in the workshop, what can be brought home. */
export function supplyOf({ stock, workshop, units }: Design): Pick<LayoutOptions, "supply" | "trim"> {
  const squaring = workshop?.squaring;
  const { carries } = workshop ?? {};
  const carry = carries && {
    shorter: min(carries.width, carries.length),
    longer: max(carries.width, carries.length),
  };
  const supply = stock.map((each): readonly [string, Supply] => [
    each.name,
    { sold: soldOf(each), onHand: onHandOf(each), ...(carry && each.form === "sheet" && { carry }) },
  ]);
  return { supply: new Map(supply), ...(squaring && { trim: { ...TRIM[units], sheet: squaring } }) };
}

/** Rough boards are paid for by volume: their prices follow their area, and none is given. */
function soldOf({ sold, soldWidth, soldLengths, price, roughThickness }: Stock): readonly Sold[] {
  const cents = (money: number | null): number | null =>
    money === null || roughThickness !== null ? null : Math.round(100 * money);
  if (sold !== undefined)
    return sold.map(({ width, length, price: own }) => ({ width, length, price: cents(own ?? null) }));
  const only = soldLengths.length === 1 ? price : null;
  return soldLengths.map((length) => ({ width: soldWidth, length, price: cents(only) }));
}

const onHandOf = ({ label, onHand = [] }: Stock): readonly OnHand[] =>
  onHand.map(({ width, length, count }) => ({ name: label, width, length, count }));
