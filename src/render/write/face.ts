/** How a face sets a line, changed where what it sets is not found by its letters, or stands too far apart. */
import { FRACTION_KERN } from "../typeset/measure.ts";

interface Glyph {
  readonly id: number;
  readonly codePoints: readonly number[];
}

/** How the PDF writer measures a text. */
export interface Measuring {
  readonly font: Face;
  widthOfString: () => number;
}

/** As fontkit gives it to the PDF writer; advances in thousandths. */
export interface Face {
  layout: (...args: readonly unknown[]) => { glyphs: Glyph[]; readonly positions: readonly { xAdvance: number }[] };
}

/** What is found when these are searched for: fraction slash, blanks that do not break, hyphen that does not break. */
const asTyped = new Map([
  [0x2044, 0x2f],
  [0x202f, 0x20],
  [0x00a0, 0x20],
  [0x2011, 0x2d],
]);

const DIGITS = "0123456789";

/** Every text comes with its place: the PDF writer need not measure how far it goes, which it would do twice. */
export function mendMeasuring(measuring: Measuring): void {
  measuring.widthOfString = () => 0;
}

/** Changes what ToUnicode says of glyphs, and brings the figure 1 closer to the next in fractions. The glyphs are shared and stay as they are; the run gets copies. */
export function mendFace(face: Face): void {
  const layout = face.layout.bind(face);
  const ids = layout(`${DIGITS}\u2044${DIGITS}`).glyphs.map(({ id }) => id);
  const kinds = [
    { digits: ids.slice(0, 10), kern: FRACTION_KERN.numerator },
    { digits: ids.slice(11), kern: FRACTION_KERN.denominator },
  ];
  face.layout = (...args) => {
    const run = layout(...args);
    run.glyphs.forEach(({ id }, i) => {
      const next = run.glyphs[i + 1]?.id ?? -1;
      const position = run.positions[i];
      for (const { digits, kern } of kinds)
        if (position && id === digits[1] && digits.includes(next)) position.xAdvance += kern;
    });
    run.glyphs = run.glyphs.map((glyph) => {
      const typed = asTyped.get(glyph.codePoints[0] ?? 0);
      return typed === undefined ? glyph : Object.create(glyph, { codePoints: { value: [typed] } });
    });
    return run;
  };
}
