const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;
const NONE = /\p{M}|[\u200b-\u200d\u00ad]/u;

/** Columns that a text takes in a terminal: marks on letters take none, East Asian letters and pictures two. */
export function columns(text: string): number {
  let count = 0;
  for (const sign of text) count += NONE.test(sign) ? 0 : WIDE.test(sign) ? 2 : 1;
  return count;
}

/** Breaks a text at blanks so that no line is wider than `width`, unless one word is. Later lines begin with `indent`. */
export function wrap(text: string, width: number, indent = ""): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && columns(longer) > width) {
      lines.push(line);
      line = `${indent}${word}`;
    } else line = longer;
  }
  return [...lines, line];
}
