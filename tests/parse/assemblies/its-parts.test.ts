/** The maker's own settings of parts that an assembly makes. */
import { describe, expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/length.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { partsOf, sound } from "./opened.ts";

const stand = (its: string): string => `plan: 1
title: Stand for the label printer
units: inch
outside: { width: 20, depth: 12, height: 20 }
carries: 5 lb
stock:
  wood: { sold as: 3/4 MDF }
  half: { sold as: 1/2 MDF }
  thin: { sold as: 1/4 hardboard }
hardware: { knob: { kind: knob, screw: 1 1/2 }, slide: { kind: side slide, length: 10 } }
piece:
  cabinet:
    kind: case
    made of: wood
    back: { made of: thin, in: laid on }
    its parts: ${its}
    openings: { down: [{ high: 6, drawer: { made of: half, bottom: thin, slides: slide, front: { made of: wood }, pull: knob } }, { high: the rest }] }
`;

describe("its parts", () => {
  test("get what the assembly has no setting for: a hole for a cable, a name", () => {
    const { design, holes } = sound(
      stand("{ back panel: { called: cable back, hole: { in: front, from left: 4, from bottom: 6, diameter: 2 } } }"),
    );
    const back = design.parts.find(({ id }) => id === "cabinet.back-panel");
    expect(back?.called).toBe("cable back");
    const bored = holes.filter(({ part, for: of }) => part === back?.id && of === null);
    expect(bored.map(({ stages }) => stages.map(({ diameter }) => toMillimetres(diameter)))).toEqual([[2 * 25.4]]);
  });

  test("of an assembly inside have their names behind a dot", () => {
    const { design } = sound(stand("{ opening-1-drawer.bottom-panel: { called: deep bottom } }"));
    expect(design.parts.find(({ called }) => called === "deep bottom")?.id).toBe(
      "cabinet.opening-1-drawer.bottom-panel",
    );
  });

  test("take the maker's settings in the place of the assembly's, however they are spelt", () => {
    // The usual back is 1/16 short all round: 19 7/8 wide. This one is 1/4 short at the left: 20 - 1/4 - 1/16.
    expect(partsOf(stand("{ back-panel: { Left: 1/4 } }"))).toMatchObject({
      "cabinet.back-panel": "1/4 × 19 11/16 × 19 7/8",
    });
  });

  test("that there are not are told, with the nearest there is", () => {
    const { findings } = solveText(stand("{ back-pane: { called: x } }"));
    expect(said(findings)).toEqual([expect.stringContaining("nothing is called back-pane")]);
    expect(findings[0]?.help).toBe("write back-panel");
  });
});
