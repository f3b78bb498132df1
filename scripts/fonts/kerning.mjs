/**
 * Advance widths and kerning of a face as fontkit sets them, with equal rows and columns of the kerning table folded into classes.
 * After the given characters come twenty more glyphs: the digits as numerators, then as denominators.
 */
const digits = [..."0123456789"];

export function kerningClasses(face, characters) {
  const glyphs = [
    ...characters.map((c) => ({ before: "", text: c, after: "" })),
    ...digits.map((d) => ({ before: "", text: d, after: "⁄" })),
    ...digits.map((d) => ({ before: "⁄", text: d, after: "" })),
  ];
  const set = (text) => face.layout(text).positions.map((p) => p.xAdvance);
  const alone = glyphs.map((g) => set(g.before + g.text + g.after));
  const advances = glyphs.map((g) => face.layout(g.before + g.text + g.after).glyphs[g.before.length].advanceWidth);
  if (alone.some((list, i) => list.length !== 1 + glyphs[i].before.length + glyphs[i].after.length))
    throw new Error("a character became several glyphs");

  const rows = glyphs.map((a, i) => {
    return glyphs.map((b) => {
      const text = join(a, b);
      return text === null ? 0 : set(text)[a.before.length] - advances[i];
    });
  });
  const left = classes(rows);
  const columns = glyphs.map((_, j) => rows.map((row) => row[j]));
  const right = classes(columns);
  const first = (list, of) => list.indexOf(of);
  const kern = [];
  for (let l = 0; l <= Math.max(...left); l++)
    for (let r = 0; r <= Math.max(...right); r++) kern.push(rows[first(left, l)][first(right, r)]);
  return { advances, left, right, kern };
}

/** The text in which glyph a is followed by glyph b, or null where that cannot be. */
function join(a, b) {
  const digit = (g) => digits.includes(g.text);
  const numerator = (g) => g.after === "⁄";
  const denominator = (g) => g.before === "⁄";
  const plain = (g) => !numerator(g) && !denominator(g);
  if (numerator(a)) {
    if (numerator(b)) return `${a.text}${b.text}⁄`;
    return b.text === "⁄" ? `${a.text}⁄` : null;
  }
  if (denominator(a)) {
    if (denominator(b)) return `⁄${a.text}${b.text}`;
    return plain(b) && !digit(b) ? `⁄${a.text}${b.text}` : null;
  }
  if (numerator(b)) return digit(a) ? null : `${a.text}${b.text}⁄`;
  if (denominator(b)) return a.text === "⁄" ? `⁄${b.text}` : null;
  if ((a.text === "⁄" && digit(b)) || (digit(a) && b.text === "⁄")) return null;
  return a.text + b.text;
}

function classes(lists) {
  const seen = new Map();
  return lists.map((list) => {
    const key = list.join();
    if (!seen.has(key)) seen.set(key, seen.size);
    return seen.get(key);
  });
}
