/** What is wrong with both doors of a pair is told of both, with a line for each. */
import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";

const cupboard = (fittings: string, join = "join: dowels"): string => `plan: 1
title: Cupboard with a pair of doors
units: inch
outside: { width: 24, depth: 12, height: 24 }
stock: { board: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 4 to 13 } }
hardware: { butt: { kind: butt hinge }, knob: { kind: knob, screw: 1 } }
piece:
  case: { kind: case, made of: board, ${join} }
  doors:
    kind: door
    in: case.inside
    walls: { left: case.left-side, right: case.right-side }
    pair: yes
    made of: board
    hinges: butt
    pull: knob
${fittings}`;

const told = (rule: string, text: string) => solveText(text).findings.filter((finding) => finding.rule === rule);
const linesOf = (help = ""): readonly string[] =>
  [...help.matchAll(/`- (\{ fit: .*?\})`/g)].map(([, line]) => `${line}`);

test("a catch for each door is what the help gives, and what it gives is enough", () => {
  const [finding, ...more] = told("door-without-catch", cupboard(""));
  expect(more).toEqual([]);
  expect(finding?.message).toMatch(/left.* and .*right.* shut/);
  const lines = linesOf(finding?.help);
  expect(lines).toHaveLength(2);
  const fitted = (own: readonly string[]) => cupboard(`fittings:\n${own.map((line) => `  - ${line}\n`).join("")}`);
  expect(told("door-without-catch", fitted(lines))).toEqual([]);
  // With one of them only the other is told of.
  const [left] = told("door-without-catch", fitted(lines.slice(0, 1)));
  expect(left?.message).not.toMatch(/ and /);
  expect(linesOf(left?.help)).toEqual(lines.slice(1));
});

test("a stop for each door is what the help gives", () => {
  const [finding, ...more] = told("inset-door-without-stop", cupboard(""));
  expect(more).toEqual([]);
  // A catch for each, or a stop for each.
  expect(linesOf(finding?.help)).toHaveLength(4);
});

test("a dowel that does not fit is told with the largest that does", () => {
  const long = cupboard("", "join: { with: dowels, dowel: { diameter: 3/8, length: 5 } }");
  const [finding] = told("dowel-does-not-fit", long);
  const size = /`(dowel: \{ diameter: .*? \})`/.exec(finding?.help ?? "")?.[1] ?? "";
  expect(size).not.toBe("");
  expect(told("dowel-does-not-fit", cupboard("", `join: { with: dowels, ${size} }`))).toEqual([]);
});
