import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const knob = (screw: string): string =>
  stepExample(
    ["stock:", `hardware:\n  grip: { kind: knob, screw: ${screw} }\nstock:`],
    ["joints:", "fittings:\n  - { fit: grip, to: right-leg, face: right }\njoints:"],
  );

export const knobScrewDoesNotFit = rule<{
  readonly item: string;
  readonly part: string;
  readonly screw: string;
  readonly wood: string;
  readonly short: boolean;
  readonly low: string;
  readonly high: string;
}>({
  name: "knob-screw-does-not-fit",
  severity: "error",
  message: (a) =>
    a.short
      ? `the screw of the ${a.item} on ${a.part} is ${a.screw} long and passes ${a.wood} of wood: it does not hold the ${a.item}`
      : `the screw of the ${a.item} on ${a.part} is ${a.screw} long and passes ${a.wood} of wood: it comes to its end before the ${a.item} is tight`,
  label: (a) => (a.short ? "its screw is too short" : "its screw is too long"),
  help: (a) => `give it screws of ${a.low} to ${a.high} (screw: …)`,
  explain: `The screw of a knob or pull comes from behind, through the door or front and whatever else it is fixed through. It has to reach far enough
into the thread to hold, and not so far that it touches the end of the thread before the wood is held.`,
  wrong: knob("1"),
  right: knob("1 7/8"),
  basis: "arithmetic; depth of threads: common practice, no source",
});
