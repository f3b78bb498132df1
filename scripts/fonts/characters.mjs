/** The characters that a plan can print, in the order of their code points. */
const range = (from, to) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i));

export const characters = [
  ...new Set([
    ...range(0x20, 0x7e),
    ...range(0xa0, 0xac), // Latin-1 without the soft hyphen
    ...range(0xae, 0xff),
    ...range(0x100, 0x17f), // Latin Extended-A
    ...range(0x218, 0x21b), // Romanian
    ...range(0x1ea0, 0x1ef9), // Vietnamese
    ..."ƠơƯư",
    ..."ẞ",
    ..."\u2009\u200a\u202f", // thin, hair and narrow no-break space
    ..."‐‑–—‘’‚“”„†•…‹›′″⁄",
    ..."⅓⅔⅛⅜⅝⅞",
    ..."€№™",
    ..."←↑→↓",
    ..."∅−√∞≈≠≤≥⌀",
    ..."■□▲△▶▷▼▽◀◁●○◦☐☑✓✗",
    ..."πΩ",
  ]),
].sort((a, b) => a.codePointAt(0) - b.codePointAt(0));
