import type { Fastener, Joint } from "../../design.ts";

/** The parts at which the button or the clip sits that a screw holds which passes through no part. */
export const sitsAt = (joints: readonly Joint[], { joint, through, into }: Fastener): readonly string[] =>
  through.length > 0 ? [] : (joints.find(({ id }) => id === joint)?.parts ?? []).filter((id) => id !== into);
