/** Directions in a sentence: "they overlap by 3/4 in from front to back". */
export const WAYS = { across: "from left to right", deep: "from front to back", up: "from the floor up" } as const;
