import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { auditOf, said, solveText } from "../examples/compiled.ts";

const files = (process.env.PLANS ?? "").split(",");
it.each(files)("%s", (file) => {
  const text = readFileSync(new URL(`design/plans/${file}.yaml`, import.meta.url), "utf8");
  const { build, findings } = solveText(text);
  console.log(file, said(findings));
  if (!build) return;
  if (process.env.TEXT) for (const step of build.steps) console.log(step.title, step.text);
  for (const part of build.parts) console.log(part.mark, part.id, part.features.map((f) => f.kind).join(","));
  console.log(build.fasteners.map((f) => f.item));
  expect(auditOf(text, build)).toEqual([]);
});
