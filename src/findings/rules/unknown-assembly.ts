import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownAssembly = rule<{
  readonly kind: string;
  readonly known: readonly string[];
  readonly near: readonly string[];
}>({
  name: "unknown-assembly",
  severity: "error",
  message: (a) => `there is no kind of assembly called \`${shorten(a.kind)}\``,
  label: () => "no such kind",
  help: (a) => `write ${orList(a.near.length > 0 ? a.near : a.known)}`,
  explain: `An entry of \`piece\` with \`kind:\` is an assembly: something that is opened into its parts. The kinds are listed in the reference; others can be defined under \`assemblies\`.`,
  wrong: stepExample(["  right-leg: {", "  shelf: { kind: shelfs, made of: lumber }\n  right-leg: {"]),
  right: stepExample(),
  basis: "the language",
});
