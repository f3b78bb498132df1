import { type Palette, PLAIN } from "../findings/print/index.ts";
import type { Stream, World } from "./world.ts";

const RED = 31;
const YELLOW = 33;
const BLUE = 34;
const CYAN = 36;
const LEVELS = { error: RED, warning: YELLOW, advice: BLUE } as const;

/** Bold in one of the eight colours that every terminal has (ECMA-48, SGR). */
const bold = (colour: number, text: string): string => `\u001b[1;${colour}m${text}\u001b[0m`;

const COLOURED: Palette = {
  level: (text, severity) => bold(LEVELS[severity], text),
  pointer: (text, severity) => bold(LEVELS[severity], text),
  file: (text) => bold(CYAN, text),
};

/** Colour only for a terminal that can show it, and never against the wish of its user (no-color.org). */
export const paletteFor = (to: Stream, wanted: boolean, world: World): Palette =>
  wanted && to.isTerminal && world.env("NO_COLOR") === undefined && world.env("TERM") !== "dumb" ? COLOURED : PLAIN;
