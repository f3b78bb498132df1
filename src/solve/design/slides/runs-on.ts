import type { Maker } from "../fastening/site.ts";
import { extent } from "../space.ts";
import { runOf, slidesOut } from "./run.ts";

/** A drawer on wooden runners, in grooves or on a shelf: nothing holds it, and it comes right out. */
export const runsOn: Maker = (site, moved) => {
  const run = runOf(site);
  if (!run || moved.turned) return [];
  return [{ fasteners: [], holes: [], hardware: [], motion: slidesOut(run, extent(site.head.body, run.axis)) }];
};
