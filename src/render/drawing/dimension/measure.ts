/** A dimension on the page. */

/** Size of the numbers, in points. */
export const TEXT = 10;

/** Places along the side, in points. */
export interface Measure {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export interface Lettered {
  readonly measure: Measure;
  readonly width: number;
  /** Whether the text breaks the line, or stands outside the row. */
  readonly inline: boolean;
}
