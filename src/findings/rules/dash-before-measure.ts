import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const dashBeforeMeasure = rule<{ readonly text: string }>({
  name: "dash-before-measure",
  severity: "error",
  message: (a) => `the dash before ${shorten(a.text)} begins a list`,
  label: () => "taken as the dash of a list",
  why: () => "A dash and a blank begin an entry of a list; a minus stands close to its number.",
  help: (a) =>
    /^\d/.test(a.text)
      ? `write \`-${shorten(a.text)}\` for a negative measure`
      : "put the list on the lines below, or in [ ]",
  explain:
    "A dash with a blank behind it makes an entry of a list. Negative measures are rarely needed: words of place such as `set back` and `proud` say which way is meant.",
  wrong: stepExample(["left: 0, right: long", "left: [- 1/2], right: long"]),
  right: stepExample(),
  basis: "the language",
});
