// Every finding as Markdown, from the catalogue: what it is about, and a piece of a plan that gives it and of one that does not.
const SEVERITIES = {
  error: "No plan is written while there is one.",
  warning: "The plan is written; look at it again.",
  advice: "Good to know.",
};

/** @param excerpt the lines of a source that differ from another, as `explain` shows them */
export function findings(catalogue, excerpt) {
  const yaml = (source, other) => ["```yaml", ...excerpt(source, other).map(({ text }) => shown(text)), "```"];
  const text = [
    "# What can be found in a plan",
    "",
    "`boardwright explain` and a name print the same in the terminal. This page is generated from the program.",
  ];
  for (const [severity, meaning] of Object.entries(SEVERITIES)) {
    const rules = catalogue.filter((rule) => rule.severity === severity);
    if (rules.length === 0) continue;
    text.push("", `## ${severity[0].toUpperCase()}${severity.slice(1)}`, "", meaning);
    for (const { name, explain, wrong, right, basis } of rules)
      text.push(
        ...["", `### ${name}`, "", explain, "", `Where it comes from: ${basis}.`, "", "This gives it:", ""],
        ...[...yaml(wrong, right), "", "This does not:", "", ...yaml(right, wrong)],
      );
  }
  return `${text.join("\n")}\n`;
}

/** Characters that cannot be seen, or would not be kept, are written out. */
const shown = (text) =>
  text.replace(/[\p{Cc}\p{Cf}\u{fffd}]/gu, (sign) =>
    sign === "\t" ? "→" : `\\u{${sign.codePointAt(0).toString(16)}}`,
  );
