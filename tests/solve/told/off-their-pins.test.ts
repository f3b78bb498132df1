/** What lies loose on pins while the work is laid down and stands up again (common practice, no source). */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

const FALLS = /^What lies loose on pins falls when the work is laid down/u;
const BACK = "Set what was laid against the back on its pins again.";

test.each([
  // A lip is glued to each of its four shelves.
  ["spice-cabinet", ["D", "O"], 8],
  ["index-cabinet", ["D"], 2],
])("%s: shelves are not drawn at their pins while the work lies, and go on them when it stands", (name, own, count) => {
  const { steps, parts } = built(name);
  const loose = new Set(parts.flatMap(({ id, mark }) => (own.includes(mark) ? [id] : [])));
  expect(loose.size).toBe(count);
  const falls = steps.findIndex(({ text }) => text.some((each) => FALLS.test(plain(each))));
  const back = steps.findIndex(({ text }) => text.some((each) => plain(each) === BACK));
  expect(falls).toBeGreaterThan(0);
  expect(back).toBeGreaterThan(falls);
  const shown = (i: number): number => steps[i]?.shows.present.filter((id) => loose.has(id)).length ?? 0;
  for (let i = falls; i < back; i += 1) expect(shown(i)).toBe(0);
  expect(Math.max(...steps.slice(back).map((_, i) => shown(back + i)))).toBe(count);
  // It is said behind what stands the work up.
  const text = steps[back]?.text.map(plain) ?? [];
  expect(text[text.indexOf(BACK) - 1]).toBe("Stand the work up.");
});
