/**
 * Where the characters of a scalar's value stand in the source: offset i of the value is at result[i], and result[length] is its end.
 * `raw` is the scalar as written, quotes and block header included; `start` its offset in the source.
 *
 * Folding and quoting only ever drop, replace or join characters in order, so both texts are walked side by side.
 */
export function scalarOffsets(raw: string, value: string, start: number): readonly number[] {
  const double = raw.startsWith('"');
  const single = raw.startsWith("'");
  const block = /^[|>][^\n]*\n/.exec(raw);
  const offsets: number[] = [];
  let at = double || single ? 1 : (block?.[0].length ?? 0);
  for (let i = 0; i < value.length; i += 1) {
    const wanted = value.charAt(i);
    if (double && raw.charAt(at) === "\\" && raw.charAt(at + 1) !== "\n") {
      offsets.push(start + at);
      at += escapeLength(raw, at);
      continue;
    }
    if (raw.charAt(at) !== wanted) at = nextPlace(raw, at, wanted);
    offsets.push(start + Math.min(at, raw.length));
    at += single && wanted === "'" ? 2 : 1;
  }
  offsets.push(start + Math.min(at, raw.length));
  return offsets;
}

const escapeLength = (raw: string, at: number): number => {
  const sign = raw.charAt(at + 1);
  return sign === "x" ? 4 : sign === "u" ? 6 : sign === "U" ? 10 : 2;
};

/** Skips the blanks that folding took away; a line end may have become one blank, or stand for itself. */
function nextPlace(raw: string, from: number, wanted: string): number {
  let at = from;
  while (at < raw.length && raw.charAt(at) !== wanted && /[\s\\]/.test(raw.charAt(at))) {
    if (wanted === " " && raw.charAt(at) === "\n") {
      // The blank stands for the line end and all the blanks behind it.
      while (/\s/.test(raw.charAt(at + 1))) at += 1;
      return at;
    }
    at += 1;
  }
  return at;
}
