export type { Job, Schedule } from "./job.ts";
export { scheduled } from "./schedule.ts";
