/** Several joints of one step that close in one push: glue first, then the push, the clamps last. */

export const CLAMPING = /^Clamp |^Hold each \w+ with a clamp| and clamp\./u;

/** What is done with the glue before anything closes, and with its dowels. */
const GLUES =
  /^(?:(?:Brush|Spread|Put) glue |Rub a little into |Spread a thin coat |Use \d+ dowels? |There is no hurry )| ha(?:s|ve) (?:its|their) dowels already\.$/u;

/** Clamps come when all is together. */
export const unclamped = (text: string): readonly string[] =>
  /^Clamp /u.test(text) ? [] : [text.replace(/ and clamp\./u, ".")];

/** The sentences of each method, in the order in which they are told. */
export function closedAtOnce(methods: readonly (readonly string[])[]): readonly string[] {
  const clamps = (texts: readonly string[]): boolean => texts.some((text) => CLAMPING.test(text));
  const last = methods.findLastIndex(clamps);
  const glued = methods.filter((texts) => texts.some((text) => GLUES.test(text)));
  if (glued.length < 2 || !methods.some((texts, i) => i < last && clamps(texts))) return methods.flat();
  const told = methods.flatMap((texts, i) =>
    texts.flatMap(apart).flatMap((text) => (i < last ? unclamped(text) : [text])),
  );
  return [...told.filter((text) => GLUES.test(text)), ...told.filter((text) => !GLUES.test(text))];
}

/** Glue and push that stand in one: each says by itself what it speaks of. */
const apart = (text: string): readonly string[] => {
  const [, push, one, other] =
    /^Spread glue where they meet\. (Set (.+?) (?:against|on) (.+?)(?: and clamp)?\.)$/u.exec(text) ?? [];
  return push ? [`Spread glue where ${one} and ${other} meet.`, push] : [text];
};

/** Where the clamps go is told before anything is driven: behind the first sentence that sets them, or at the end. */
export function withClampPlaces(told: readonly string[], places: readonly string[]): readonly string[] {
  const driven = told.findIndex((text) => DRIVEN.test(text));
  const at = told.findIndex((text) => CLAMPING.test(text));
  return at < 0 || driven < at ? [...told, ...places] : [...told.slice(0, at + 1), ...places, ...told.slice(at + 1)];
}

const DRIVEN = /^(?:Drive|Draw lines|Through the holes|For each \w+ bore) /u;
