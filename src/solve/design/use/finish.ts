import type { Draft } from "../../../parse/draft.ts";
import type { Finish } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";

/** Each part under the finish that names it last, or else that for everything; parts that none names have none. */
export function finishesOf(
  { finish = [] }: Draft,
  directory: Directory,
  parts: readonly string[],
): { readonly finishes?: readonly Finish[] } {
  if (finish.length === 0) return {};
  const found = finish.map(({ of }) => of && new Set((directory.find(of) ?? []).map(({ id }) => id)));
  const chosen = (id: string): number => {
    const named = found.findLastIndex((ids) => ids?.has(id) ?? false);
    return named >= 0 ? named : finish.findLastIndex(({ of }) => of === null);
  };
  const finishes = finish.map(
    ({ at: _, of, with: product, alike, ...said }, i): Finish => ({
      surface: of === null ? "everything else" : of.path.join("."),
      parts: parts.filter((id) => chosen(id) === i),
      ...{ product, ...said },
      ...(alike && { alike: alike.flatMap((each) => (directory.find(each) ?? []).map(({ id }) => id)) }),
    }),
  );
  const all = finishes.length === 1 && finish[0]?.of === null;
  return { finishes: all ? finishes.map((each) => ({ ...each, surface: "the whole piece" })) : finishes };
}
