import type { Finding } from "../../../findings/finding.ts";
import { countNotWhole } from "../../../findings/rules/count-not-whole.ts";
import { likeCircle } from "../../../findings/rules/like-circle.ts";
import { likeOfGroup } from "../../../findings/rules/like-of-group.ts";
import { likeOfMirror } from "../../../findings/rules/like-of-mirror.ts";
import { mirrorWithoutDirection } from "../../../findings/rules/mirror-without-direction.ts";
import type { Draft, Formula, NodeDraft, PartDraft, Reference } from "../../../parse/draft.ts";
import { type Rational, toNumber } from "../../../units/rational.ts";
import { indexOf } from "../space.ts";
import type { Entry } from "./entry.ts";
import { fillFrom } from "./like.ts";
import { matchPath, reportMatch } from "./match.ts";

export interface Expansion {
  readonly entries: readonly Entry[];
  /** Paths of the groups, mirrored ones included, outermost first. */
  readonly groups: readonly string[];
  /** Those of them that the names of groups around them do not mean. */
  readonly apart: ReadonlySet<string>;
  /** Paths of parts that could not be opened; the maker has been told, and what names them needs no telling. */
  readonly failed: readonly (readonly string[])[];
}

const MOST_COPIES = 1000;

/** Opens the tree of the piece into single parts. `count` evaluates a number of copies, null when it has been reported. */
export function expand(
  draft: Draft,
  count: (formula: Formula) => Rational | null,
  report: (finding: Finding) => void,
): Expansion {
  const nodes = flatten(draft.piece);
  const paths = nodes.map((node) => node.path);
  const groups: string[] = [];
  const apart = new Set<string>();
  const failed: (readonly string[])[] = [];
  const filled = new Map<PartDraft, PartDraft | null>();

  const find = (reference: Reference): NodeDraft | null => {
    const matches = matchPath(paths, reference);
    if (matches.length === 1) return nodes[matches[0] as number] as NodeDraft;
    reportMatch(
      reference,
      matches.map((i) => paths[i] as readonly string[]),
      paths,
      report,
    );
    return null;
  };

  const fill = (part: PartDraft, seen: readonly PartDraft[]): PartDraft | null => {
    const known = filled.get(part);
    if (known !== undefined) return known;
    if (seen.includes(part)) {
      report(likeCircle(part.at, { names: [...seen.slice(seen.indexOf(part)), part].map((p) => p.path.join(".")) }));
      return null;
    }
    const result = part.like ? fillLike(part, part.like, [...seen, part]) : part;
    filled.set(part, result);
    return result;
  };
  const fillLike = (part: PartDraft, like: Reference, seen: readonly PartDraft[]): PartDraft | null => {
    const model = find(like);
    if (!model) return null;
    if (model.kind === "group") {
      report(likeOfGroup(like.at, { name: like.path.join(".") }));
      return null;
    }
    if (model.mirrorOf) {
      report(likeOfMirror(like.at, { name: like.path.join("."), original: model.mirrorOf.path.join(".") }));
      return null;
    }
    const whole = fill(model, seen);
    return whole && fillFrom(whole, part);
  };

  /** Entries of a node, under another path when it is being mirrored. */
  const open = (node: NodeDraft, seen: readonly NodeDraft[]): readonly Entry[] => {
    if (node.kind === "group") {
      groups.push(node.path.join("."));
      if (node.apart) apart.add(node.path.join("."));
      return node.children.flatMap((child) => noted(child, seen));
    }
    if (node.mirrorOf) return mirrored(node, node.mirrorOf, seen);
    const part = fill(node, []);
    if (!part) return [];
    if (!part.repeat)
      return [{ id: part.path.join("."), path: part.path, at: node.at, draft: part, copy: null, mirror: null }];
    const total = copies(part.repeat.count);
    return Array.from({ length: total ?? 0 }, (_, i) => {
      const path = [...part.path, String(i + 1)];
      return {
        id: path.join("."),
        path,
        at: node.at,
        draft: part,
        copy: { number: i + 1, of: total ?? 0 },
        mirror: null,
      };
    });
  };

  const copies = (formula: Formula): number | null => {
    const value = count(formula);
    if (value === null) return null;
    if (value.d !== 1n || value.n < 1n || value.n > BigInt(MOST_COPIES)) {
      report(countNotWhole(formula.at, { value: toNumber(value), most: MOST_COPIES }));
      return null;
    }
    return Number(value.n);
  };

  const mirrored = (node: PartDraft, of: Reference, seen: readonly NodeDraft[]): readonly Entry[] => {
    if (!node.about) {
      report(mirrorWithoutDirection(node.at, {}));
      return [];
    }
    const model = find(of);
    if (!model) return [];
    if (seen.includes(model)) {
      report(likeCircle(node.at, { names: [...seen, model].map((n) => n.path.join(".")) }));
      return [];
    }
    const mark = groups.length;
    const originals = open(model, [...seen, model]);
    // Groups inside the model were noted under its own name: here they belong to the reflection.
    for (const path of groups.splice(mark)) {
      const renamed = [...node.path, ...path.split(".").slice(model.path.length)].join(".");
      groups.push(renamed);
      if (apart.has(path)) apart.add(renamed);
    }
    const axis = indexOf(node.about.value);
    return originals.map((original) => {
      const path = [...node.path, ...original.path.slice(model.path.length)];
      const { called: _, ...draft } = original.draft;
      return {
        id: path.join("."),
        path,
        at: node.at,
        draft: node.called ? { ...draft, called: node.called } : draft,
        copy: original.copy,
        mirror: { of: original.id, axis, at: node.at },
      };
    });
  };

  const noted = (node: NodeDraft, seen: readonly NodeDraft[]): readonly Entry[] => {
    const entries = open(node, seen);
    if (node.kind === "part" && entries.length === 0) failed.push(node.path);
    return entries;
  };
  const entries = draft.piece.flatMap((node) => noted(node, []));
  return { entries, groups, apart, failed };
}

export const flatten = (nodes: readonly NodeDraft[]): readonly NodeDraft[] =>
  nodes.flatMap((node) => (node.kind === "group" ? [node, ...flatten(node.children)] : [node]));
