import type { Finding } from "../../findings/finding.ts";
import type { Outcome } from "../../findings/outcome.ts";
import { choiceChangesNothing } from "../../findings/rules/choice-changes-nothing.ts";
import type { ChoiceDraft, Draft } from "../../parse/draft.ts";
import { type Combination, type Combinations, combinationsOf } from "./combinations.ts";
import { conditionOf } from "./condition.ts";
import { meaningOf } from "./meaning.ts";

/** How a plan is compiled: text to draft under some options, and what comes after. */
export interface Compiling {
  readonly read: (choose: Combination) => Outcome<Draft>;
  readonly solve: (draft: Draft) => readonly Finding[];
}

interface Run {
  readonly under: Combination;
  readonly draft: Draft | undefined;
  readonly findings: readonly Finding[];
}

/** What no option makes use of is of no use; what some option does is. */
const OF_NO_USE: ReadonlySet<string> = new Set(["nothing-to-accept"]);

/** The findings of the options asked for, then those that appear only under other options, each once, with those options. */
export function underEveryOption(asked: Draft, findings: readonly Finding[], compiling: Compiling): readonly Finding[] {
  const { choices } = asked;
  const combinations = combinationsOf(choices);
  const own: Run = { under: asked.chosen, draft: asked, findings };
  const known = new Map([[meaningOf(asked, "with places"), findings]]);
  const others = combinations.all
    .filter((each) => !same(each, asked.chosen))
    .map((each) => run(each, known, compiling));
  const runs = [own, ...others];
  const keys = runs.map((each) => new Set(each.findings.map(keyOf)));
  const everywhere = (finding: Finding): boolean => keys.every((each) => each.has(keyOf(finding)));
  const useful = (finding: Finding): boolean => !OF_NO_USE.has(finding.rule) || everywhere(finding);
  const told = new Set(keys[0]);
  const more = others.flatMap((each) => {
    const fresh = each.findings.filter((finding) => !told.has(keyOf(finding)) && useful(finding));
    for (const finding of fresh) told.add(keyOf(finding));
    return fresh.map((finding): Finding => {
      const appears = new Set(runs.filter((_, i) => keys[i]?.has(keyOf(finding))).map(({ under }) => under));
      return {
        ...finding,
        when: conditionOf(
          appears,
          runs.map(({ under }) => under),
          choices,
        ),
      };
    });
  });
  return [...findings.filter(useful), ...more, ...changingNothing(choices, runs, combinations)];
}

const same = (a: Combination, b: Combination): boolean => [...a].every(([name, option]) => b.get(name) === option);

/** One finding under several options, though its numbers differ. */
const keyOf = ({ rule, severity, at }: Finding): string => `${rule} ${severity} ${at.file ?? ""} ${at.start} ${at.end}`;

/** Options that change nothing in what is said before are not worked out again. */
function run(under: Combination, known: Map<string, readonly Finding[]>, { read, solve }: Compiling): Run {
  const { value: draft, findings } = read(under);
  if (draft === undefined) return { under, draft, findings };
  const meaning = meaningOf(draft, "with places");
  const all = known.get(meaning) ?? [...findings, ...solve(draft)];
  known.set(meaning, all);
  return { under, draft, findings: all };
}

/** Choices of which all options come to the same. Judged only where every combination was compiled and could be read. */
function changingNothing(
  choices: readonly ChoiceDraft[],
  runs: readonly Run[],
  { complete }: Combinations,
): readonly Finding[] {
  if (!complete) return [];
  const drafts = runs.flatMap(({ under, draft }) =>
    draft ? [{ under, meaning: meaningOf(draft, "without places") }] : [],
  );
  if (drafts.length < runs.length) return [];
  return choices.flatMap(({ name, at }): readonly Finding[] => {
    const byOthers = new Map<string, string>();
    const changes = drafts.some(({ under, meaning }) => {
      const others = JSON.stringify([...under].filter(([choice]) => choice !== name));
      const first = byOthers.get(others) ?? meaning;
      byOthers.set(others, first);
      return first !== meaning;
    });
    return changes ? [] : [choiceChangesNothing(at, { name })];
  });
}
