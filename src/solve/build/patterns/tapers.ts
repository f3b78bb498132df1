/** Tapers: the wedge that comes off, in its true size where it goes on a sheet, else by its two measures for a taper jig. */
import { inches, type Length } from "../../../units/length.ts";
import { add, ZERO } from "../../../units/rational.ts";
import { onBench } from "../../design/turning.ts";
import type { Part } from "../../design.ts";
import type { Spot } from "../model/pattern.ts";
import type { PlaneFeature } from "../steps/words/boxes.ts";
import { slopeOf } from "../steps/words/features.ts";
import type { CurveDraft } from "./curves.ts";
import { tiles } from "./sheets.ts";

/** Wood drawn beyond where the taper begins, and above its tip. */
const AROUND = inches(1, 2);

/** The end at the left, the face that is planed below: laid on with both flush. */
export function taperOf(part: Part, feature: PlaneFeature, print: (l: Length) => string): CurveDraft {
  const { end, over, inset } = slopeOf(onBench(part), feature);
  const [width, height] = [add(over, AROUND), add(inset, AROUND)];
  const full = tiles(width) === 1;
  const corner: Spot = [ZERO, ZERO];
  const [tip, start]: readonly [Spot, Spot] = [
    [ZERO, inset],
    [over, ZERO],
  ];
  return {
    ...{ of: "curve", what: `taper of ${print(inset)} over ${print(over)}`, width, height, half: false, full },
    outline: [{ is: "line", from: tip, to: start }],
    edges: [
      { from: corner, to: start, is: "" },
      { from: corner, to: tip, is: "" },
      { from: start, to: [width, ZERO], is: "face" },
      { from: tip, to: [ZERO, height], is: `${end} end` },
    ],
    ...(!full && { offsets: [tip, start] }),
  };
}
