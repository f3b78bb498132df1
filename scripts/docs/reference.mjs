// The language reference as Markdown, from the JSON Schema of the language: one table for each place that has settings of its own.
import { valueWords } from "./value.mjs";

const LATER = "not in this version";

/** @param preface Markdown that stands before the tables; @param whole the title of the first of them */
export function reference(schema, preface, whole = "The plan") {
  const sections = [];
  /** The title of the section about an object; settings that have the same settings share one. */
  const sectionFor = ({ description: _, ...object }, title, name, above) => {
    const same = JSON.stringify(object);
    const known = sections.find((section) => section.same === same);
    if (known) {
      known.names.add(name);
      return known.title;
    }
    const taken = sections.some((section) => section.title === title);
    sections.push({ title: taken ? `${title}, ${above}` : title, object, same, names: new Set([name]) });
    return sections.at(-1).title;
  };
  sectionFor(schema, whole);
  const entries = (schema.$defs.entry?.anyOf ?? []).map((entry) =>
    entry.additionalProperties === false ? sectionFor(entry, entryTitle(entry)) : undefined,
  );
  for (const each of schema.$defs.opening?.anyOf ?? [])
    if (each.properties) sectionFor(each, each.properties.divider ? "A divider" : "An opening");
  const part = entries.find((title) => title !== undefined);
  // A table may add sections, which come to their turn, and names to sections, which are printed when all tables are done.
  const tables = [];
  for (let i = 0; i < sections.length; i += 1)
    tables.push(table(sections[i].object, { sectionFor, part, above: lower(sections[i].title) }));
  const printed = sections.map(({ title, names }, i) => `## ${title}\n\n${alsoFor(names)}${tables[i]}`);
  return `${preface.trimEnd()}\n\n${printed.join("\n\n")}\n`;
}

/** "A part", "Assembly: case" */
const entryTitle = ({ properties, description }) => {
  const kind = properties.kind?.const;
  return kind === undefined
    ? "A part"
    : kind === "space"
      ? "A space"
      : `${kind[0].toUpperCase()}${kind.slice(1)}: ${lower(description).replace(/\.$/, "")}`;
};

const lower = (title) => title[0].toLowerCase() + title.slice(1);

function alsoFor([, ...others]) {
  return others.length === 0 ? "" : `Also in ${others.map((name) => `\`${name}\``).join(", ")}.\n\n`;
}

function table(object, context) {
  const required = new Set(object.required);
  const names = Object.entries(object.properties);
  const rows = names
    .filter(([, property]) => property.description !== LATER)
    .map(([name, property]) => {
      const also = aliases(name, object.patternProperties ?? {});
      const written = [`\`${name}\``, ...also.map((word) => `\`${word}\``)].join(", ");
      const value = valueWords(property, { ...context, name });
      return `| ${written}${required.has(name) ? " (needed)" : ""} | ${value} | ${cell(property.description ?? "")} |`;
    });
  const later = names.filter(([, property]) => property.description === LATER).map(([name]) => `\`${name}\``);
  const waiting = `Of the language, but not in this version: ${later.join(", ")}.`;
  return [
    "| setting | value | meaning |",
    "| --- | --- | --- |",
    ...rows,
    ...(later.length > 0 ? ["", waiting] : []),
  ].join("\n");
}

/** The other words for a setting: those of the pattern that has its name. Blanks may be hyphens, which is said once. */
function aliases(name, patterns) {
  const words = Object.keys(patterns)
    .map((pattern) =>
      pattern
        .replace(/^\^\(\?:|\)\$$/g, "")
        .replaceAll("[ _-]*", " ")
        .split("|"),
    )
    .find((alternatives) => alternatives.includes(name));
  return (words ?? []).filter((word) => word !== name);
}

const cell = (text) => text.replaceAll("|", "\\|");
