/** Fills pages with atoms. */
import type { Item } from "../document.ts";
import { type Frame, SPACE } from "../style.ts";
import type { Wrap } from "./atom.ts";
import { type Columns, holdsFirst, inColumns } from "./columns.ts";
import { higherOn } from "./higher.ts";
import { madeRoom } from "./make-room.ts";
import { blank, copyOf, type FlowAtom, nest, put, type Sheet } from "./sheet.ts";

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
  /** What follows the atoms in columns. */
  readonly columns?: Columns;
}

export interface Filled {
  readonly kind: string;
  readonly of: readonly string[];
  readonly items: readonly Item[];
  /** Sections that begin on this page. */
  readonly begins: readonly string[];
}

/**
 * The pages that the sections take, in order; `frame` is the area of each page that may be filled. Where little would be left
 * over for the last page, the sections stand closer, and those after the last columns are set closer.
 */
export function flow(sections: readonly Section[], frame: Frame): Filled[] {
  const sheets = filled(sections, frame, SPACE.section, LEAST_START);
  const last = sheets[sheets.length - 1];
  const little = last !== undefined && last.y - frame.y < frame.height * LEFT_OVER;
  const close = little ? filled(atEndCloser(sections), frame, SPACE.close, LEAST_START_CLOSE) : sheets;
  return (close.length < sheets.length ? close : sheets).map((sheet) => ({
    ...{ kind: sheet.kind, of: sheet.of, begins: sheet.begins },
    items: nest(higherOn(sheet, frame)),
  }));
}

/** Less than this share of the last page is not worth a page. */
const LEFT_OVER = 0.65;

const atEndCloser = (sections: readonly Section[]): readonly Section[] => {
  const last = sections.findLastIndex(({ columns }) => columns !== undefined);
  return sections.map((section, i) => (i >= last ? { ...section, atoms: section.atoms.map(closer) } : section));
};

function filled(sections: readonly Section[], frame: Frame, between: number, least: number): Sheet[] {
  let sheets: Sheet[] = [];
  const before: (readonly Sheet[])[] = [];
  for (const [i, section] of sections.entries()) {
    before.push(sheets.map(copyOf));
    const further = sheets.map(copyOf);
    add(section, further, frame, between, least);
    sheets = (further.length > sheets.length && drawnIn(sections, i, before, frame)) || further;
  }
  return sheets;
}

/** So many sections before one are set closer for it; one that goes on over the page then begins where so much of it is free. */
const BACK = 3;
const LEAST_START_FOR = 0.1;

/** The sections before one set closer, as few of them as it takes, that it goes in whole on the page of the last; null where it does not. */
function drawnIn(
  sections: readonly Section[],
  until: number,
  before: readonly (readonly Sheet[])[],
  frame: Frame,
): Sheet[] | null {
  const fits = ({ columns, start }: Section): boolean => columns === undefined && start === "fits";
  const most = before[until]?.length ?? 0;
  for (let from = until - 1; from >= Math.max(0, until - BACK); from--) {
    const some = sections.slice(from, until + 1);
    if (!some.every(fits)) return null;
    const sheets = (before[from] ?? []).map(copyOf);
    for (const section of some)
      add({ ...section, atoms: section.atoms.map(closer) }, sheets, frame, SPACE.close, LEAST_START_FOR);
    if (sheets.length <= most) return sheets;
  }
  return null;
}

/** Puts a section below what is placed, or on pages of its own. */
function add(section: Section, sheets: Sheet[], frame: Frame, between: number, least: number): void {
  const last = sheets[sheets.length - 1];
  const joined = last !== undefined && joins(section, last, frame, between, least);
  if (!joined) sheets.push(blank(section.kind, frame.y));
  else last.y += between;
  const set = (atoms: readonly FlowAtom[], up: number, shared = false): Sheet[] => {
    const own = sheets.map(copyOf);
    const foot = own.at(-1);
    if (foot) foot.y -= up;
    setAtoms(section, atoms, own, frame, shared);
    return own;
  };
  const usual = set(section.atoms, 0);
  const foot = usual.at(-1);
  const wasted = usual.length > sheets.length && foot !== undefined && foot.y - frame.y < frame.height * FEW_ROWS;
  const tight = section.atoms.map(closer);
  const up = joined ? Math.max(0, between - SPACE.close) : 0;
  const spilt = spills(usual, sheets.length, frame);
  const better = (each: readonly Sheet[]): boolean =>
    each.length < usual.length || (spilt && !spills(each, sheets.length, frame));
  const goesOver = usual.length > sheets.length;
  const lower = goesOver && section.atoms.some((atom) => atom.lower) ? set(section.atoms, 0, true) : usual;
  const found = wasted || spilt ? [set(tight, 0), set(tight, up)].find(better) : undefined;
  sheets.splice(0, sheets.length, ...(lower.length < usual.length ? lower : (found ?? usual)));
  if (section.columns !== undefined) inColumns(section.columns, section.kind, sheets, frame);
}

