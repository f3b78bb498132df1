export { escapeText } from "./escape.ts";
export type { PrintedSource } from "./frame.ts";
export { printJson } from "./json.ts";
export { inOrder } from "./order.ts";
export { type Palette, PLAIN } from "./palette.ts";
export { printShort } from "./short.ts";
export { countFindings, summary } from "./summary.ts";
export { printedSource, printTerminal, type TerminalOptions } from "./terminal.ts";
