import { stool } from "../sample/stool.ts";
import type { Row } from "./row.ts";

const check = (verdict: string, because: string | null) => ({ rule: "shelf-sags", subject: "seat", verdict, because });

export const verdicts: readonly Row[] = [
  [
    "a finding that was accepted for no reason",
    stool,
    (r) => {
      r.checks = [check("accepted", null)];
    },
    "what is accepted has a reason",
  ],
  [
    "a reason for what holds",
    stool,
    (r) => {
      r.checks = [check("holds", "It is only a model.")];
    },
    "what is accepted has a reason",
  ],
  [
    "a check that warns, and nobody is told",
    stool,
    (r) => {
      r.checks = [check("warns", null)];
    },
    "a verdict has its finding",
  ],
];
