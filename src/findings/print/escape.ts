/** C0 without tab, DEL, C1, the signs that turn the direction of writing, and halves of characters. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const UNSAFE = /[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]|\p{Surrogate}/gu;

/**
 * A text from outside, safe to show: what would steer a terminal becomes `\u{1b}`. For everything that was not written by us,
 * source lines, names and file names among them. One line: a line feed is escaped too.
 */
export const escapeText = (text: string): string =>
  text.replace(UNSAFE, (sign) => `\\u{${sign.charCodeAt(0).toString(16)}}`);

/** The same for words in a sentence: a tab is a blank there. */
export const escapeWords = (text: string): string => escapeText(text).replaceAll("\t", " ");
