import type { Alias, Node as YamlNode } from "yaml";
import type { Finding } from "../../findings/finding.ts";
import type { Span } from "../../findings/span.ts";
import type { Places } from "../text/lines.ts";
import type { Node } from "./nodes.ts";

/** What is known while the tree is built. */
export interface Builder {
  readonly text: string;
  readonly places: Places;
  readonly findings: Finding[];
  /** Anchors met so far, and what each alias meant where it stood. */
  readonly anchors: Map<string, YamlNode>;
  readonly meant: Map<Alias, YamlNode | undefined>;
  /** Nodes being built, from the top down to this one. */
  readonly open: YamlNode[];
  /** Builds what stands inside: the one way down. */
  readonly build: (node: YamlNode | null, at: Span, via: Span | undefined) => Node;
  visited: number;
  full: boolean;
}
