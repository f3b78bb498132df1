import { oneOrList } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { named } from "../kinds/named.ts";
import { may, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import type { Node } from "../yaml/nodes.ts";

/** Whatever stands there, to be read where it is used. */
export const anything: Kind<Node> = {
  words: "a value",
  json: {},
  read: (node) => (node.kind === "empty" ? undefined : node),
};

/** An assembly of the plan's own. */
export const definition = settings("an assembly of the plan", {
  parameters: may(anything, "What it may be given, each with what is taken when it is not; `needed` where it must be."),
  piece: may(anything, "Its parts, groups and assemblies, in which a parameter's name stands for its value."),
  joints: may(anything, "How they are joined."),
});

export const definitions = named(definition, "assembly");
export const includedNames = oneOrList(text(200));
