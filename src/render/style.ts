/** The look of a plan in numbers: sizes of type, spacing, margins. In points; vertical measures are multiples of the grid of 4. */
import type { Font, Ink, Paper } from "./document.ts";

export const LETTER: Paper = { name: "letter", width: 612, height: 792 };
export const A4: Paper = { name: "a4", width: 595.28, height: 841.89 };

export const GRID = 4;
export const onGrid = (height: number): number => Math.ceil(height / GRID - 1e-9) * GRID;

/** Holes are punched up to 16 mm into the left edge (ISO 838: 12 mm ± half of 6 mm), and office printers leave a quarter inch blank. */
export const MARGIN = { left: 60, right: 42, top: 64, bottom: 44 } as const;
/** Baseline and rule of the running head, from the top of the page. */
export const HEAD = { baseline: 38, rule: 46 } as const;

export interface TextStyle {
  readonly font: Font;
  readonly size: number;
  /** Height of a line. */
  readonly leading: number;
  readonly ink: Ink;
}

export const BLACK: Ink = [0.09, 0.09, 0.09];
/** Second voice: captions, heads of tables, running head. 5.6 : 1 on white. */
export const GREY: Ink = [0.38, 0.38, 0.38];
/** Hairlines and the lines between rows. */
export const RULE: Ink = [0.72, 0.72, 0.72];
export const WHITE: Ink = [1, 1, 1];

const style = (font: Font, size: number, leading: number, ink: Ink = BLACK): TextStyle => ({
  font,
  size,
  leading,
  ink,
});

export const TYPE = {
  title: style("bold", 34, 40),
  subtitle: style("regular", 15, 20),
  section: style("bold", 22, 28),
  heading: style("bold", 13, 20),
  stepNumber: style("bold", 20, 24),
  stepTitle: style("bold", 14, 18),
  step: style("regular", 12, 16),
  body: style("regular", 11, 16),
  strong: style("bold", 11, 16),
  lead: style("regular", 12, 16),
  fact: style("bold", 12, 16),
  cell: style("regular", 12, 16),
  mark: style("bold", 12, 16),
  head: style("bold", 10, 12, GREY),
  caption: style("regular", 10, 12, GREY),
  note: style("italic", 11, 16),
} as const satisfies Record<string, TextStyle>;

/** White space above things. */
export const SPACE = { section: 32, close: 20, heading: 20, block: 12, line: 4 } as const;

/** Between the columns of the steps. */
export const COLUMN_GAP = 24;

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The part of the page that is set with text and drawings. */
export const content = (paper: Paper): Frame => ({
  x: MARGIN.left,
  y: MARGIN.top,
  width: paper.width - MARGIN.left - MARGIN.right,
  height: paper.height - MARGIN.top - MARGIN.bottom,
});
