// Every finding as Markdown, from the catalogue: what it is about, and a piece of a plan that gives it and of one that does not.
const SEVERITIES = {
  error: "No plan is written while there is one.",
  warning: "The plan is written; look at it again.",
  advice: "Good to know.",
};

/** @param examplesOf the lines that `explain` shows */
export function findings(catalogue, examplesOf) {
  const example = (title, lines) =>
    lines.length === 0 ? [] : ["", title, "", "```yaml", ...lines.map(({ text }) => shown(text)), "```"];
  const text = [
    "# What can be found in a plan",
    "",
    "`boardwright explain` and a name print the same in the terminal. This page is generated from the program.",
  ];
  for (const [severity, meaning] of Object.entries(SEVERITIES)) {
    const rules = catalogue.filter((rule) => rule.severity === severity);
    if (rules.length === 0) continue;
    text.push("", `## ${severity[0].toUpperCase()}${severity.slice(1)}`, "", meaning);
    for (const rule of rules) {
      const { wrong, right } = examplesOf(rule);
      text.push("", `### ${rule.name}`, "", rule.explain, "", `Where it comes from: ${rule.basis}.`);
      text.push(...example("This gives it:", wrong), ...example("This does not:", right));
    }
  }
  return `${text.join("\n")}\n`;
}

/** Characters that cannot be seen, or would not be kept, are written out. */
const shown = (text) =>
  text.replace(/[\p{Cc}\p{Cf}\u{fffd}]/gu, (sign) =>
    sign === "\t" ? "→" : `\\u{${sign.codePointAt(0).toString(16)}}`,
  );
