/** "`a`", "`a` and `b`", "`a`, `b` and 3 more": names in a sentence, never more than three. */
export function nameSome(names: readonly string[]): string {
  const quoted = names.slice(0, names.length > 3 ? 2 : 3).map((name) => `\`${name}\``);
  const rest = names.length - quoted.length;
  const all = rest === 0 ? quoted : [...quoted, `${rest} more`];
  const last = all.at(-1) ?? "";
  return all.length < 2 ? last : `${all.slice(0, -1).join(", ")} and ${last}`;
}

/** What two parts of assemblies have in common: "both are made by `cabinet`". */
export function bothOf(first: string, second: string): string {
  const others = second.split(".");
  const path = first.split(".").slice(0, -1);
  const differs = path.findIndex((name, i) => others[i] !== name);
  const common = (differs < 0 ? path : path.slice(0, differs)).join(".");
  return common === "" ? "both are made from settings" : `both are made by the settings of \`${common}\``;
}
