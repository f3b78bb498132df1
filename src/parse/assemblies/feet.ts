import { measure } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";

const own = settings("feet", {
  hardware: need(text(100), "A name of `hardware`, or foot, caster or leveller."),
  to: need(text(100), "The part that they are fixed under: the bottom of a case."),
  "in from the corners": may(
    measure,
    "How far the middle of each is in from the edges of that part: 2 in or 50 mm if nothing is said.",
  ),
});

/** Nothing of it is sawn. */
export const feet = assembly({
  kind: "bought-feet",
  also: ["casters", "levellers", "levelers"],
  meaning: "Four feet, casters or levellers that are bought, near the corners under a part.",
  settings: own,
  expand: (said: Fields<typeof own.keys>, { usual, write }: Site): Expanded => {
    const [part, inside] = [said.to.value, said["in from the corners"]?.value ?? usual("2", "50")];
    const fittings = (["front", "back"] as const).flatMap((deep) =>
      (["left", "right"] as const).map((across) => ({
        fit: said.hardware.value,
        to: part,
        face: "bottom",
        across: across === "left" ? write`${part}.left + ${inside}` : write`${part}.right - ${inside}`,
        deep: deep === "front" ? write`${part}.front + ${inside}` : write`${part}.back - ${inside}`,
      })),
    );
    return { entries: {}, joints: [], fittings };
  },
});
