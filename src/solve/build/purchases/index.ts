import { inches, type Length, millimetres } from "../../../units/length.ts";
import { roundTo } from "../../../units/round.ts";
import type { Blank, CutLine, Finishing, Jig, Layout, Purchase, Step } from "../../build.ts";
import type { Design, Fastener, Hardware, Hole, Part } from "../../design.ts";
import { bandingNeeds } from "../banding/strips.ts";
import { enoughOf } from "../enough.ts";
import { OPEN } from "../steps/open-time.ts";
import { fastenerNeeds } from "./fasteners.ts";
import { finishNeeds } from "./finish.ts";
import { hardwareNeeds } from "./hardware.ts";
import { bought } from "./need.ts";
import { panePurchases } from "./panes.ts";
import { slabNotes, wideNotes } from "./slabs.ts";
import { glueNeeds, sandpaperNeeds } from "./supplies.ts";
import { usedUp } from "./used-up.ts";
import { woodPurchases } from "./wood.ts";

/** To which figures the thickness of a nail is told. */
const FINE = { inch: inches(1, 64), mm: millimetres(1, 10) } as const;

/** Whether it is planed in the steps, after it is sawn. */
const milledIn = (blanks: readonly Blank[], stock: string): boolean =>
  blanks.some((blank) => blank.stock === stock && (blank.why === "rough" || blank.why === "glue-up"));

export interface Shopping {
  readonly design: Pick<Design, "stock" | "parts" | "joints" | "units" | "workshop">;
  /** By the name of a stock, that of which it is sawn from the boards; absent: each has its own. */
  readonly boards?: ReadonlyMap<string, string>;
  readonly layouts: readonly Layout[];
  readonly blanks: readonly Blank[];
  readonly cutList: readonly CutLine[];
  readonly fasteners: readonly Fastener[];
  readonly hardware: readonly Hardware[];
  readonly holes: readonly Hole[];
  readonly finishing?: readonly Finishing[];
  /** From what is left of which stock they are made. Absent: none. */
  readonly jigs?: readonly Pick<Jig, "id" | "from">[];
  /** What they use up besides. Absent: nothing. */
  readonly steps?: readonly (Pick<Step, "uses"> & Partial<Pick<Step, "number" | "actions">>)[];
  readonly print: (length: Length) => string;
}

/**
 * What to buy, and what is used up of what there is: sheets and boards as they are laid out, rough boards by volume, hardware,
 * fasteners in boxes, glue by area, banding in rolls, sandpaper. Stock in the order of the plan, fasteners by name.
 */
export function purchases({
  design,
  boards = new Map(),
  layouts,
  blanks,
  cutList,
  fasteners,
  hardware,
  holes,
  finishing = [],
  jigs = [],
  steps = [],
  print,
}: Shopping): readonly Purchase[] {
  const { stock, parts, units, workshop } = design;
  const byId = new Map(parts.map((each) => [each.id, each]));
  const panes = new Set(stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  const wood = stock.flatMap((each) => {
    const own = layouts.filter((layout) => layout.stock === each.name);
    const sharers = stock.filter(({ name }) => (boards.get(name) ?? name) === each.name);
    const notes = sharers.flatMap((one) => [
      ...slabNotes(one, cutList, { part: (id) => byId.get(id) as Part, blanks, print }),
      ...wideNotes(one, { blanks, print }),
    ]);
    const used = sharers.filter(({ name }) => blanks.some((blank) => blank.stock === name));
    return woodPurchases(each, own, units, {
      ...{ notes, milled: used.some(({ name }) => milledIn(blanks, name)) },
      thicknesses: used.map(({ thickness }) => thickness),
      ...{ enough: enoughOf(each, own, jigs, units), print },
    });
  });
  const slow = steps.flatMap(({ number = 0, actions = [] }) =>
    actions.some((action) => action.do === "glue" && action.openMinutes > OPEN.usual) ? [number] : [],
  );
  const needs = [
    ...hardwareNeeds(hardware, { design, holes, print }),
    ...fastenerNeeds(fasteners, hardware, (length) => print(roundTo(length, FINE[units]))),
    ...glueNeeds(design, fasteners, slow),
    ...bandingNeeds(parts, cutList, units),
    ...sandpaperNeeds(
      parts.filter((part) => !panes.has(part.stock)),
      finishing,
    ),
    ...finishNeeds(finishing, units),
    ...usedUp(steps, units),
  ];
  return [
    ...wood.filter(({ section }) => section === "sheets"),
    ...wood.filter(({ section }) => section !== "sheets"),
    ...stock.flatMap((each) => panePurchases(each, cutList, print)),
    ...needs.map((need) => bought(need, workshop)),
  ];
}
