import type { Outcome } from "../src/findings/outcome.ts";
import { parse, type Source } from "../src/parse/index.ts";
import type { Font } from "../src/render/document.ts";
import { render, SECTIONS } from "../src/render/index.ts";
import { makePlan } from "../src/render/pages/plan.ts";
import { content, LETTER } from "../src/render/style.ts";
import { writePdf } from "../src/render/write/pdf.ts";
import { build } from "../src/solve/build/index.ts";
import { design } from "../src/solve/design/index.ts";

const soundOf = <T>(outcome: Outcome<T>): T => {
  if (outcome.value === undefined) throw new Error(outcome.findings.map((f) => f.message).join("; "));
  return outcome.value;
};

/** Milliseconds that each kind of page takes, by its title, and how many parts there are. */
export function pageTimes(source: Source, now: () => number) {
  const built = soundOf(build(soundOf(design(soundOf(parse(source)), { sizes: new Map() }))));
  const plan = makePlan(built, content(LETTER));
  const times = SECTIONS.flatMap((section): readonly (readonly [string, number])[] => {
    const start = now();
    const made = section(plan);
    return made === null ? [] : [[made.title, now() - start]];
  });
  return { parts: built.parts.length, times: new Map(times) };
}

/** Milliseconds that each phase takes, by name. Throws where a phase gives no value. */
export async function phases(
  source: Source,
  fonts: Readonly<Record<Font, Uint8Array>>,
  now: () => number,
): Promise<Readonly<Record<string, number>>> {
  const times: Record<string, number> = {};
  async function timed<T>(name: string, work: () => T | Promise<T>): Promise<T> {
    const start = now();
    const result = await work();
    times[name] = now() - start;
    return result;
  }
  const draft = await timed("parse", () => soundOf(parse(source)));
  const designed = await timed("solve: design", () => soundOf(design(draft, { sizes: new Map() })));
  const built = await timed("solve: build", () => soundOf(build(designed)));
  const paper = "letter";
  const document = await timed("render", () => soundOf(render(built, { paper, date: "1970-01-01", version: "0" })));
  await timed("write", () => writePdf(document, fonts));
  return times;
}
