import type { Outcome } from "../src/findings/outcome.ts";
import { parse, type Source } from "../src/parse/index.ts";
import type { Font } from "../src/render/document.ts";
import { render } from "../src/render/index.ts";
import { writePdf } from "../src/render/write/pdf.ts";
import { build } from "../src/solve/build/index.ts";
import { design } from "../src/solve/design/index.ts";

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
  const value = <T>(outcome: Outcome<T>): T => {
    if (outcome.value === undefined) throw new Error(outcome.findings.map((f) => f.message).join("; "));
    return outcome.value;
  };
  const draft = await timed("parse", () => value(parse(source)));
  const designed = await timed("solve: design", () => value(design(draft, { sizes: new Map() })));
  const built = await timed("solve: build", () => value(build(designed)));
  const paper = "letter";
  const document = await timed("render", () => value(render(built, { paper, date: "1970-01-01", version: "0" })));
  await timed("write", () => writePdf(document, fonts));
  return times;
}
