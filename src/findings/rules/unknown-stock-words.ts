import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { orList } from "../suggest.ts";

export const unknownStockWords = rule<{ readonly text: string; readonly words: readonly string[] }>({
  name: "unknown-stock-words",
  severity: "error",
  message: (a) =>
    a.words.length === 0
      ? `the catalogue has nothing called \`${a.text}\``
      : `the catalogue does not know ${orList(a.words)} in \`${a.text}\``,
  label: () => "how thick is it?",
  why: () => "every size is worked out from what the stock measures, so a guess would run through the whole plan",
  help: () => "add what yours measures, such as `measures: 3/4`",
  explain:
    "`sold as` is looked up in a catalogue: lumber by its nominal size (`2x4`), hardwood by quarters of an inch (`4/4`) or its rough thickness (`26 mm rough`), panels by name and thickness (`3/4 birch plywood`, `18 mm MDF`). Any other text is welcome, but then the plan needs `measures:`, and `sold in:` or `sheet:` to lay the parts out.",
  wrong: stepExample(["sold as: 2x4", "sold as: roof batten"]),
  right: stepExample(["sold as: 2x4", "sold as: roof batten, measures: { thick: 1 1/2, wide: 3 1/2 }"]),
  basis: "the language",
});
