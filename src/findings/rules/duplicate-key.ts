import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const duplicateKey = rule<{ readonly key: string }>({
  name: "duplicate-key",
  severity: "error",
  message: (a) => `\`${a.key}\` is said twice`,
  label: () => "said again",
  help: (a) =>
    a.key === "back"
      ? "keep one of them; `back` of a case is its back panel, and how far it reaches back is said with `deep`"
      : "keep one of them, or give one another name",
  explain:
    "A setting or a name may stand only once at its level, since the second would silently replace the first. `side panel` and `side-panel` are the same name.",
  wrong: stepExample(["units: inch", "units: inch\nunits: mm"]),
  right: stepExample(),
  basis: "the language",
});
