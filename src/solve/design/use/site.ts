import type { SiteDraft, SiteName } from "../../../parse/draft.ts";
import type { Site } from "../../design.ts";
import { equilibriumMoisture } from "./equilibrium-moisture.ts";

const INTERIOR = "Wood Handbook FPL-GTR-190, Table 13-2, single pieces indoors, from memory";
const EXTERIOR = "Wood Handbook FPL-GTR-190, Table 13-2, outdoors under cover, from memory";
const FORMULA = "equilibrium moisture, Wood Handbook FPL-GTR-190, Eq. 4-5";

const SITES: Readonly<Record<SiteName, Site>> = {
  "heated house": { name: "a heated house", driest: 6, dampest: 10, basis: INTERIOR },
  "dry desert": { name: "a house in a dry desert", driest: 4, dampest: 9, basis: INTERIOR },
  "damp coast": { name: "a house on a damp coast", driest: 8, dampest: 13, basis: INTERIOR },
  "unheated porch": { name: "an unheated porch", driest: 9, dampest: 14, basis: EXTERIOR },
};

/** Where a piece stands of which nothing is said. */
export const USUAL_SITE: Site = SITES["heated house"];

/** What wood comes to in a place: by its name, or by its air. */
export function siteOf(draft: SiteDraft | undefined): Site {
  if (draft === undefined) return USUAL_SITE;
  if ("name" in draft) return SITES[draft.name];
  const { humidity, celsius } = draft;
  const moisture = (percent: number): number => Math.round(equilibriumMoisture(celsius, percent / 100) * 10) / 10;
  const name = `air of ${humidity.low} to ${humidity.high} % humidity`;
  return { name, driest: moisture(humidity.low), dampest: moisture(humidity.high), basis: FORMULA };
}
