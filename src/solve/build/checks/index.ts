import type { Checked, Rule, Verdict } from "./check.ts";
import { holeRunsIntoCutRule } from "./hole-runs-into-cut.ts";
import { holesMeetRule } from "./holes-meet.ts";
import { mortisesMeetRule } from "./mortises-meet.ts";
import { notMarkedExactlyRule } from "./not-marked-exactly.ts";
import { pinsMeetInDividerRule } from "./pins-meet-in-divider.ts";

/** Every check of this version. A new one is a file here and a line in this list. */
const RULES: readonly Rule[] = [
  holeRunsIntoCutRule,
  holesMeetRule,
  mortisesMeetRule,
  notMarkedExactlyRule,
  pinsMeetInDividerRule,
];

export const check = (checked: Checked): readonly Verdict[] => RULES.flatMap((rule) => rule(checked));
