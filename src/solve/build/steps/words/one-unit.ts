import type { Units } from "../../../../parse/draft.ts";

/** "12 in (300 mm)" said in the unit of the plan: "12 in", "300 mm". */
export const inOneUnit = (text: string, units: Units): string =>
  text.replace(/(\d[\d ⁄/]*[ \u202f]in) \((\d+[ \u202f]mm)\)/gu, (_, inch: string, mm: string) =>
    units === "inch" ? inch : mm,
  );
