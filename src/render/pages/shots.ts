/** For the maker: which photographs to take while the piece is built. */
import type { Step } from "../../solve/build.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, type Plan, sectionHeading } from "./plan.ts";

const COLUMNS: readonly Column[] = [
  { head: "", align: "tick" },
  { head: "Step", align: "right" },
  { head: "Photograph", stretch: true },
];

export function shotList({ build, frame }: Plan): Section | null {
  const { steps, parts, motions } = build;
  if (steps.length === 0) return null;
  const { width } = frame;
  const marks = new Map(parts.map(({ id, mark }) => [id, mark]));
  const opens = motions.length > 0 ? ["The finished piece from the same side, everything open"] : [];
  const rows = [
    ["", "–", "The stock as it was bought, with its labels"],
    ...steps.map((step) => ["", String(step.number), shots(step, marks).join("; ")]),
    ...[
      "The finished piece as on the cover, before a plain wall",
      ...opens,
      "The joint or the detail that one is proud of",
    ].map((shot) => ["", "–", shot]),
  ];
  return {
    ...{ name: "shots", title: "Photographs to take", kind: "shots", start: "page" },
    atoms: [
      ...sectionHeading("shots", "Photographs to take", width),
      ...body(
        "The piece is built only once. Keep the camera in one place for a step’s pictures, with the light from one side.",
        width,
        {
          keep: true,
        },
      ),
      ...table({ columns: COLUMNS, rows, width, above: 8 }),
    ],
  };
}

/** What a step shows: how a part goes in, clamps, what it warns of; else the work in hand. */
function shots({ title, kind, shows, actions, cautions }: Step, marks: ReadonlyMap<string, string>): readonly string[] {
  const fresh = [...new Set(shows.fresh.flatMap((id) => marks.get(id) ?? []))].toSorted();
  const what = fresh.length === 0 || fresh.length > MOST ? "" : ` (${fresh.join(", ")})`;
  const does = (one: string): boolean => actions.some((action) => action.do === one);
  return [
    `${title}: the work in hand${what}`,
    ...(shows.travel.length > 0 ? ["half in, so that one sees where it goes"] : []),
    ...(does("clamp") ? ["all clamps on, from where they can be counted"] : []),
    ...(does("machine") && kind !== "join" ? ["the finished cuts and holes, close"] : []),
    ...(cautions.length > 0 ? ["where the hands are, for the caution"] : []),
  ];
}

const MOST = 6;
