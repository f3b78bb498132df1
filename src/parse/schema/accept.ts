/** What the maker has, and what the maker has thought about. */
import type { AllowDraft, ToolsDraft } from "../draft.ts";
import { list, made } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, text } from "../kinds/simple.ts";

const bits = list(formula, "a list of sizes");

const tools = settings(
  "`tools owned`",
  {
    "mortise bits": may(bits, "The widths of mortise bits and chisels: [1/4, 3/8, 1/2].", "mortise chisels", "chisels"),
    "router bits": may(bits, "The diameters of straight router bits: [1/4, 1/2, 23/32]."),
  },
  ["drill bits", "drivers", "longest clamp", "clamps", "saws"],
);

/** What the plan may ask for. */
export const toolsOwned: Kind<ToolsDraft> = made(
  tools,
  ({ said }): ToolsDraft => ({
    ...(said["mortise bits"] && { mortiseBits: said["mortise bits"].value }),
    ...(said["router bits"] && { routerBits: said["router bits"].value }),
  }),
);

const accepted = settings("an accepted finding", {
  finding: need(text(60), "The name of the finding: shelf-sags."),
  of: may(text(100), "The part or stock that it is about; without it, all that it is about."),
  because: need(text(500), "The reason, which is printed among the checks."),
});

/** Findings that the maker accepts. */
export const allow: Kind<readonly AllowDraft[]> = list(
  made(
    accepted,
    ({ said }): AllowDraft => ({
      at: said.finding.at,
      finding: said.finding.value,
      ...(said.of && { of: said.of }),
      because: said.because.value,
    }),
  ),
  "a list of findings, each beginning with a dash",
);
