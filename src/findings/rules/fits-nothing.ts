import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const WORDS = {
  turned: ["which does not stand square to the room", "fix it to a part that stands square to the room"],
  screws: ["because its screws do not reach through it into the wood", "give it longer screws (screw: …)"],
  against: ["because nothing says what it works against", "name the door or lid that it works on: against: NAME"],
  facing: [
    "because its face does not look along what it works against",
    "put it on another face (face: …), or on a part beside the door or lid",
  ],
  wheel: ["because its wheel and plate are higher than it is", "give its true height (high: …)"],
} as const;

export const fitsNothing = rule<{
  readonly item: string;
  readonly part: string;
  readonly because: keyof typeof WORDS;
}>({
  name: "fits-nothing",
  severity: "error",
  message: (a) => `a ${a.item} cannot be fixed to ${a.part}, ${WORDS[a.because][0]}`,
  label: () => "does not fit there",
  help: (a) => WORDS[a.because][1],
  explain: `Hardware is set out from the edges of the part that it is fixed to, along the three directions of the room.`,
  wrong: stepExample(
    ["right: long }", "right: long, turn: { about: deep, by: 1 deg } }"],
    ["joints:", "fittings:\n  - { fit: knob, to: right-leg, face: front }\njoints:"],
  ),
  right: stepExample(["joints:", "fittings:\n  - { fit: bumper, to: right-leg, face: front }\njoints:"]),
  basis: "the language",
});
