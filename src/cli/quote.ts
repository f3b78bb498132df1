/** A word of the user's, set apart from ours. */
export const quote = (word: string): string => `"${word.length > 60 ? `${word.slice(0, 60)}…` : word}"`;
