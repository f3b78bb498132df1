export { outstanding } from "./envelopes.ts";
export { type Reach, type Reached, reach, toolFor, toolsFor } from "./reach.ts";
