import { Misuse } from "./exit.ts";
import type { World } from "./world.ts";

/** The last second of the year 9999, beyond which an ISO date has more than four digits for the year. */
const LATEST = 253_402_300_799;
const UNDATED = "1970-01-01";

/**
 * The date that goes into the file, never today's: SOURCE_DATE_EPOCH (seconds since 1970, see reproducible-builds.org) if it is
 * set, else the ISO date at the beginning of the plan's edition, else the first of January 1970.
 */
export function editionDate(edition: string, world: World): string {
  const epoch = world.env("SOURCE_DATE_EPOCH");
  if (epoch === undefined) return isoDate(/^\d{4}-\d{2}-\d{2}(?!\d)/.exec(edition)?.[0] ?? UNDATED) ?? UNDATED;
  if (!/^\d{1,12}$/.test(epoch) || Number(epoch) > LATEST)
    throw new Misuse("SOURCE_DATE_EPOCH in the environment is not a number of seconds since 1970");
  return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
}

/** The date itself if the calendar has it. */
const isoDate = (text: string): string | undefined => {
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text ? undefined : text;
};