/** What fills less of a section's last page than this is drawn in to the page before, where closer rows do it. */
const FEW_ROWS = 0.25;

/** A table of which less than this goes over to another page, in points with its head, is drawn in too. */
const FEW_OF_TABLE = 84;

/** Whether a table leaves little on a page from the `from`th on. */
const spills = (sheets: readonly Sheet[], from: number, frame: Frame): boolean =>
  sheets.some(({ placed }, i) => {
    const table = placed[0]?.atom.within.find(({ head }) => head !== undefined);
    if (i < from || table === undefined) return false;
    const own = placed.filter(({ atom }) => atom.within.includes(table));
    const begun = sheets[i - 1]?.placed.some(({ atom }) => atom.within.includes(table)) === true;
    return begun && Math.max(...own.map(({ atom, y }) => y + atom.height)) < frame.y + FEW_OF_TABLE;
  });

const closer = (atom: FlowAtom): FlowAtom => {
  const { height, paint, above } = { ...atom, ...atom.closer };
  return { ...atom, height, paint, above };
};

/** `shared`: what can be lower makes room for what comes after it. */
function setAtoms(
  { name, kind }: Section,
  atoms: readonly FlowAtom[],
  sheets: Sheet[],
  frame: Frame,
  shared: boolean,
): void {
  const begun = new Set<Wrap>();
  for (const [i, clump] of clumps(atoms).entries()) {
    const last = sheets.at(-1);
    const room = shared && last ? madeRoom(last, clump, frame) : null;
    if (room) sheets.splice(-1, 1, room.sheet);
    const first = place(room?.clump ?? clump, kind, sheets, begun, frame);
    if (i === 0) first?.begins.push(name);
  }
}

/** A section that goes on over the page begins only where so much of the page is free; where sections stand closer, so much. */
const LEAST_START = 0.2;
const LEAST_START_CLOSE = 0.15;
/** So short a section begins so only where as much is free. */
const SHORT = 0.5;
const LEAST_START_SHORT = 0.3;

function joins(section: Section, sheet: Sheet, frame: Frame, between: number, least: number): boolean {
  const { atoms, columns, start } = section;
  const whole = atoms.reduce((sum, atom) => sum + atom.above + atom.height, 0);
  const free = frame.y + frame.height - sheet.y - between;
  if (start !== "fits") return false;
  if (columns !== undefined && whole <= free) return holdsFirst(columns, free - whole - columns.between / 2);
  const [first = []] = clumps(atoms);
  const fits = heightOf(first) <= free || lowered(first, free) !== null;
  // What takes up little of a page is not parted for so little of another, but where a page is saved by that.
  const enough = least === LEAST_START && whole < frame.height * SHORT ? LEAST_START_SHORT : least;
  return whole <= free || (free >= frame.height * enough && fits);
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

const heightOf = (clump: readonly FlowAtom[]): number => clump.reduce((sum, atom) => sum + atom.above + atom.height, 0);

/** Nothing is drawn in less than this share of its usual height. */
const LOWEST = 0.66;

/** A clump that is too high for the room, with what can be lower so low that it goes in; null where it goes in as it is, or not at all. */
function lowered(clump: readonly FlowAtom[], room: number): readonly FlowAtom[] | null {
  const over = heightOf(clump) - room;
  const i = clump.findIndex(({ lower }) => lower !== undefined);
  const atom = clump[i];
  if (over <= 0 || !atom || atom.height - over < LOWEST * atom.height) return null;
  const low = atom.lower?.(atom.height - over);
  return low && low.height <= atom.height - over ? clump.with(i, low) : null;
}

/**
 * Puts a clump below what is placed, on a new page where it does not fit, and over several pages where it fits on none.
 * Gives the page on which it begins.
 */
function place(
  usual: readonly FlowAtom[],
  kind: string,
  sheets: Sheet[],
  begun: Set<Wrap>,
  frame: Frame,
): Sheet | undefined {
  const bottom = frame.y + frame.height + 1e-6;
  let first: Sheet | undefined;
  const last = sheets[sheets.length - 1];
  const clump = (last && last.placed.length > 0 && lowered(usual, bottom - last.y)) || usual;
  let needed = heightOf(clump);
  for (const atom of clump) {
    let sheet = sheets[sheets.length - 1] ?? blank(kind, frame.y);
    const top = sheet.placed.length === 0;
    const fitsNowhere = needed > frame.height;
    if (!top && sheet.y + (fitsNowhere ? atom.above + atom.height : needed) > bottom) {
      sheet = blank(kind, frame.y);
      sheets.push(sheet);
      for (const [depth, wrap] of atom.within.entries())
        if (wrap.head !== undefined && begun.has(wrap))
          put(sheet, { ...wrap.head, within: atom.within.slice(0, depth + 1) }, frame.x, 0);
    }
    first ??= sheet;
    put(sheet, atom, frame.x, sheet.placed.length === 0 ? 0 : atom.above);
    for (const wrap of atom.within) begun.add(wrap);
    needed -= atom.above + atom.height;
  }
  return first;
}
