/** What is finished before it goes into a groove, without glue: it has to slide there with its coats on it. */
import type { Finishing } from "../../../build.ts";
import { filmOf } from "../../finishing/products.ts";
import { capital, listed, numberWord, type Work } from "../draft.ts";

/** How thick a panel stays in its grooves: a sheet of paper is as thick as three coats. `finish`: null where the plan leaves it to the builder. */
export function slidesInTexts(
  work: Work,
  panels: readonly string[],
  finish: Pick<Finishing, "product" | "coats"> | null,
): readonly string[] {
  if (panels.length === 0) return [];
  const [goes, its, it, each] = panels.length === 1 ? ["goes", "its", "it", "it"] : ["go", "their", "them", "each"];
  const film = finish === null || filmOf(finish) > 0;
  const coats = finish === null ? "a finish" : finish.coats === 1 ? "a coat" : `${numberWord(finish.coats)} coats`;
  const room = film ? ` with a sheet of paper on both faces: ${coats} will take up that room` : "";
  return [
    `${capital(listed(work, panels))} ${goes} into ${its} grooves without glue, and must not stick there. Try ${it} in those grooves now, or in one cut alike in an offcut, and plane or sand ${its} edges, as far as they go in, until ${each} slides easily${room}.`,
  ];
}
