/** The finish of each surface: sanding, coats, waits, and what is kept free of it. Common practice, no source. */

import type { Build } from "../../build.ts";
import type { FinishSchedule } from "../model/finish.ts";
import type { Finishing } from "../model/purchase.ts";
import { panelsThatComeOff } from "../order/removable.ts";
import { amountOf } from "../purchases/finish.ts";
import { productOf } from "../steps/finishing/products.ts";
import { GRITS } from "./abrasives.ts";
import { bareTexts } from "./bare-words.ts";
import { insideTexts } from "./inside-words.ts";
import { keptOff } from "./kept-off.ts";
import { productKind, waterborne } from "./products.ts";

/** Null where the plan says nothing of finish. `pinned`: ids of the pins that are in by then. */
export function finishSchedule(build: Build, pinned: ReadonlySet<string> = new Set()): FinishSchedule | null {
  const finishing = (build.finishing ?? []).filter(({ area }) => area > 0);
  if (finishing.length === 0) return null;
  const rows = finishing.map((each) => {
    const { dries, between } = productOf(each.product);
    const { cure } = productKind(each.product);
    const recoat = (each.dries ?? dries) / 60;
    const own = new Set(each.parts);
    const marks = build.cutList.filter(({ parts }) => parts.some((id) => own.has(id))).map(({ mark }) => mark);
    const amount = amountOf([each], build.design.units);
    return { ...each, marks, grits: GRITS, between: (each.coats > 1 ? between : null) ?? null, recoat, cure, amount };
  });
  return { rows, how: howTo(build, finishing), free: keptFree(build, finishing, pinned) };
}

function howTo({ design, parts, joints, cutList }: Build, finishing: readonly Finishing[]): readonly string[] {
  const mark = (id: string): string => cutList.find(({ parts: own }) => own.includes(id))?.mark ?? "";
  const ofIt = (each: Finishing): Build["parts"] => parts.filter(({ id }) => each.parts.includes(id));
  const products = [...new Set(finishing.map(({ product }) => product))];
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const finished = parts.filter(({ id }) => finishing.some((each) => each.parts.includes(id)));
  const solid = finished.some(({ stock }) => stocks.get(stock)?.movement);
  const sheets = finished.some(({ stock }) => stocks.get(stock)?.form === "sheet");
  const banded = finished.some(({ making }) => (making?.banding.length ?? 0) > 0);
  // Where the faces inside stay bare, only what comes off has its coats all round.
  const comeOff = panelsThatComeOff(design);
  const bare = finishing.some(({ bareWhat }) => bareWhat);
  const slabs = finished.some(({ id, making }) => (making?.boards ?? 1) > 1 && (!bare || comeOff.has(id)));
  const named = finishing.some(({ bothFaces }) => bothFaces);
  const floating = floats(design, finished, joints);
  return [
    `Try it on an offcut of each wood first, sanded the same way${banded ? ", with a piece of the edge banding on it" : ""}.`,
    `Sand along the grain, one grit after another, and take the dust off between.${solid ? " End grain gets some strokes more of the finest, or it comes out darker." : ""}`,
    ...(sheets
      ? [
          "The face of a sheet is thin: sand it by hand or lightly, keep a machine off its edges, and leave its bare edges at the first grit.",
        ]
      : []),
    ...(products.some(waterborne)
      ? [
          "What is thinned with water raises the grain: wipe the wood with a damp cloth, let it dry, and sand once more with the last grit before the first coat.",
        ]
      : []),
    ...(floating
      ? ["A panel that floats in a frame is finished before the frame is glued, or a bare line shows when it shrinks."]
      : []),
    ...(slabs && !named
      ? ["Both faces of a glued-up panel get the same coats, also the one that nobody sees, or it cups."]
      : []),
    ...products.map(
      (product) => `${product.charAt(0).toUpperCase()}${product.slice(1)}: ${lower(productOf(product).how)}.`,
    ),
    ...new Set(finishing.flatMap((each) => insideTexts(each, ofIt(each), mark))),
    ...new Set(finishing.flatMap((each) => bareTexts(each, parts, mark))),
  ];
}

/** Also told in the step. */
export const SLIDE_SEATS = "where slides are screwed on";

const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** Panels of solid wood that are finished, and free in the grooves of their frames; not what buttons or slots let move. */
function floats({ stock }: Build["design"], finished: Build["parts"], joints: Build["joints"]): boolean {
  const solid = new Set(stock.flatMap(({ name, movement }) => (movement ? [name] : [])));
  const moving = new Set(finished.filter((part) => solid.has(part.stock)).map(({ id }) => id));
  return joints.some(
    ({ kind, method, parts: [panel] }) => kind === "floating" && method === "groove" && moving.has(panel),
  );
}

function keptFree(
  { design, parts, joints, holes, hardware, motions }: Build,
  finishing: readonly Finishing[],
  pinned: ReadonlySet<string>,
): readonly string[] {
  const finished = parts.filter(({ id }) => finishing.some((each) => each.parts.includes(id)));
  const kinds = new Set(hardware.map(({ item }) => item.kind));
  const has = (...some: readonly string[]): boolean => some.some((kind) => kinds.has(kind));
  const cups = [...kinds].some((kind) => kind.startsWith("cup hinge"));
  const hinged = new Set(joints.flatMap(({ id, kind }) => (kind === "hinged" ? [id] : [])));
  const seats = parts.some(({ features }) => features.some((each) => hinged.has(each.for ?? "")));
  const slides = has("side slide", "undermount slide");
  return [
    ...new Set(
      finishing.flatMap(({ keepOff, parts: ids }) => {
        const own = parts.filter(({ id }) => ids.includes(id));
        // Those of pins are told of below.
        const others = holes.filter(({ kind }) => kind !== "pin");
        return (keepOff && keptOff(keepOff, { parts: own, joints: design.joints, holes: others, glued: true })) ?? [];
      }),
    ),
    ...(joints.some(({ glue }) => glue) ? ["whatever is still to be glued: glue does not hold on a finish"] : []),
    ...(floats(design, finished, joints) ? ["the grooves that panels float in"] : []),
    ...pinWords(holes, pinned),
    ...(cups ? ["the holes for the cups of hinges, and the seats of their plates"] : []),
    ...(seats ? ["the seats of hinges"] : []),
    // Under a finish that smells those faces are bare as it is.
    ...(slides && !finishing.some(({ bareWhat }) => bareWhat) ? [SLIDE_SEATS] : []),
    ...(!slides && motions.some(({ kind }) => kind === "slide")
      ? ["runners, and the edges that run on them: wax only"]
      : []),
  ];
}

/** Holes that stay empty are stopped; pins that are in are taped. */
function pinWords(holes: Build["holes"], pinned: ReadonlySet<string>): readonly string[] {
  const own = holes.filter(({ kind }) => kind === "pin");
  const isShut = ({ for: id, spare }: Build["holes"][number]): boolean => !spare && pinned.has(id ?? "");
  const [shut, open] = [own.some(isShut), !own.every(isShut)];
  return [
    ...(shut ? ["shelf pins that are in: tape them, or wipe off at once what gets on them"] : []),
    ...(open ? [`the holes of shelf pins${shut ? " that are left" : ""}: stop them with bits of dowel or tape`] : []),
  ];
}
