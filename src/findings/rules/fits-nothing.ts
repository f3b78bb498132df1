import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const WORDS = {
  turned: "which does not stand square to the room",
} as const;

export const fitsNothing = rule<{
  readonly item: string;
  readonly part: string;
  readonly because: keyof typeof WORDS;
}>({
  name: "fits-nothing",
  severity: "error",
  message: (a) => `a ${a.item} cannot be fixed to ${a.part}, ${WORDS[a.because]}`,
  label: () => "does not fit there",
  help: () => `fix it to a part that stands square to the room`,
  explain: `Hardware is set out from the edges of the part that it is fixed to, along the three directions of the room.`,
  wrong: stepExample(
    ["right: long }", "right: long, turn: { about: deep, by: 1 deg } }"],
    ["joints:", "fittings:\n  - { fit: knob, to: right-leg, face: front }\njoints:"],
  ),
  right: stepExample(["joints:", "fittings:\n  - { fit: knob, to: right-leg, face: front }\njoints:"]),
  basis: "the language",
});
