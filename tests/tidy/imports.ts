import { posix } from "node:path";
import { child, type SourceFile, syntax, walk } from "./source.ts";

/** What each part of `src` may import besides itself: other parts, and packages. */
export interface Direction {
  readonly parts: readonly string[];
  readonly packages: readonly string[];
}

export interface Import {
  readonly from: string;
  /** A path from the root, or the name of a package. */
  readonly to: string;
  readonly isPackage: boolean;
}

const known = new WeakMap<SourceFile, readonly Import[]>();

/** Every import and re-export of a file; types count. Each file is read once. */
export function importsOf(file: SourceFile): readonly Import[] {
  const imports = known.get(file) ?? readImports(file);
  known.set(file, imports);
  return imports;
}

function readImports(file: SourceFile): readonly Import[] {
  const found: Import[] = [];
  walk(syntax(file), (node) => {
    const target = child(node, "source")?.value;
    if (typeof target !== "string") return;
    const isPackage = !target.startsWith(".");
    const to = isPackage ? packageName(target) : posix.join(posix.dirname(file.path), target);
    found.push({ from: file.path, to, isPackage });
  });
  return found;
}

/** `@a/b/c` is of the package `@a/b`; all of Node's own modules count as one, `node:`. */
const packageName = (target: string): string =>
  target.startsWith("node:") ? "node:" : target.split("/", target.startsWith("@") ? 2 : 1).join("/");

/** The part of `src` that a file belongs to: the first name in the table that its path begins with. */
const partOf = (path: string, table: ReadonlyMap<string, Direction>): string | undefined =>
  [...table.keys()].find((part) => path.startsWith(`src/${part}/`) || path.startsWith(`src/${part}.`));

/** A sentence for each import that the table does not allow. */
export function wrongDirections(files: readonly SourceFile[], table: ReadonlyMap<string, Direction>): string[] {
  return files.flatMap(importsOf).flatMap(({ from, to, isPackage }) => {
    const part = partOf(from, table);
    if (part === undefined) return [`${from} belongs to no part of src in the table`];
    const direction = table.get(part) as Direction;
    if (isPackage) return direction.packages.includes(to) ? [] : [`${from} may not import the package ${to}`];
    const other = partOf(to, table);
    const allowed = other === part || (other !== undefined && direction.parts.includes(other));
    return allowed || direction.packages.includes(to) ? [] : [`${from} may not import ${to}`];
  });
}

/** Each circle of imports, as a path that ends where it began. */
export function cycles(files: readonly SourceFile[]): string[] {
  const next = new Map(files.map((file) => [file.path, importsOf(file).map((i) => i.to)]));
  const [done, found] = [new Set<string>(), [] as string[]];
  const visit = (path: string, above: readonly string[]): void => {
    const start = above.indexOf(path);
    if (start >= 0) found.push([...above.slice(start), path].join(" -> "));
    if (start >= 0 || done.has(path)) return;
    for (const to of next.get(path) ?? []) visit(to, [...above, path]);
    done.add(path);
  };
  for (const path of next.keys()) visit(path, []);
  return found;
}
