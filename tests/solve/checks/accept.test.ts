import { expect, test } from "vitest";
import { mortisesMeet } from "../../../src/findings/rules/mortises-meet.ts";
import { auditOf, solveText, textOf } from "../../examples/compiled.ts";
import { judge, shelf, table } from "./plan.ts";

const OAK = "wood: white oak, sold as: 4/4, planed to: 3/4, widths: 8 to 16";
const allowing = (entry: string): string => shelf(OAK, "48", `carries: books\nallow:\n  - { ${entry} }`);

test("what is accepted is no finding, and keeps its value and the reason", () => {
  const before = judge(shelf(OAK, "48", "carries: books"));
  expect(before.told("shelf-sags")).toHaveLength(1);
  for (const of of ["", "of: shelf, "]) {
    const { findings, of: check } = judge(
      allowing(`finding: shelf-sags, ${of}because: "It is turned over every year."`),
    );
    expect(findings).toEqual([]);
    const accepted = check("shelf-sags", "shelf");
    expect(accepted).toMatchObject({ verdict: "accepted", because: "It is turned over every year." });
    expect(accepted?.value).toBe(before.of("shelf-sags", "shelf")?.value);
  }
});

test("of another part, or of another name, it accepts nothing, and both are told", () => {
  const other = judge(allowing('finding: shelf-sags, of: left-side, because: "x"'));
  expect(other.findings.map(({ rule }) => rule).sort()).toEqual(["nothing-to-accept", "shelf-sags"]);
  const slip = judge(allowing('finding: shelf-sag, because: "x"'));
  expect(slip.told("nothing-to-accept")[0]?.help).toContain("`shelf-sags`");
});

test("a part that is not there is told by its name", () => {
  const { findings } = solveText(allowing('finding: shelf-sags, of: shelv, because: "x"'));
  expect(findings.map(({ rule }) => rule)).toContain("unknown-name");
});

test("stock is accepted by its name", () => {
  const wet = shelf(
    `${OAK}, moisture: 15 %`,
    "24",
    'allow: [{ finding: wet-lumber, of: board, because: "It lies here a year." }]',
  );
  expect(judge(wet).findings).toEqual([]);
  expect(judge(wet).of("wet-lumber", "board")).toMatchObject({ verdict: "accepted" });
});

test("an error is not accepted", () => {
  const allow = 'allow: [{ finding: mortises-meet, because: "x" }]\njoints:';
  const { build, findings } = solveText(mortisesMeet.wrong.replace("joints:", () => allow));
  expect(build).toBe(undefined);
  expect(findings.map(({ rule }) => rule)).toContain("error-not-accepted");
});

test("the record keeps its promises with what is accepted in it", () => {
  const text = allowing('finding: shelf-sags, because: "It is turned over every year."');
  const { build } = solveText(text);
  expect(build && auditOf(text, build)).toEqual([]);
});

test("mortises that keep their distance say how much wood is between them", () => {
  // In a leg of 2 1/4 square, from its outer corner: the front rail's mortise is 1 1/16 deep, 5/16 to 11/16 behind the front; the end
  // rail's is 9/16 deep, 5/16 to 11/16 from the outside. Sideways 2 1/4 - 1 1/16 - 11/16 = 1/2 lies between them, deep 2 1/4 - 9/16 - 11/16 = 1.
  const check = judge(table("  - { join: front-rail, to: table-top, with: glue }")).of(
    "mortises-meet",
    "front-left-leg",
  );
  expect(check).toMatchObject({ verdict: "holds", limit: 1, unit: "mm" });
  expect((check?.value ?? 0) / 25.4).toBeCloseTo(Math.sqrt(0.5 * 0.5 + 1 * 1), 3);
});

test("what is accepted in the plan's own sizes need not be met in others that a reader asks for", () => {
  const plan = textOf("old-plans/wall-shelf");
  expect(solveText(plan).findings).toEqual([]);
  // 36 in long, two studs are certain: so asked for nothing is told, so written the line is to be taken out.
  expect(solveText(plan, { "shelf-length": "36" }).findings).toEqual([]);
  const written = solveText(plan.replace("value: 30", "value: 36")).findings;
  expect(written.map(({ rule }) => rule)).toEqual(["nothing-to-accept"]);
});
