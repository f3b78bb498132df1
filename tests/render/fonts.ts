import { readFileSync } from "node:fs";

const file = (font: string): Uint8Array => readFileSync(new URL(`../../assets/fonts/${font}.ttf`, import.meta.url));

export const fonts = { regular: file("regular"), bold: file("bold"), italic: file("italic") };
