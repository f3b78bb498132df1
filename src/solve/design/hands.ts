const HANDED = /(?<!\p{L})(left|right)(?!\p{L})(?![- ]angle)/giu;

/** Left for right and right for left, in names and in words: `front-left-leg`, "Left leg". Twice over is the text again. */
export const swapHands = (text: string): string =>
  text.replace(HANDED, (word) => {
    const other = word.toLowerCase() === "left" ? "right" : "left";
    if (word === word.toUpperCase()) return other.toUpperCase();
    return word[0] === word[0]?.toUpperCase() ? other.replace(/^./, (first) => first.toUpperCase()) : other;
  });
