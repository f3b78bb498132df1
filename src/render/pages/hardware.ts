import type { Build } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import { type Atom, list } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import { body, capital, subheading } from "./plan.ts";

/** What decides whether a piece of hardware that another shop sells would do: each once. */
export function whatDecides({ hardware }: Build, width: number): readonly Atom[] {
  const items = new Map(
    hardware.flatMap(({ item, halfOf }) =>
      halfOf === undefined && item.decides.length > 0 ? [[item.label, item] as const] : [],
    ),
  );
  if (items.size === 0) return [];
  const rows = [...items.values()].map(
    ({ kind, decides }): Rich => [
      { text: capital(kind), font: "bold" },
      { text: `: ${decides.map(({ name, value }) => `${name} ${value}`).join("; ")}`, font: "regular" },
    ],
  );
  return [
    ...subheading("What hardware has to agree in", width),
    ...body(
      "Hardware of any make will do if it agrees with every measure that is named here. Where one differs, get a new copy of this plan for it.",
      width,
      {
        keep: true,
      },
    ),
    ...list(rows, TYPE.body, width, { above: 4 }),
  ];
}
