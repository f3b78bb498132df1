// What a setting may be, in words, from its JSON Schema.

/** GitHub's address for a heading. */
export const address = (title) =>
  `#${title
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, "")
    .replaceAll(" ", "-")}`;
/** What the schema calls the words for methods of joining; they have a table of their own. */
const KIND_OF_JOINT = "a kind of joint";
const link = (words, title) => `[${words}](${address(title)})`;

/** The one word that a piece of hardware has for `kind`. */
const kindOf = ({ properties }) =>
  properties?.kind?.const ?? (properties?.kind?.enum?.length === 1 ? properties.kind.enum[0] : undefined);

export function valueWords(schema, context) {
  if (schema.title === KIND_OF_JOINT) return link(schema.title, "Kinds of joint");
  if (schema.title) return schema.title;
  if (schema.$ref === "#/$defs/entry") return link("a part", context.part);
  if (schema.$ref === "#/$defs/opening") return link("an opening", "An opening");
  if (schema.$ref) return "a measure";
  if (schema.anyOf) return alternatives(schema.anyOf, context);
  if (schema.enum?.includes(true)) return "`yes` or `no`";
  if (schema.enum) return schema.enum.map((word) => `\`${word}\``).join(", ");
  if ("const" in schema) return `\`${schema.const}\``;
  if (schema.type === "array" && !schema.items) return "a list";
  if (schema.type === "array") return `a list: ${valueWords(schema.items, context)}`;
  const kind = kindOf(schema);
  if (kind) return link(`a ${kind}`, context.sectionFor(schema, `Hardware: ${kind}`, context.name, context.above));
  if (schema.type === "object" && schema.properties)
    return link("settings", context.sectionFor(schema, `In ${context.name}`, context.name, context.above));
  if (schema.type === "object" && !schema.additionalProperties) return "settings";
  if (schema.type === "object") return `names, each with ${valueWords(schema.additionalProperties, context)}`;
  const types = [schema.type].flat();
  if (types.includes("boolean")) return "`yes` or `no`";
  if (types.includes("string")) return "a text";
  return types.includes("number") || types.includes("integer") ? "a number" : "anything";
}

function alternatives(schemas, context) {
  const single = schemas.filter((each) => each.type !== "array").map((each) => valueWords(each, context));
  const lists = schemas.filter((each) => each.type === "array");
  const words = [...new Set(single)].join(" or ");
  const ofSuch = lists.some((list) => single.includes(valueWords(list.items, context)));
  return ofSuch
    ? `${words}, or a list of such`
    : [words, ...lists.map((list) => valueWords(list, context))].join(" or ");
}
