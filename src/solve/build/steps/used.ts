import type { Step, Use } from "../model/step.ts";

/** What steps ask for of one kind, each time that they do. */
export const usedIn = <K extends Use["of"]>(
  steps: readonly Pick<Step, "uses">[],
  of: K,
): readonly Extract<Use, { readonly of: K }>[] =>
  steps.flatMap(({ uses = [] }) => uses.filter((use): use is Extract<Use, { readonly of: K }> => use.of === of));
