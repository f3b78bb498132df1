/** A text for a sentence: one line, at most `most` characters. */
export const shorten = (text: string, most = 40): string => {
  const characters = [...text.replace(/\s+/g, " ").trim()];
  return characters.length <= most ? characters.join("") : `${characters.slice(0, most - 1).join("")}…`;
};
