import type { Design } from "../design.ts";

/** What a part is joined to by a joint; null where there is no such joint. */
export const mateOf = ({ joints }: Pick<Design, "joints">, part: string, joint: string | null): string | null =>
  joints.find(({ id }) => id === joint)?.parts.find((id) => id !== part) ?? null;
