import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { judge, shelf } from "./plan.ts";

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
