import type { Settings } from "../expand/make.ts";
import { byForm, made } from "../kinds/combine.ts";
import { kept, measure } from "../kinds/kept.ts";
import { may, settings } from "../kinds/settings.ts";
import { text, yesNo } from "../kinds/simple.ts";

const own = settings("the front edges of a case", {
  with: may(kept(text(60)), "What they are banded with: maple edging."),
  thick: may(measure, "How thick the band is: 0.02 in or 0.5 mm if nothing is said.", "thickness"),
  deducted: may(kept(yesNo), "Whether the panels are cut smaller by the band."),
});

/** A band on what is seen from the front, as a setting of each of those parts: what it is, or settings that say more. */
export const frontEdges = byForm({
  text: made(kept(text(60)), (item): Settings => banded({ with: item })),
  map: made(
    own,
    ({ said }): Settings =>
      banded({ with: said.with?.value, thick: said.thick?.value, deducted: said.deducted?.value }),
  ),
});

const banded = (more: Settings): Settings => ({ "edge banding": { edges: "front", ...more } });
