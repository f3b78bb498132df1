import { describe, expect, it } from "vitest";
import { said, solveText, textOf } from "./compiled.ts";

interface Broken {
  readonly what: string;
  /** The mistake: this text of the boot bench becomes that. */
  readonly from: string;
  readonly to: string;
  readonly rule: string;
  /** Text of the line that the finding must point at (in the broken source). */
  readonly line: string;
  /** What the help must say. */
  readonly help: string;
  /** The help followed to the letter: this text of the broken source becomes that. */
  readonly mend: readonly [string, string];
}

const BROKEN: readonly Broken[] = [
  {
    what: "a key misspelt",
    from: "as: lying flat",
    to: "az: lying flat",
    rule: "unknown-key",
    line: "az: lying",
    help: "`as`",
    mend: ["az:", "as:"],
  },
  {
    what: "a top key misspelt",
    from: "piece:",
    to: "peice:",
    rule: "unknown-key",
    line: "peice:",
    help: "`piece`",
    mend: ["peice:", "piece:"],
  },
  {
    what: "a part misspelt",
    from: "join: seat-slat",
    to: "join: seat-slt",
    rule: "unknown-name",
    line: "seat-slt",
    help: "seat-slat",
    mend: ["seat-slt", "seat-slat"],
  },
  {
    what: "a size misspelt",
    from: "up from floor: foot-room",
    to: "up from floor: foot-rom",
    rule: "unknown-name",
    line: "foot-rom ",
    help: "foot-room",
    mend: ["foot-rom ", "foot-room "],
  },
  {
    what: "a stock misspelt",
    from: "made of: lumber\n    as: on edge",
    to: "made of: lumbr\n    as: on edge",
    rule: "unknown-stock",
    line: "lumbr",
    help: "lumber",
    mend: ["lumbr", "lumber"],
  },
  {
    what: "a method misspelt",
    from: "with: half lap",
    to: "with: haf lap",
    rule: "unknown-word",
    line: "haf lap",
    help: "half lap",
    mend: ["haf lap", "half lap"],
  },
  {
    what: "an attitude misspelt",
    from: "as: upright",
    to: "as: uprite",
    rule: "unknown-word",
    line: "uprite",
    help: "upright",
    mend: ["uprite", "upright"],
  },
  {
    what: "a face misspelt",
    from: "join side: right",
    to: "join side: rigth",
    rule: "unknown-word",
    line: "rigth",
    help: "right",
    mend: ["rigth", "right"],
  },
  {
    what: "a word for a face that is none",
    from: "facing: left\n      left",
    to: "facing: sideways\n      left",
    rule: "unknown-word",
    line: "sideways",
    help: "left",
    mend: ["sideways", "left"],
  },
  {
    what: "an area for a measure",
    from: "left: outside.left + overhang",
    to: "left: overhang * foot-room",
    rule: "wrong-kind",
    line: "overhang * foot-room",
    help: "a measure",
    mend: ["overhang * foot-room", "overhang"],
  },
  {
    what: "a size that needs itself",
    from: "foot-room: 3 1/2",
    to: "foot-room: foot-room + 1",
    rule: "circle",
    line: "foot-room + 1",
    help: "its own measure",
    mend: ["foot-room + 1", "3"],
  },
  {
    what: "two parts placed by each other",
    from: "front: outside.front\n      up",
    to: "front: left-end.back-leg.front\n      up",
    rule: "parts-overlap",
    line: "back-leg:",
    help: "move one of them",
    mend: ["front: left-end.back-leg.front", "front: outside.front"],
  },
  {
    what: "a division by nothing",
    from: "foot-room: 3 1/2",
    to: "foot-room: 3 / (2 - 2)",
    rule: "division-by-zero",
    line: "3 / (2 - 2)",
    help: "not zero",
    mend: ["(2 - 2)", "(2 - 1)"],
  },
  {
    what: "a part that misses its mate",
    from: "    between: [left-end.lower-rail, right-end.lower-rail]\n",
    to: "    left: 6\n    right: right-end.lower-rail.left\n",
    rule: "joint-does-not-touch",
    line: "join: [left-end.lower-rail, right-end.lower-rail]",
    help: "1 1/2 in",
    mend: ["left: 6", "left: 4 1/2"],
  },
  {
    what: "a joint left out",
    from: "    to: stretcher\n",
    to: "    to: left-end.top-rail\n",
    rule: "joint-does-not-touch",
    line: "left-end.lower-rail, right",
    help: "leave this pair out",
    mend: ["to: left-end.top-rail", "to: stretcher"],
  },
  {
    what: "a screw that is too long",
    from: "screw: { gauge: 8, length: 1 1/4 }",
    to: "screw: { gauge: 8, length: 1 3/4 }",
    rule: "screw-comes-through",
    line: "1 3/4",
    help: "leave the length out",
    mend: ["{ gauge: 8, length: 1 3/4 }", "{ gauge: 8 }"],
  },
  {
    what: "a screw that is too short",
    from: "screw: { gauge: 8, length: 2 1/2 }",
    to: "screw: { gauge: 8, length: 1 1/2 }",
    rule: "screw-too-short",
    line: "length: 1 1/2",
    help: "longer than 1 1/2 in",
    mend: ["length: 1 1/2", "length: 2"],
  },
  {
    what: "a gauge that is not sold",
    from: "gauge: 10",
    to: "gauge: 9",
    rule: "screw-size-unknown",
    line: "gauge: 9",
    help: "one of these gauges",
    mend: ["gauge: 9", "gauge: 10"],
  },
  {
    what: "a piece lower than its lumber",
    from: "height: { value: 18",
    to: "height: { value: 1",
    rule: "no-room",
    line: "front-leg:",
    help: "the sizes they come from",
    mend: ["height: { value: 1", "height: { value: 18"],
  },
  {
    what: "a length beyond reason",
    from: "value: 42",
    to: "value: 4200",
    rule: "measure-too-large",
    line: "4200",
    help: "missing space",
    mend: ["4200", "42"],
  },
  {
    what: "a piece longer than any board",
    from: "value: 42",
    to: "value: 420",
    rule: "longer-than-any-board",
    line: "seat-slat:",
    help: "",
    mend: ["420", "42"],
  },
  {
    what: "a tab",
    from: "    with: screws\n    screw: { gauge: 10",
    to: "    with: screws\n\tscrew: { gauge: 10",
    rule: "tab-indent",
    line: "\tscrew",
    help: "blanks",
    mend: ["\tscrew", "    screw"],
  },
  {
    what: "no blank after a colon",
    from: "units: inch",
    to: "units:inch",
    rule: "space-after-colon",
    line: "units:inch",
    help: "`units: inch`",
    mend: ["units:inch", "units: inch"],
  },
  {
    what: "no blank after a colon in braces",
    from: "gauge: 10, length",
    to: "gauge:10, length",
    rule: "space-after-colon",
    line: "gauge:10",
    help: "`gauge: 10`",
    mend: ["gauge:10", "gauge: 10"],
  },
  {
    what: "a key twice",
    from: "units: inch",
    to: "units: inch\nunits: inch",
    rule: "duplicate-key",
    line: "units: inch",
    help: "keep one",
    mend: ["units: inch\nunits: inch", "units: inch"],
  },
  {
    what: "a part twice",
    from: "  stretcher:",
    to: "  left-end: { made of: lumber }\n  stretcher:",
    rule: "duplicate-key",
    line: "left-end: { made",
    help: "keep one",
    mend: ["  left-end: { made of: lumber }\n", ""],
  },
  {
    what: "a bracket not closed",
    from: "[left-end.front-leg, left-end.back-leg]",
    to: "[left-end.front-leg, left-end.back-leg",
    rule: "bracket-not-closed",
    line: "join: [left-end.front-leg",
    help: "]",
    mend: ["left-end.back-leg\n", "left-end.back-leg]\n"],
  },
  {
    what: "no title",
    from: "title: Boot bench\n",
    to: "",
    rule: "missing-key",
    line: "plan: 1",
    help: "title: ",
    mend: ["plan: 1\n", "plan: 1\ntitle: Bench\n"],
  },
  {
    what: "a joint without its kind",
    from: "    with: screws\n    screw: { gauge: 10",
    to: "    screw: { gauge: 10",
    rule: "missing-key",
    line: "- join: [left-end.lower-rail",
    help: "with: ",
    mend: ["    screw: { gauge: 10", "    with: screws\n    screw: { gauge: 10"],
  },
  {
    what: "a part of no stock",
    from: "stretcher:\n    made of: lumber\n",
    to: "stretcher:\n",
    rule: "missing-key",
    line: "stretcher:",
    help: "made of: ",
    mend: ["stretcher:\n", "stretcher:\n    made of: lumber\n"],
  },
  {
    what: "too little said",
    from: "    top: outside.top\n    count",
    to: "    count",
    rule: "place-missing",
    line: "seat-slat:",
    help: "bottom, top",
    mend: ["    count", "    top: outside.top\n    count"],
  },
  {
    what: "too much said",
    from: "as: upright\n      facing: left",
    to: "as: upright\n      facing: left\n      up: 17",
    rule: "places-disagree",
    line: "up: 17",
    help: "leave one",
    mend: ["      up: 17\n", ""],
  },
  {
    what: "a name that fits two",
    from: "flush with: left-end.lower-rail.top",
    to: "flush with: lower-rail.top",
    rule: "ambiguous-name",
    line: "flush with: lower-rail.top",
    help: "left-end.lower-rail",
    mend: ["flush with: lower-rail", "flush with: left-end.lower-rail"],
  },
  {
    what: "a decimal comma",
    from: "foot-room: 3 1/2",
    to: "foot-room: 3,5",
    rule: "decimal-comma",
    line: "3,5",
    help: "`3.5`",
    mend: ["3,5", "3.5"],
  },
  {
    what: "a hyphen for a minus",
    from: "left: outside.left + overhang",
    to: "left: outside.left + overhang-1/2",
    rule: "hyphen-in-formula",
    line: "overhang-1/2",
    help: "`overhang - 1/2`",
    mend: ["overhang-1/2", "overhang - 1/2"],
  },
  {
    what: "a unit that nobody knows",
    from: "foot-room: 3 1/2",
    to: "foot-room: 3 furlongs",
    rule: "unknown-unit",
    line: "furlongs",
    help: "in, ft, mm",
    mend: ["3 furlongs", "3 in"],
  },
  {
    what: "a part called by a face",
    from: "  stretcher:",
    to: "  top:",
    rule: "reserved-name",
    line: "  top:",
    help: "top-panel",
    mend: ["  top:", "  stretcher:"],
  },
  {
    what: "a mirror without its direction",
    from: "{ mirror of: left-end, about: across }",
    to: "{ mirror of: left-end }",
    rule: "mirror-without-direction",
    line: "right-end:",
    help: "about: across",
    mend: ["{ mirror of: left-end }", "{ mirror of: left-end, about: across }"],
  },
  {
    what: "a count that is not whole",
    from: "count: 4",
    to: "count: 3.5",
    rule: "count-not-whole",
    line: "count: 3.5",
    help: "round-down",
    mend: ["count: 3.5", "count: round-up(3.5, 1)"],
  },
  {
    what: "another version",
    from: "plan: 1",
    to: "plan: 2",
    rule: "plan-version",
    line: "plan: 2",
    help: "`plan: 1`",
    mend: ["plan: 2", "plan: 1"],
  },
  {
    what: "a colon in a text",
    from: "subtitle: For the entrance",
    to: "subtitle: Bench: for the entrance",
    rule: "text-with-colon",
    line: "Bench: for",
    help: "quotes",
    mend: [
      "subtitle: Bench: for the entrance of the tool library",
      'subtitle: "Bench: for the entrance of the tool library"',
    ],
  },
];

describe("the boot bench, broken", () => {
  const sound = textOf("boot-bench");

  it.each(BROKEN)("$what", ({ from, to, rule, line, help, mend }) => {
    expect(sound).toContain(from);
    const broken = sound.replace(from, () => to);
    const { findings } = solveText(broken);
    const found = findings.find((finding) => finding.rule === rule);
    expect(found, said(findings).join("\n")).toBeDefined();
    expect(broken.split("\n")[(found?.at.line ?? 1) - 1]).toContain(line);
    expect(found?.help ?? "").toContain(help);
    expect(broken).toContain(mend[0]);
    const mended = solveText(broken.replace(mend[0], () => mend[1]));
    expect(said(mended.findings.filter((f) => f.severity !== "advice"))).toEqual([]);
    expect(mended.build).toBeDefined();
  });

  it.each(BROKEN)("$what: nothing that only follows from it", ({ from, to, rule }) => {
    const { findings } = solveText(sound.replace(from, () => to));
    const others = findings.filter((finding) => finding.severity === "error" && finding.rule !== rule);
    expect(said(others)).toEqual([]);
  });
});
