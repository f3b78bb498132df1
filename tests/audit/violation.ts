/** What the auditor can find, and under which promise of the record. 0 is the form of the record itself. */
export const CHECKS = {
  "references resolve": 0,
  "ids are unique": 0,
  "pieces are closed": 0,
  "pieces are convex": 0,
  "pieces of a part do not overlap": 0,
  "bounds are those of the parts": 0,
  "what is accepted has a reason": 0,
  "a verdict has its finding": 0,
  "masses are those of the solids": 0,
  "curves are as told": 0,
  "dovetails are as told": 0,

  "parts do not overlap": 1,
  "fixed joints touch": 1,
  "gap is at most one step": 1,
  "other joints are near": 1,
  "contact is as measured": 1,
  "hardware is on what carries it": 1,

  "part is on one line": 2,
  "quantity is the number of parts": 2,
  "sizes agree": 2,
  "solid fits its sizes": 2,
  "part is made of blanks": 2,
  "slope is that of its own stock": 2,
  "blank is placed once": 2,
  "placement has the blank's size": 2,
  "part is joined": 2,
  "all is connected": 2,
  "fastener belongs to one joint": 2,
  "parts of a line are congruent": 2,
  "mirrored line is mirrored": 2,
  "hardware is fitted once": 2,
  "banding is done once": 2,
  "thick banding is deducted": 2,
  "blanks give the part": 2,
  "purchases add up": 2,

  "steps are in order": 3,
  "times hold": 3,
  "coats go on in order": 3,
  "panels are finished first": 3,
  "what hangs stays on its wall": 3,
  "blank is made once and first": 3,
  "features and holes are made once": 3,
  "part is machined before it is added": 3,
  "banding is put on in order": 3,
  "what is cut to the piece waits for it": 3,
  "part is added once": 3,
  "whole bodies move": 3,
  "parts come from afar": 3,
  "travel is free": 3,
  "pins are in at the end": 3,
  "dowels slide along their holes": 3,
  "joint is glued once, in time": 3,
  "all ends in one body": 3,

  "fastener is driven once": 4,
  "all that it joins is there": 4,
  "hole is bored before its fastener": 4,
  "drills are sold": 5,
  "drilling table has every hole": 5,
  "driver leans at most 5 degrees": 4,
  "tool fits": 4,
  "what travels is not driven": 4,

  "holes do not meet": 5,
  "hole keeps out of features": 5,
  "mortises keep 1 mm": 5,
  "keep is kept": 5,
  "point ends inside": 5,
  "fastener passes what it says": 5,
  "head does not pass its hole": 5,

  "motion is free": 6,

  "cut splits one piece": 7,
  "fence is set to the cut": 7,
  "cuts give the placements": 7,
  "placements lie inside": 7,
  "placements do not overlap": 7,
  "offcuts are left over": 7,
  "grain is obeyed": 7,
  "stock is the blank's": 7,
  "count is not below its bound": 7,

  "same source, same bytes": 8,
} as const;

export type Check = keyof typeof CHECKS;

export interface Violation {
  readonly promise: number;
  readonly check: Check;
  /** Id of what is wrong. */
  readonly subject: string;
  readonly message: string;
}

export const violation = (check: Check, subject: string, message: string): Violation => ({
  promise: CHECKS[check],
  check,
  subject,
  message,
});

/** What each file of checks exports: a walk through the record that yields what is wrong. */
export type Violations = Iterable<Violation>;
