import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const sizeOutOfRange = rule<{
  readonly name: string;
  readonly value: string;
  readonly from: string | null;
  readonly to: string | null;
}>({
  name: "size-out-of-range",
  severity: "warning",
  message: (a) => `${a.name} is ${a.value}, and the plan is meant for ${a.from ?? "anything"} to ${a.to ?? "anything"}`,
  help: () => "keep to the range, or widen it in the plan",
  explain: `The maker has said for which sizes the plan was thought out. Outside that range parts may look odd, sag or not fit what they are for.`,
  wrong: stepExample(["long: 24", "long: { value: 24, from: 30, to: 40 }"]),
  right: stepExample(["long: 24", "long: { value: 24, from: 20, to: 40 }"]),
  basis: "the language",
});
