export { BENCH_DAY, type Calendar, calendarOf } from "./calendar.ts";
export type { Job, Schedule } from "./job.ts";
export { scheduled } from "./schedule.ts";
