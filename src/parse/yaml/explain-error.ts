import type { Document } from "yaml";
import type { Finding } from "../../findings/finding.ts";
import { yamlProblem } from "../../findings/rules/yaml-problem.ts";
import type { Places } from "../text/lines.ts";

export function explainYaml(document: Document.Parsed, _text: string, places: Places): readonly Finding[] {
  return document.errors.slice(0, 1).map((error) => yamlProblem(places(...error.pos), { reason: error.message }));
}
