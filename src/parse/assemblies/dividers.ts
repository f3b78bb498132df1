import type { Settings } from "../expand/make.ts";
import type { Between, Dividing, Making, Way } from "./making.ts";

const CROSS = { across: ["bottom", "top"], down: ["left", "right"] } as const;

/** Faces on which what stands between two openings ends, and the parts there. */
export function endsOf({ region, way, bounds }: Between, { site: { write } }: Making) {
  const faces = CROSS[way];
  return {
    cross: Object.fromEntries(faces.map((face) => [face, write`${region}.${face}`])),
    ends: faces.flatMap((face) => [bounds[face] ?? [], (face === "top" && bounds.topBehind) || []].flat()),
  };
}

/** Panels in a case, or rails at its front, or both. */
export const inCase: Dividing = { word: () => "divider", put: addDivider };

/** Panels in a case, each behind a member of the face frame before it: level with the top of a rail, in the middle of a stile. */
export const behindFrame = (member: (name: string, way: Way) => string): Dividing => ({
  word: () => "divider",
  placed: true,
  put: (between, making) => {
    const front = member(between.name, between.way);
    const touching: Settings =
      between.way === "across" ? { "centred on": { across: front } } : { top: making.site.write`${front}.top` };
    addDivider({ ...between, said: null, touching }, making);
  },
});

/** A divider in its place, joined to what it ends on. */
function addDivider(between: Between, making: Making): void {
  const { name, said, region, way, touching } = between;
  const { site, entries, joints } = making;
  const { write } = site;
  const { cross, ends } = endsOf(between, making);
  const kind = said?.divider?.value ?? "panel";
  const setBack = said?.["set back"]?.value;
  const made = said?.["made of"]?.value ?? making.stock;
  const rail = said?.rail?.value ?? made;
  const front = setBack ? write`${region}.front + ${setBack}` : write`${region}.front`;
  const called = said?.called?.value;
  const attitude: Settings =
    way === "across" ? { as: "upright", facing: "left" } : { as: "lying flat", grain: "across" };
  const onEdge = said?.["on edge"]?.value === "yes";
  const wide = said?.wide?.value ?? site.usual("2", "50");
  if (kind === "panel")
    entries[name] = {
      "made of": made,
      ...(called ? { called } : way === "down" && { called: between.drawers ? "level divider" : "fixed shelf" }),
      ...attitude,
      ...cross,
      ...touching,
      front,
      back: write`${region}.back`,
      ...making.edge,
    };
  else {
    const turned: Settings =
      way === "across"
        ? { as: "upright", facing: onEdge ? "front" : "left", [onEdge ? "across" : "deep"]: wide }
        : { as: onEdge ? "on edge" : "lying flat", grain: "across", [onEdge ? "up" : "deep"]: wide };
    entries[name] = { "made of": rail, ...(called && { called }), ...turned, ...cross, ...touching, front };
  }
  const panel = `${name}-panel`;
  if (kind !== "rail") making.reaching.push(kind === "panel" ? name : panel);
  const how = said?.join?.value ?? making.join;
  if (ends.length > 0) joints.push({ join: name, to: ends, ...how });
  if (kind !== "rail and panel") return;
  const lower = said?.lower?.value;
  const face = way === "across" ? "left" : "top";
  const against = lower
    ? way === "across"
      ? write`${name}.left + ${lower}`
      : write`${name}.top - ${lower}`
    : write`${name}.${face}`;
  entries[panel] = {
    "made of": made,
    ...attitude,
    ...cross,
    [face]: against,
    front: write`${name}.back`,
    back: write`${region}.back`,
  };
  if (ends.length > 0) joints.push({ join: panel, to: ends, ...making.join });
  joints.push({ join: panel, to: name, with: "glue" });
}
