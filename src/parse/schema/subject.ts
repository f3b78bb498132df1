/** What a wish about the order of work, or a note, is about: a part, a kind of work, or both. */
import type { SubjectDraft, Verb } from "../draft.ts";
import type { Kind } from "../kinds/kind.ts";
import { tellWrong } from "../kinds/kind.ts";
import { referenceIn } from "../kinds/places.ts";
import { slice, type Words } from "../yaml/nodes.ts";

/** Longer words first: "glue up" before "glue". */
const VERBS: readonly (readonly [string, Verb])[] = [
  ...(["glue up", "glue"] as const).map((word) => [word, "glue"] as const),
  ...(["cut out", "cut", "saw"] as const).map((word) => [word, "cut"] as const),
  ...(["plane", "mill", "flatten"] as const).map((word) => [word, "plane"] as const),
  ...(["drill", "bore"] as const).map((word) => [word, "drill"] as const),
  ...(["screw on", "put in", "put on", "attach", "hang", "join", "add"] as const).map(
    (word) => [word, "join"] as const,
  ),
  ...(["fit"] as const).map((word) => [word, "fit"] as const),
  ...(["finish", "paint", "oil", "varnish"] as const).map((word) => [word, "finish"] as const),
  ...(["shape"] as const).map((word) => [word, "shape"] as const),
  ...(["band"] as const).map((word) => [word, "band"] as const),
];

const CUTS: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ["mortise", ["mortise"]],
  ["tenon", ["tenon", "cheek", "haunch"]],
  ["dado", ["dado"]],
  ["groove", ["groove"]],
  ["rabbet", ["rabbet"]],
  ["half lap", ["half lap"]],
  ["bridle", ["bridle", "cheek"]],
  ["dovetail", ["tail", "socket", "dovetail housing"]],
  ["mitre", ["mitre"]],
  ["slot", ["slot"]],
  ["notch", ["notch"]],
  ["taper", ["taper"]],
  ["chamfer", ["chamfer"]],
  ["bevel", ["bevel"]],
  ["curve", ["arch", "cut-out"]],
  ["rounded corner", ["rounded corner"]],
  ["round-over", ["round-over"]],
  ["hole", ["hole"]],
]);

/** "mortises", "dados", "notches": what is cut, by its singular. */
function cutsOf(word: string): readonly string[] | undefined {
  const text = word.toLowerCase().trim();
  return [text, text.replace(/s$/, ""), text.replace(/es$/, "")].map((each) => CUTS.get(each)).find(Boolean);
}

const WORDS = "a part, or work on it: legs, mortises, tapers in legs, glue up seat";

export const subject: Kind<SubjectDraft> = {
  words: WORDS,
  json: { type: "string", title: WORDS },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, WORDS);
    const said = node.text.trim();
    const about = (rest: Words | null, work: Partial<SubjectDraft>): SubjectDraft | undefined => {
      if (rest === null) return { at: node.at, said, of: null, ...work };
      const of = referenceIn(rest, where);
      return of && { at: node.at, said, of, ...work };
    };
    const from = (start: number): Words | null => {
      const rest = slice(node, start);
      const gap = /^[\s]*(?:(?:in|of|on|for|the|all)\s+)*/iu.exec(rest.text)?.[0].length ?? 0;
      const words = slice(node, start + gap);
      return words.text.trim() === "" ? null : words;
    };
    const lower = node.text.toLowerCase();
    const verb = VERBS.find(([word]) => lower === word || lower.startsWith(`${word} `));
    if (verb) return about(from(verb[0].length), { verb: verb[1] });
    const [first = "", second] = lower.split(/\s+(?:in|of|on)\s+/u);
    const cuts = cutsOf(first);
    if (cuts) return about(second === undefined ? null : from(first.length), { cuts });
    return about(from(0), {});
  },
};
