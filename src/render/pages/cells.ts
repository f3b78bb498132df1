/** Small drawings with their words above, several in a row. */
import type { Item } from "../document.ts";
import type { Drawing } from "../drawing/index.ts";
import { moved as placed } from "../shapes.ts";
import { TYPE } from "../style.ts";
import { type Atom, block, paragraph } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import { paintStack, stack } from "../typeset/stack.ts";

export interface Cell {
  readonly width: number;
  readonly height: number;
  /** With its top left corner at (x, y). */
  readonly paint: (x: number, y: number) => readonly Item[];
}

const GAP = 18;
const BELOW = 4;
/** Words are set no narrower, where there is room: four, three or two in a row. */
const WORDS = { four: 112, three: 156, two: 236 } as const;

/** `words` below the head, in small type. */
export function cell(
  head: string,
  words: Rich,
  drawing: Pick<Drawing, "items" | "alt"> & { readonly width: number; readonly height: number },
  most: number,
  inRow: keyof typeof WORDS = "three",
): Cell {
  const asked = Math.max(drawing.width, WORDS[inRow]);
  const width = Math.min(most, asked + 1);
  const text = stack([
    ...paragraph(head, TYPE.strong, width, { keep: true }),
    ...(words === "" ? [] : paragraph(words, TYPE.caption, width)),
  ]);
  return {
    width,
    height: text.height + BELOW + drawing.height,
    paint: (x, y) => [
      ...paintStack(text, x, y),
      {
        kind: "group",
        role: "figure",
        alt: drawing.alt,
        items: placed(drawing.items, x, y + text.height + BELOW),
      },
    ],
  };
}

/** As many in a row as there is room for, in their order. */
export function rows(cells: readonly Cell[], width: number, within: Atom["within"] = []): readonly Atom[] {
  const all: Cell[][] = [];
  let used = 0;
  for (const each of cells) {
    const last = all.at(-1);
    if (last && used + GAP + each.width <= width) {
      last.push(each);
      used += GAP + each.width;
    } else {
      all.push([each]);
      used = each.width;
    }
  }
  return all.map((row) =>
    block(
      Math.max(...row.map(({ height }) => height)),
      (x, y) => {
        let left = x;
        const items = row.flatMap((each): readonly Item[] => {
          const painted = each.paint(left, y);
          left += each.width + GAP;
          return painted;
        });
        return within.length === 0 ? items : [{ kind: "group", role: "list item", items }];
      },
      { above: 12, within },
    ),
  );
}
