import type { BoxKind, Feature } from "../../design.ts";

const STANDING: readonly Feature["kind"][] = ["tenon", "tongue", "haunch", "tail"] satisfies readonly BoxKind[];

/** Stands out of its part and cuts nothing. */
export const standsOut = ({ kind }: Feature): boolean => STANDING.includes(kind);
