/** Glue and sandpaper, from the areas that are glued and sanded. */
import { toNumber, UNITS_PER_MM } from "../../../units/index.ts";
import { isGluedUp, makingOf } from "../../design/making/plain.ts";
import { faceAxis, indexOf } from "../../design/space.ts";
import type { Design, Fastener, Part } from "../../design.ts";
import { isIronedOn } from "../banding/strips.ts";
import { sandedIn } from "../finishing/abrasives.ts";
import type { Finishing } from "../model/purchase.ts";
import { series } from "../steps/draft.ts";
import type { Need } from "./need.ts";

/** m² that a litre of PVA glue covers: labels say about 250 sq ft to the gallon, from memory. */
const COVERS = 6;
/** For what is squeezed out and left on the brush. Common practice, no source. */
const SQUEEZED_OUT = 1.3;
/** cm³ for a plug, peg, dowel or tenon that is set in glue besides. Common practice, no source. */
const EACH_HOLE = 0.3;

/** ml in a US fluid ounce: 1/128 of a gallon of 231 cubic inches of 25.4 mm. */
const OUNCE = (231 * 16.387064) / 128;
/** Bottles of the shops, in ounces or ml. Common practice, no source. */
const BOTTLES = {
  inch: { unit: "oz", ml: OUNCE, sizes: [4, 8, 16, 32] },
  mm: { unit: "ml", ml: 1, sizes: [250, 500, 1000] },
};

const METRE = 1000 * UNITS_PER_MM;
/** In squares of the unit of length. */
export const SQUARE_METRE = METRE * METRE;
const metres = (length: Part["width"]): number => toNumber(length) / METRE;

/** m² between the boards and layers of a part. */
function gluedInside(part: Part): number {
  const { boards, layers } = makingOf(part);
  const [thick, wide, long] = [metres(part.thickness), metres(part.width), metres(part.length)];
  return (boards - 1) * thick * long + (layers - 1) * wide * long;
}

/** m² under strips of wood that cover edges. */
const gluedOutside = (part: Part): number =>
  makingOf(part)
    .banding.filter((band) => !isIronedOn(band))
    .reduce((so, { edge }) => {
      const along = faceAxis(edge) === indexOf(part.axes.length) ? part.width : part.length;
      return so + metres(part.thickness) * metres(along);
    }, 0);

/** `slow`: numbers of the steps that take longer than usual glue stays open. */
export function glueNeeds(
  { parts, joints, units }: Glued,
  fasteners: readonly Fastener[],
  slow: readonly number[] = [],
): readonly Need[] {
  const glued = joints.filter(({ glue }) => glue);
  const faces = glued.flatMap(({ contact }) => contact.map(({ area }) => area / SQUARE_METRE));
  const plugged = fasteners.filter(({ head }) => head.seat === "plugged").length;
  const ids = new Set(glued.map(({ id }) => id));
  const set = fasteners.filter(({ joint, travelsWith }) => ids.has(joint) && travelsWith !== null).length;
  if (glued.length === 0 && plugged === 0 && !parts.some((part) => isGluedUp(part) || gluedOutside(part) > 0))
    return [];
  const area = sumOf(faces) + sumOf(parts.map((part) => gluedInside(part) + gluedOutside(part)));
  const ml = (area / COVERS) * 1000 * SQUEEZED_OUT + (plugged + set) * EACH_HOLE;
  const { unit, ml: one, sizes } = BOTTLES[units];
  const amount = ml / one;
  const size = sizes.find((each) => each >= amount) ?? (sizes.at(-1) as number);
  const bottle = { unit: `${size} ${unit} bottle`, boxes: [], of: "bottle" };
  const note = `about ${amount < 1 ? 1 : Math.ceil(amount)} ${unit} ${Math.ceil(amount) <= 1 ? "is" : "are"} used`;
  return [
    {
      section: "supplies",
      item: "wood glue",
      used: Math.max(1, Math.ceil(amount / size)),
      spare: 0,
      sold: bottle,
      price: null,
      notes: [
        note,
        ...(slow.length > 0
          ? [`of a kind that sets slowly for ${slow.length === 1 ? "step" : "steps"} ${series(slow.map(String))}`]
          : []),
      ],
    },
  ];
}

type Glued = Pick<Design, "parts" | "joints" | "units">;

/** m² that a sheet of sandpaper (9 × 11 in, 230 × 280 mm) lasts for in one grit. Common practice, no source. */
const SHEET_LASTS = 1.5;

/** Each grit by what is sanded with it: every face before the finish, and what has a coat before the next. */
export function sandpaperNeeds(parts: readonly Part[], finishing: readonly Finishing[]): readonly Need[] {
  if (parts.length === 0) return [];
  const sold = { unit: "sheet", boxes: [], of: "sheet" };
  return sandedIn(sumOf(parts.map(surface)), finishing).map(({ grit, area }) => ({
    ...{ section: "supplies", item: `sandpaper, ${grit} grit`, used: Math.ceil(area / SHEET_LASTS) },
    ...{ spare: 0, sold, price: null },
  }));
}

/** m² over all six sides of a part. */
export function surface({ thickness, width, length }: Pick<Part, "thickness" | "width" | "length">): number {
  const [t, w, l] = [metres(thickness), metres(width), metres(length)];
  return 2 * (t * w + w * l + t * l);
}

const sumOf = (values: readonly number[]): number => values.reduce((so, value) => so + value, 0);
