/** Samples with something that moves. */
import type { BuildRecord, Motion } from "../record.ts";
import type { V3 } from "../vector.ts";
import { corner } from "./corner.ts";
import { stool } from "./stool.ts";

type Pose = Motion["poses"][number];
const still: Pose["rotate"] = {
  about: [
    [0, 0, 0],
    [0, 0, 1],
  ],
  degrees: 0,
};

/** The stool's top as a lid that turns about its back edge; a minus opens it. */
export function lidded(degrees: number, shift: V3 = [0, 0, 0]): BuildRecord {
  const record = stool();
  const poses = [0, 0.25, 0.5, 0.75, 1].map(
    (part): Pose => ({
      at: Math.abs(degrees) * part,
      rotate: {
        about: [
          [0, 200, 320],
          [1, 0, 0],
        ],
        degrees: degrees * part,
      },
      shift,
    }),
  );
  record.motions.push({ name: "lid", kind: "swing", parts: ["top"], range: Math.abs(degrees), poses, needs: [] });
  return record;
}

/** A foot, moved in under the lid, that goes up through where the lid was; `open`: how far it says that the lid must be open. */
export function underTheLid(open: number): BuildRecord {
  const record = lidded(-90);
  for (const { solids } of record.hardware.slice(0, 1))
    for (const piece of solids) piece.points = piece.points.map(([x, y, z]) => [x + 18, y, z]);
  const poses = [0, 1].map((at): Pose => ({ at, rotate: still, shift: [0, 0, 310 * at] }));
  const needs = [{ motion: "lid", open }];
  record.motions.push({ name: "foot", kind: "slide", parts: ["foot 1"], range: 1, poses, needs });
  return record;
}

/** The corner's roof let down by so much from 400 above a screw whose head stands 3 proud. */
export function lowered(by: number): BuildRecord {
  const record = corner({ beside: 80, under: 400, tool: "straight" });
  const poses = [0, by].map((at): Pose => ({ at, rotate: still, shift: [0, 0, -at] }));
  record.motions.push({ name: "roof", kind: "lift", parts: ["roof"], range: by, poses, needs: [] });
  return record;
}
