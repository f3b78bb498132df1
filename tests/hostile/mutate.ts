/** Whole numbers that look random and are the same in every run (a linear congruential generator, Knuth's MMIX constants). */
export function numbers(seed: number): (below: number) => number {
  let state = BigInt(seed);
  return (below) => {
    state = (state * 6_364_136_223_846_793_005n + 1_442_695_040_888_963_407n) & 0xffff_ffff_ffff_ffffn;
    return Number((state >> 33n) % BigInt(below));
  };
}

/** Pieces of text that have a meaning in YAML or in a formula, or that break things elsewhere. */
const PIECES = [
  ..."\n\t :-,[]{}\"'#&*!|>%@`?\\/.()+=<~^".split(""),
  ...[
    "\r\n",
    "\r",
    ": ",
    "- ",
    "<<: *a",
    "&a ",
    "*a",
    "---\n",
    "...\n",
    "%YAML 1.1\n",
    "? ",
    "!!int ",
    "|\n",
    ">-\n",
    "\ufeff",
  ],
  ...[
    "null",
    "~",
    "yes",
    ".nan",
    "1e400",
    "0x1F",
    "1_000",
    "9".repeat(40),
    "1/0",
    "34-1/2",
    "-1/2",
    "½",
    "−",
    "''",
    '""',
  ],
  ...[
    "__proto__",
    "constructor",
    "toString",
    "between ",
    " and ",
    " from ",
    "outside",
    "a.b.c",
    "a..b",
    "round(",
    "é",
    "日本",
    "🪵",
  ],
  ...[
    "\u0000",
    "\u001b[31m",
    "\u202e",
    "\ud800",
    "\ufffd",
    "\u2028",
    "\u0085",
    "x".repeat(300),
    "(".repeat(40),
    "[".repeat(70),
  ],
];

/** The text with one to eight changes: a piece put in, a stretch taken out, doubled, swapped with another, or one sign replaced. */
export function mutate(text: string, random: (below: number) => number): string {
  let changed = text;
  for (let left = 1 + random(8); left > 0; left -= 1) {
    const at = random(changed.length + 1);
    const end = Math.min(at + random(random(4) === 0 ? 200 : 8), changed.length);
    const piece = PIECES[random(PIECES.length)] ?? "";
    const stretch = changed.slice(at, end);
    const way = random(5);
    if (way === 0) changed = changed.slice(0, at) + piece + changed.slice(at);
    else if (way === 1) changed = changed.slice(0, at) + changed.slice(end);
    else if (way === 2) changed = changed.slice(0, end) + stretch + changed.slice(end);
    else if (way === 3) changed = changed.slice(0, at) + piece + changed.slice(end);
    else {
      const to = random(changed.length + 1);
      const without = changed.slice(0, at) + changed.slice(end);
      changed = without.slice(0, to) + stretch + without.slice(to);
    }
  }
  return changed;
}

const WORD = /[\p{L}_][\p{L}\p{N}_.-]*|\d+(?: \d+)?(?:\/\d+)?/gu;
const MEASURES = ["0", "1/64", "-1", "1000", "1 mm", "3/4", "24", "12 ft", "width", "outside.top", "7 / 3", "1/1024"];

/** The text with one to three of its words replaced by others of its own, or by other measures: mostly sources that can be read. */
export function exchangeWords(text: string, random: (below: number) => number): string {
  let changed = text;
  for (let left = 1 + random(3); left > 0; left -= 1) {
    const words = [...changed.matchAll(WORD)];
    const [from, to] = [words[random(words.length)], words[random(words.length)]];
    if (from === undefined || to === undefined) return changed;
    const isNumber = /^\d/.test(from[0]);
    const other = isNumber && random(2) === 0 ? (MEASURES[random(MEASURES.length)] ?? "") : to[0];
    if (isNumber !== /^\d/.test(to[0]) && random(4) !== 0) left += 1;
    else changed = changed.slice(0, from.index) + other + changed.slice(from.index + from[0].length);
  }
  return changed;
}
