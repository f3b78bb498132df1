import { parameterMissing } from "../../findings/rules/parameter-missing.ts";
import { type AnyAssembly, assembly } from "../assemblies/assembly.ts";
import { kept } from "../kinds/kept.ts";
import { tell, tellWrong, type Where } from "../kinds/kind.ts";
import { readName } from "../kinds/named.ts";
import { type Key, may, settings } from "../kinds/settings.ts";
import { normaliseName, squash } from "../names.ts";
import { anything, definition } from "../schema/own-assembly.ts";
import type { Entry, MapNode, Node } from "../yaml/nodes.ts";
import { joined } from "./make.ts";

/** The maker's own assemblies, by name. */
export function ownAssemblies(entry: Entry | undefined, where: Where): ReadonlyMap<string, AnyAssembly> {
  const all = new Map<string, AnyAssembly>();
  if (entry === undefined) return all;
  if (entry.value.kind !== "map") {
    tellWrong({ ...where, key: entry.key.text, at: entry.key.at }, entry.value, "settings, one for each assembly");
    return all;
  }
  for (const { key, value } of entry.value.entries) {
    const here: Where = { ...where, key: key.text, at: key.at };
    const name = readName(key, here);
    const read = definition.read(value, here);
    if (name === undefined || read === undefined) continue;
    const { parameters, piece, joints } = read.said;
    if (parameters && parameters.value.kind !== "map")
      tellWrong(here, parameters.value, "settings, one for each parameter");
    const given = parameters?.value.kind === "map" ? parameters.value.entries : [];
    all.set(name, ownAssembly(name, given, piece?.value, joints?.value));
  }
  return all;
}

const isNeeded = (node: Node): boolean => node.kind === "text" && squash(node.text) === "needed";

function ownAssembly(
  name: string,
  parameters: readonly Entry[],
  piece: Node | undefined,
  joints: Node | undefined,
): AnyAssembly {
  const keys: Record<string, Key<Node, false>> = Object.fromEntries(
    parameters.map(({ key }) => [normaliseName(key.text), may(kept(anything), "A parameter of this assembly.")]),
  );
  return assembly({
    kind: name,
    also: [],
    meaning: "An assembly of the plan's own.",
    settings: settings(`\`${name}\``, keys),
    expand(said, site) {
      const values = new Map<string, Node>();
      for (const { key, value } of parameters) {
        const parameter = normaliseName(key.text);
        const given = said[parameter]?.value;
        if (given === undefined && isNeeded(value))
          tell(
            site.where,
            key,
            parameterMissing(
              site.at,
              { assembly: name, parameter: key.text },
              { also: [{ at: key.at, label: "needed here" }] },
            ),
          );
        values.set(parameter, given ?? value);
      }
      const room = { kind: "space", ...site.placed("across"), ...site.placed("deep"), ...site.placed("up") };
      const put = (node: Node): Node => substitute(node, values);
      const body = piece?.kind === "map" ? (put(piece) as MapNode) : undefined;
      const list = joints?.kind === "list" ? (put(joints) as Node & { kind: "list" }) : undefined;
      const entries = Object.fromEntries((body?.entries ?? []).map(({ key, value }) => [key.text, value]));
      return { entries: { room, ...entries }, joints: (list?.items ?? []) as never };
    },
  });
}

/** A value where a text is nothing but a parameter's name; within formulas, its text. What stands in quotes is left alone. */
function substitute(node: Node, values: ReadonlyMap<string, Node>): Node {
  if (node.kind === "map")
    return { ...node, entries: node.entries.map(({ key, value }) => ({ key, value: substitute(value, values) })) };
  if (node.kind === "list") return { ...node, items: node.items.map((item) => substitute(item, values)) };
  if (node.kind !== "text" || node.quoted) return node;
  const whole = values.get(normaliseName(node.text));
  if (whole !== undefined) return whole;
  const pieces = node.text.split(/([\p{L}_][\p{L}\p{M}\p{N}_.-]*)/u);
  if (!pieces.some((piece) => values.get(normaliseName(piece))?.kind === "text")) return node;
  const words = pieces.map((piece) => {
    const value = values.get(normaliseName(piece));
    return value?.kind === "text" ? value : piece;
  });
  return joined(words, node.at);
}
