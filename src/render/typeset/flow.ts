/** Fills pages with atoms. */
import type { Item } from "../document.ts";
import { type Frame, SPACE } from "../style.ts";
import type { Atom, Wrap } from "./atom.ts";

/** A part of the plan with a heading of its own. */
export interface Section {
  /** Name for links: "cut-list". */
  readonly name: string;
  /** As in the contents and the bookmarks. */
  readonly title: string;
  /** `Page.kind` of a page that begins with it. */
  readonly kind: string;
  /** "page": on a page of its own. "fits": below what came before if all of it fits there, or if enough of the page is free. */
  readonly start: "page" | "fits";
  readonly atoms: readonly FlowAtom[];
}

/** `of`: what the atom shows, for `Page.of`. */
export type FlowAtom = Atom & { readonly of?: string };

export interface Filled {
  readonly kind: string;
  readonly of: readonly string[];
  readonly items: readonly Item[];
  /** Sections that begin on this page. */
  readonly begins: readonly string[];
}

export interface Placed {
  readonly atom: Atom;
  readonly y: number;
}

interface Sheet {
  readonly kind: string;
  readonly of: string[];
  readonly begins: string[];
  readonly placed: Placed[];
  /** Lower edge of what is placed. */
  y: number;
}

/** The pages that the sections take, in order; `frame` is the area of each page that may be filled. */
export function flow(sections: readonly Section[], frame: Frame): Filled[] {
  const sheets: Sheet[] = [];
  for (const section of sections) {
    const last = sheets[sheets.length - 1];
    if (last === undefined || !joins(section, last, frame)) sheets.push(blank(section.kind, frame));
    else last.y += SPACE.section;
    const begun = new Set<Wrap>();
    for (const [i, clump] of clumps(section.atoms).entries()) {
      const first = place(clump, section.kind, sheets, begun, frame);
      if (i === 0) first?.begins.push(section.name);
    }
  }
  return sheets.map(({ kind, of, begins, placed }) => ({ kind, of, begins, items: nest(placed, 0, frame.x) }));
}

/** A section that goes on over the page begins only where so much of the page is free. */
const LEAST_START = 0.3;

const blank = (kind: string, frame: Frame): Sheet => ({ kind, of: [], begins: [], placed: [], y: frame.y });

function joins(section: Section, sheet: Sheet, frame: Frame): boolean {
  const whole = section.atoms.reduce((sum, atom) => sum + atom.above + atom.height, 0);
  const free = frame.y + frame.height - sheet.y - SPACE.section;
  return section.start === "fits" && (whole <= free || free >= frame.height * LEAST_START);
}

/** Runs of atoms that keep together. */
function clumps(atoms: readonly FlowAtom[]): FlowAtom[][] {
  const result: FlowAtom[][] = [];
  atoms.forEach((atom, i) => {
    const open = result[result.length - 1];
    if (open !== undefined && atoms[i - 1]?.keep === true) open.push(atom);
    else result.push([atom]);
  });
  return result;
}

/**
 * Puts a clump below what is placed, on a new page where it does not fit, and over several pages where it fits on none.
 * Gives the page on which it begins.
 */
function place(
  clump: readonly FlowAtom[],
  kind: string,
  sheets: Sheet[],
  begun: Set<Wrap>,
  frame: Frame,
): Sheet | undefined {
  const bottom = frame.y + frame.height + 1e-6;
  let first: Sheet | undefined;
  let needed = clump.reduce((sum, atom) => sum + atom.above + atom.height, 0);
  for (const atom of clump) {
    let sheet = sheets[sheets.length - 1] ?? blank(kind, frame);
    const top = sheet.placed.length === 0;
    const fitsNowhere = needed > frame.height;
    if (!top && sheet.y + (fitsNowhere ? atom.above + atom.height : needed) > bottom) {
      sheet = blank(kind, frame);
      sheets.push(sheet);
      for (const [depth, wrap] of atom.within.entries())
        if (wrap.head !== undefined && begun.has(wrap))
          put(sheet, { ...wrap.head, within: atom.within.slice(0, depth + 1) }, 0);
    }
    first ??= sheet;
    put(sheet, atom, sheet.placed.length === 0 ? 0 : atom.above);
    if (atom.of !== undefined && !sheet.of.includes(atom.of)) sheet.of.push(atom.of);
    for (const wrap of atom.within) begun.add(wrap);
    needed -= atom.above + atom.height;
  }
  return first;
}

function put(sheet: Sheet, atom: Atom, above: number): void {
  const y = sheet.y + above;
  sheet.placed.push({ atom, y });
  sheet.y = y + atom.height;
}

/** The items of the atoms, inside a group for each paragraph, list or table that they belong to. */
export function nest(placed: readonly Placed[], depth: number, x: number): Item[] {
  const items: Item[] = [];
  for (let i = 0; i < placed.length; ) {
    const { atom, y } = placed[i] as Placed;
    const wrap = atom.within[depth];
    if (wrap === undefined) {
      items.push(...atom.paint(x, y));
      i++;
      continue;
    }
    let end = i + 1;
    while (placed[end]?.atom.within[depth] === wrap) end++;
    items.push({ kind: "group", role: wrap.role, items: nest(placed.slice(i, end), depth + 1, x) });
    i = end;
  }
  return items;
}
