/** What another option changes, by numbers; and which sizes are free. */
import type { ChoiceDraft, Draft } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { less } from "../../units/rational.ts";
import type { FreeSize, Otherwise } from "../build/model/otherwise.ts";
import type { Build, Purchase } from "../build.ts";
import { placing } from "../design/placed.ts";
import type { Combination } from "./combinations.ts";

/** Each option that was not chosen, with the choices that leave all others as they are. */
export const singleChanges = (
  choices: readonly ChoiceDraft[],
  chosen: Combination,
): readonly { readonly choice: string; readonly option: string; readonly under: Combination }[] =>
  choices.flatMap(({ name, options }) =>
    options
      .filter((option) => option.name !== chosen.get(name))
      .map((option) => ({ choice: name, option: option.name, under: new Map([...chosen, [name, option.name]]) })),
  );

/** Two copies beside each other; null where they come to the same. */
export function otherwiseOf(choice: string, option: string, here: Build, there: Build): Otherwise | null {
  const buys = differences(here.purchases, there.purchases);
  const [more, cost] = [(of: (build: Build) => number) => of(there) - of(here), costOf(here, there)];
  const found: Otherwise = {
    ...{ choice, option, buys },
    ...(cost !== null && { cost }),
    mass: more(({ parts }) => parts.reduce((sum, { mass }) => sum + mass, 0)),
    bench: more(({ timeline }) => timeline.bench),
    parts: more(({ parts }) => parts.length),
  };
  return buys.length === 0 && found.parts === 0 && found.bench === 0 && found.mass === 0 ? null : found;
}

const keyOf = ({ item, unit }: Purchase): string => `${item} ${unit}`;

function differences(here: readonly Purchase[], there: readonly Purchase[]): Otherwise["buys"] {
  const quantity = (list: readonly Purchase[], key: string): number =>
    list.filter((each) => keyOf(each) === key).reduce((sum, each) => sum + each.quantity, 0);
  const all = new Map([...here, ...there].map((each) => [keyOf(each), each]));
  return [...all].flatMap(([key, { section, item, unit }]) => {
    const [a, b] = [quantity(here, key), quantity(there, key)];
    return a === b ? [] : [{ section, item, unit, here: a, there: b }];
  });
}

/** What the other copy costs more; null where something that differs has no price. */
function costOf(here: Build, there: Build): number | null {
  const changed = new Set(differences(here.purchases, there.purchases).map(({ item, unit }) => `${item} ${unit}`));
  const [a, b] = [here, there].map(({ purchases }) =>
    purchases.filter((each) => changed.has(keyOf(each)) && each.quantity > 0).map(({ price }) => price),
  ) as [(number | null)[], (number | null)[]];
  if (changed.size === 0 || [...a, ...b].includes(null)) return null;
  const sum = (prices: readonly (number | null)[]): number => prices.reduce((so: number, each) => so + (each ?? 0), 0);
  return sum(b) - sum(a);
}

/** Sizes with a range. `sizes`: what they are in this copy. */
export function freeSizes(draft: Draft, sizes: ReadonlyMap<string, Length>): readonly FreeSize[] {
  const { measure } = placing(draft, () => {});
  const { width, depth, height } = draft.outside;
  const all = [
    ...([
      ["width", width],
      ["depth", depth],
      ["height", height],
    ] as const),
    ...draft.sizes,
  ];
  return all.flatMap(([name, size]): readonly FreeSize[] => {
    const [low, high] = [size?.from, size?.to].map((formula) => formula && measure(formula));
    const value = sizes.get(name);
    if (!value || !low || !high || !less(low, high)) return [];
    return [{ name, ask: size?.ask?.value ?? "", value, low, high }];
  });
}
