import { describe, expect, it } from "vitest";
import { JOINTS } from "./broken/joints.ts";
import { SIZES } from "./broken/sizes.ts";
import { WORDS } from "./broken/words.ts";
import { YAML } from "./broken/yaml.ts";
import { said, solveText, textOf } from "./compiled.ts";

const BROKEN = [...WORDS, ...YAML, ...SIZES, ...JOINTS];

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
