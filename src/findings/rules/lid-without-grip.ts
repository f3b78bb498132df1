import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

const hung = (more: string): string =>
  chestExample(
    ["to: [fore, rear, left-side, right-side], with: loose", "to: rear, with: butt hinges, opens: top"],
    ["against: lid }", `against: lid, deep: left-side.back - 2 }${more}`],
  );

export const lidWithoutGrip = rule<{ readonly lid: string }>({
  name: "lid-without-grip",
  severity: "warning",
  message: (a) => `there is nothing to lift the lid ${a.lid} by`,
  label: () => "its edges lie flush",
  help: () =>
    "let it reach 3/8 in (10 mm) or more past what it lies on, with room under it; cut a rabbet for fingers under its edge (rabbet: { along: front bottom, from: …, to: … }) or into what is below it; or give it a pull or a knob",
  explain: `A lid whose edges lie flush with what it shuts gives fingers no hold, least of all when it is heavy. It needs an edge that stands out, a recess for the tips of two
fingers under its edge (about 3/8 in high and deep, 2 in long), or a pull.`,
  wrong: hung(""),
  right: hung("\n  - { fit: knob, to: lid, face: top, deep: lid.front + 2 }"),
  basis: "common practice, no source",
});
