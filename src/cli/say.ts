import { escapeText } from "../findings/print/escape.ts";
import type { Stream } from "./world.ts";

/** Prints words of ours that may hold words from outside: what would steer a terminal is made visible, line ends stay. */
export const say = (to: Stream, text: string): Promise<void> => to.write(text.split("\n").map(escapeText).join("\n"));
