import type { MapNode, Node, TextNode } from "../yaml/nodes.ts";

const WIDTH = 110;

/** A source tree as YAML, for people to read and for the program to read again: short things in braces, the rest indented. */
export function printTree(node: Node): string {
  return node.kind === "map" ? block(node, 0) : `${inline(node)}\n`;
}

function block(node: MapNode, depth: number): string {
  const indent = "  ".repeat(depth);
  return node.entries
    .map(({ key, value }) => {
      const name = `${indent}${plain(key)}:`;
      const flat = inline(value);
      if (value.kind === "text" || value.kind === "empty") return `${name} ${flat}\n`;
      const always = depth === 0 || (value.kind === "map" && value.entries.some((each) => each.value.kind === "map"));
      if (!always && name.length + flat.length < WIDTH) return `${name} ${flat}\n`;
      if (value.kind === "list") return `${name}\n${value.items.map((item) => listItem(item, depth + 1)).join("")}`;
      return value.entries.length === 0 ? `${name} {}\n` : `${name}\n${block(value, depth + 1)}`;
    })
    .join("");
}

function listItem(item: Node, depth: number): string {
  const indent = "  ".repeat(depth);
  const flat = inline(item);
  if (item.kind !== "map" || item.entries.length === 0 || indent.length + flat.length < WIDTH)
    return `${indent}- ${flat}\n`;
  return `${indent}- ${block(item, depth + 1).trimStart()}`;
}

function inline(node: Node): string {
  if (node.kind === "text") return plain(node);
  if (node.kind === "empty") return "";
  if (node.kind === "list") return `[${node.items.map(inline).join(", ")}]`;
  if (node.entries.length === 0) return "{}";
  return `{ ${node.entries.map(({ key, value }) => `${plain(key)}: ${inline(value)}`).join(", ")} }`;
}

/** Quoted wherever YAML would read something else into it. */
function plain({ text, quoted }: TextNode): string {
  const safe = /^[\p{L}\p{N}_.(][\p{L}\p{N} _./()+*-]*$/u.test(text) && !/\s$/.test(text);
  if (safe && !(quoted && /^[\d.]/.test(text))) return text;
  return JSON.stringify(text).replaceAll("\\/", "/");
}
