import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

/** The group that they all stand in, with how many they are; else some of their names. */
function whole(names: readonly string[]): string {
  const [first = ""] = names.map((name) => name.split(".")[0]);
  return names.every((name) => name.startsWith(`${first}.`))
    ? `the ${names.length} parts of \`${first}\``
    : nameSome(names);
}

export const partFloats = rule<{
  readonly name: string;
  readonly others: readonly string[];
  /** A part of these and one of the rest that lie against each other; null where none do. */
  readonly touching: readonly [string, string] | null;
  /** One of them is a wide board that has to be free to move. */
  readonly wide: boolean;
}>({
  name: "part-floats",
  severity: "error",
  message: (a) =>
    a.others.length === 0
      ? `${a.name} is joined to nothing`
      : `${whole([a.name, ...a.others])} are joined to each other but not to the rest`,
  help: ({ name, touching, wide }) => {
    const joint = (how: string): string =>
      `\`- { join: ${touching?.[0] ?? name}, to: ${touching?.[1] ?? "…"}, with: ${how} }\``;
    return `write under \`joints\`: ${joint(wide ? "slotted screws" : "screws")}${wide ? ", which let it move" : ""}; or ${joint("loose")} where it only stands there`;
  },
  explain: `Every part has to hang together with the rest through joints, else it falls off when the piece is lifted.`,
  wrong: stepExample(["to: [left-leg, right-leg]", "to: left-leg"]),
  right: stepExample(),
  basis: "the language",
});
