import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const insetDoorWithoutStop = rule<{
  /** One, or the two of a pair. */
  readonly doors: readonly {
    readonly name: string;
    /** Whole lines of `fittings`; null where nothing lies at the free edge that they could be screwed to. */
    readonly lines: { readonly catch: string; readonly stop: string } | null;
  }[];
}>({
  name: "inset-door-without-stop",
  severity: "warning",
  message: ({ doors }) =>
    `nothing stops ${doors.map(({ name }) => name).join(" and ")} when ${doors.length > 1 ? "they are shut but their" : "it is shut but its"} hinges`,
  label: () => "no stop behind it",
  help: ({ doors }) => {
    const all = (what: "catch" | "stop", else_: string): string =>
      doors.map(({ lines }) => `\`- ${lines?.[what] ?? else_}\``).join(" and ");
    const [behind, it] = doors.length > 1 ? ["behind each", "them"] : ["behind it", "it"];
    return `put a catch or a stop ${behind}, under \`fittings\`: ${all("catch", "{ fit: catch, to: …, against: … }")}, which also holds ${it} shut; or ${all("stop", "{ fit: stop, to: …, deep: … }")}; a strip or shelf that ${doors.length > 1 ? "they lie" : "it lies"} against does as well`;
  },
  explain: `A door that lies in its opening swings through it if nothing is behind it: the leaves of its hinges lever their screws out. What it closes
against is a block, a strip, a fixed shelf as far back as the door is thick, or a catch.`,
  wrong: doorExample([
    "fittings:\n  - { fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }\n",
    "",
  ]),
  right: doorExample(),
  basis: "common practice, no source",
});
