import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const STOP = "{ fit: stop, to: cabinet.bottom-panel, along: across, deep: finishes.slab.back + 3/8 }";

export const doorWithoutCatch = rule<{
  /** One, or the two of a pair. */
  readonly doors: readonly {
    readonly name: string;
    readonly part: string;
    /** A whole line of `fittings`; null where nothing lies at the free edge that it could be screwed to. */
    readonly line: string | null;
  }[];
}>({
  name: "door-without-catch",
  severity: "advice",
  message: ({ doors }) => `nothing holds ${doors.map(({ name }) => name).join(" and ")} shut`,
  label: () => "no catch",
  help: ({ doors }) => {
    const lines = doors.map(({ line, part }) => `\`- ${line ?? `{ fit: catch, to: block, against: ${part} }`}\``);
    const bare = doors.flatMap(({ line, name }) => (line === null ? [name] : []));
    const block =
      bare.length > 0
        ? `; nothing lies behind the free edge of ${bare.join(" and ")} that it could be screwed to: put a block of wood there, here called block`
        : "";
    return `add a catch${doors.length > 1 ? " for each" : ""}, under \`fittings\`: ${lines.join(" and ")}${block}`;
  },
  explain: `Butt hinges and continuous hinges have no spring, nor have cup hinges that are said to need a catch: a door on them swings open by itself where the floor or the wall is a little out of plumb.
Accept this if it has a lock or a turn button.`,
  wrong: doorExample([
    "{ fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }",
    STOP.replace("to: cabinet.bottom-panel,", "to: cabinet.bottom-panel, face: top,"),
  ]),
  right: doorExample(),
  basis: "common practice, no source",
});
