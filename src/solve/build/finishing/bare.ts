/** What stays bare under a finish that smells: the boxes of drawers, but for what is seen of them in front, and what is shut in. */
import type { Design, Finish } from "../../design.ts";
import { leftTogether } from "../moved-as-one.ts";
import { productOf } from "../steps/finishing/products.ts";
import { type Inside, NOTHING_SHUT, shutIn } from "./shut-in.ts";

type Given = Pick<Design, "parts" | "joints" | "fittings" | "stock">;

export interface Bare {
  readonly parts: ReadonlySet<string>;
  /** Of parts that have the finish elsewhere: what stays bare. */
  readonly faces: ReadonlyMap<string, Inside>;
  /** Parts that lie inside with all their faces. */
  readonly wholly: readonly string[];
  /** In words. */
  readonly what: readonly string[];
}

const BOXES = "drawer boxes";
const INSIDE = "the faces inside that are shut in";

/** None where the plan itself says how many coats come inside, or gives the finish to nothing but what is shut in. */
export function bareUnder(finish: Finish, design: Given): Bare {
  const nothing: Bare = { parts: new Set(), faces: new Map(), wholly: [], what: [] };
  if (!productOf(finish.product).smells) return nothing;
  const boxes = boxesOf(design);
  const { wholly, faces } = finish.inside === undefined ? shutIn(design) : NOTHING_SHUT;
  const alike = new Set(finish.alike);
  const inside = [...wholly].filter((id) => !alike.has(id) && !boxes.includes(id));
  const bare = new Set([...boxes, ...inside]);
  if (finish.parts.every((id) => bare.has(id))) return nothing;
  const own = finish.parts.filter((id) => !bare.has(id));
  const shows = inside.length > 0 || own.some((id) => faces.has(id));
  const what = [...(finish.parts.some((id) => boxes.includes(id)) ? [BOXES] : []), ...(shows ? [INSIDE] : [])];
  return { parts: bare, faces, wholly: inside, what };
}

/** What is inside, of drawers too, where as many coats do as the plan says; null where it says nothing of it. */
export function insideUnder(
  { inside, coats, alike = [] }: Finish,
  design: Given,
): Pick<Bare, "parts" | "faces"> | null {
  if (inside === undefined || inside === coats) return null;
  const { wholly, faces } = shutIn(design);
  const both = new Set(alike);
  return { parts: new Set([...boxesOf(design), ...wholly].filter((id) => !both.has(id))), faces };
}

/** Ids of parts. */
function boxesOf({ parts, joints, fittings }: Given): readonly string[] {
  const runs = new Set(joints.flatMap(({ kind, parts: [side] }) => (kind === "running" ? [side] : [])));
  if (runs.size === 0) return [];
  const seen = new Set([
    ...joints.flatMap(({ setWith, parts: [, front] }) => (setWith ? [front] : [])),
    ...fittings.map(({ part }) => part),
  ]);
  return leftTogether({ parts, joints })
    .map((body) => body.parts.map(({ id }) => id))
    .filter((ids) => ids.some((id) => runs.has(id)))
    .flatMap((ids) => {
      const shown = ids.filter((id) => seen.has(id));
      // Without a grip or a front of its own nobody can say which of it is seen.
      return shown.length > 0 ? ids.filter((id) => !shown.includes(id)) : [];
    });
}
