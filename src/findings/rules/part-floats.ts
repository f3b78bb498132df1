import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const partFloats = rule<{ readonly name: string; readonly others: readonly string[] }>({
  name: "part-floats",
  severity: "error",
  message: (a) =>
    a.others.length === 0
      ? `${a.name} is joined to nothing`
      : `${a.name} and ${a.others.join(", ")} are joined to each other but not to the rest`,
  help: (a) => `add a joint with ${a.name} in it; if it only stands there, one with \`loose\``,
  explain: `Every part has to hang together with the rest through joints, else it falls off when the piece is lifted.`,
  wrong: stepExample(["to: [left-leg, right-leg]", "to: left-leg"]),
  right: stepExample(),
  basis: "the language",
});
