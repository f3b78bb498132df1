/** What a hole is for, in words of makers. */
import type { Fastener, Hardware, Hole, Part, Stock } from "../../design.ts";

export interface Served {
  readonly fastener: (id: string) => Fastener | undefined;
  readonly hardware: (id: string) => Hardware | undefined;
  readonly part: (id: string) => Part;
  readonly stock: (name: string) => Stock | undefined;
}

/** Of the stage: "pilot for wood screw #8, in hardwood", "counterbore for bolt M8", "cup of cup hinge". */
export function purposeOf(hole: Hole, i: number, served: Served): string {
  const thing = thingOf(hole, served);
  const of = thing === null ? "" : ` for ${thing}`;
  const last = i === hole.stages.length - 1;
  if (hole.stages[i]?.cone) return `head of ${thing ?? "the screw"}`;
  if (hole.kind === "pocket") return "pocket, with its pilot";
  if (hole.kind === "recess") return last ? `pilot in the recess, ${woodOf(hole, served)}` : "recess, open to the side";
  if (hole.kind === "pilot") {
    if (hole.stages.length > 1) return `${last ? "stem" : "insert"} of ${thing}`;
    return `pilot${of}, ${woodOf(hole, served)}`;
  }
  if (!last) return `counterbore${of}`;
  if (hole.kind === "cup") return `cup of ${thing}`;
  return hole.kind === "dowel" || hole.kind === "pin" ? (thing ?? hole.kind) : `${WORDS[hole.kind]}${of}`;
}

/** Before what goes in. */
const WORDS: Readonly<Record<Exclude<Hole["kind"], "pocket" | "recess" | "pilot" | "cup" | "dowel" | "pin">, string>> =
  {
    clearance: "clearance",
    oversized: "wide hole",
    slot: "slot",
    bolt: "hole",
    nut: "cross dowel",
    knob: "hole",
    cable: "hole for a cable",
  };

/** "wood screw #8", "dowel", "butt hinge"; null for a hole that the maker drew. */
function thingOf({ for: id, kind }: Hole, { fastener, hardware }: Served): string | null {
  if (id === null) return null;
  const own = fastener(id);
  // Dowels and pegs are told by the drill.
  if (own) return kind === "dowel" || kind === "pin" ? own.kind : (own.item.split(/ × |, /u)[0] ?? own.kind);
  return hardware(id)?.item.kind.replace(/ for an? .*$/u, "") ?? null;
}

/** Pilots are wider in hardwood; sheets are bored like it. */
function woodOf({ part }: Hole, served: Served): string {
  const stock = served.stock(served.part(part).stock);
  if (stock?.form === "sheet") return "in sheet stock";
  return stock?.softwood === false ? "in hardwood" : "in softwood";
}
