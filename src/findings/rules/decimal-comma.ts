import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const decimalComma = rule<{ readonly text: string }>({
  name: "decimal-comma",
  severity: "error",
  message: (a) => `a comma in the number ${shorten(a.text)}`,
  label: () => "decimals take a point",
  help: (a) => {
    const point = shorten(a.text.replaceAll(/(\d),(?=\d)/g, "$1."));
    const thousands = /^\d{1,3}(?:,\d{3})+$/.test(a.text)
      ? `; thousands take no sign: \`${a.text.replaceAll(",", "")}\``
      : "";
    return `write \`${point}\`${thousands}`;
  },
  explain:
    "Decimals are written with a point, `3.5 mm`, since a comma parts the entries of a list. Thousands are written without any sign.",
  wrong: stepExample(["depth: 3 1/2", "depth: 3,5"]),
  right: stepExample(),
  basis: "the language",
});
