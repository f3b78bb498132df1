/** Shelves in a space: fixed, or loose on pins. */

import type { Span } from "../../findings/span.ts";
import { CURE, from, type Settings } from "../expand/make.ts";
import { tellWrong } from "../kinds/kind.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { type Bounds, carrier, type Making, TO_OPENING } from "./making.ts";
import type { Shelves } from "./shelves-in.ts";

/** More shelves than this, or as many as a formula says, are one row. */
const MOST_NAMED = 20;
/** Holes of a ladder above and below a pin: more than a side is high. */
const LADDER = "80";

/** Fixed shelves, and loose ones. */
export function shelve(space: string, said: Shelves, bounds: Bounds, making: Making, prefix = `${space}-`): void {
  const { site, joints } = making;
  const { write } = site;
  const names: string[] = [];
  const at = (said.count ?? said.at ?? said.loose)?.key ?? site.at;
  const row: Row = { space, said, making, names, name: (i) => `${prefix}shelf-${i}`, more: {}, short: null, at };
  if (said.loose) rest(space, said, bounds, making, prefix);
  for (const height of said.at?.value ?? []) put(row, { top: write`${space}.bottom + ${height}` });
  if (said.count) equally(row, said.count.value, site.step, `${prefix}shelf`);
  making.reaching.push(...names);
  const to = [bounds.left, bounds.right].filter((end) => end !== undefined);
  if (names.length > 0 && to.length > 0) joints.push({ join: names, to, ...(said.join?.value ?? making.join) });
}

/** Shelves of one kind in a space. */
interface Row {
  readonly space: string;
  readonly said: Shelves;
  readonly making: Making;
  /** Of those so far. */
  readonly names: string[];
  readonly name: (i: number) => string;
  /** The setting that asks for them: what is found about them is found there. */
  readonly at: Span;
  readonly more: Settings;
  /** How far a strip along the front stays off each side; null: it goes from side to side. */
  readonly short: TextNode | null;
}

/** One more shelf, with the strip along its front. */
function put({ space, said, making, names, name, more, short, at }: Row, where: Settings, own?: string): void {
  const { site, entries, joints, edge } = making;
  const { write } = site;
  const shelf = own ?? name(names.length + 1);
  const front = said["set back"] ? write`${space}.front + ${said["set back"].value}` : write`${space}.front`;
  const edged = said["front edge"]?.value.said;
  const strip = `${shelf}-lip`;
  const base: Settings = {
    "made of": said["made of"]?.value ?? making.stock,
    ...(said.called && { called: said.called.value }),
    ...{ as: "lying flat", grain: "across", left: write`${space}.left`, right: write`${space}.right` },
    ...{ front: edged ? write`${strip}.back` : front, back: write`${space}.back` },
    ...(said.carries && { carries: said.carries.value }),
    ...(!edged && edge),
    [CURE]: { deep: "make `set back` of the shelves {by} more than it is" },
  };
  entries[shelf] = from(at, { ...base, ...more, ...where });
  names.push(shelf);
  if (!edged) return;
  const flush = edged["flush with"]?.value ?? "top";
  const lip: Settings = {
    ...{ called: "shelf lip", "made of": edged.lip.value, as: "on edge", grain: "across", front },
    left: short ? write`${space}.left + ${short}` : write`${space}.left`,
    right: short ? write`${space}.right - ${short}` : write`${space}.right`,
    ...{ [flush]: write`${shelf}.${flush}`, up: edged.high.value },
  };
  entries[strip] = from(at, lip);
  joints.push({ join: strip, to: shelf, with: "glue" });
}

/** So many with equal spaces between them, each on a mark as it is measured from the floor of the opening. */
function equally(row: Row, wanted: TextNode, step: TextNode, all: string): void {
  const { space, making, name, said } = row;
  const { write } = making.site;
  const count = Number(wanted.text);
  if (Number.isInteger(count) && count > 0 && count <= MOST_NAMED) {
    const first = name(1);
    const clear = write`(${space}.up - ${count} * ${first}.up) / ${count + 1}`.text;
    for (let i = 1; i <= count; i += 1) {
      const up = write`round(${i} * (${clear}) + ${i - 1} * ${first}.up, ${step.text})`;
      put(row, { bottom: write`${space}.bottom + ${up.text}` });
    }
  } else if (said["front edge"])
    tellWrong(
      { ...making.site.where, key: "shelves" },
      wanted,
      `a whole number up to ${MOST_NAMED}, as each has a strip along its front`,
    );
  else put(row, { count: wanted, spread: write`up between ${space}.bottom and ${space}.top` }, all);
}

/** Shelves on pins, with equal spaces at first. They are pulled out over the edge of what is in front of them: short at the back. */
function rest(space: string, said: Shelves, { left, right }: Bounds, making: Making, prefix: string): void {
  const { site, joints } = making;
  const { write, usual, step } = site;
  const pins = said.pins?.value ?? {};
  const apart = pins.apart?.value ?? write`${usual("1 1/4", "32")}`;
  const ladder = pins.ladder?.value === true;
  const back = said["short at the back"]?.value ?? write`${usual("1/8", "3")}`;
  const half = said.play && write`${said.play.value} / 2`;
  const names: string[] = [];
  const row: Row = {
    ...{ space, said, making, names, name: (i) => `${prefix}loose-shelf-${i}` },
    more: {
      ...{ called: said.called?.value ?? "loose shelf", back: write`${space}.back - ${back}` },
      // One with a strip along its front is put together before it goes in.
      cut: said.cut?.value ?? (said["front edge"] ? undefined : TO_OPENING),
    },
    // A little shorter than any usual shelf on pins.
    at: said.loose?.key ?? site.at,
    short: half ?? write`${usual("3/32", "2.5")}`,
  };
  const wanted = said.loose?.value;
  if (wanted && !("text" in wanted)) for (const height of wanted) put(row, { top: write`${space}.bottom + ${height}` });
  else if (wanted) equally(row, wanted, ladder ? apart : step, row.name(1));
  joints.push({
    ...{
      join: names,
      to: [left, right].flatMap((end) => (end ? [carrier(end, "pins", making)] : [])),
      with: "shelf pins",
    },
    ...{ hardware: pins.with?.value, deep: pins.deep?.value, "in from ends": pins["in from each edge"]?.value },
    ...{ "spare holes": pins["spare holes"]?.value ?? (ladder ? LADDER : "2"), "holes apart": pins.apart?.value },
    ...(half && { gap: half }),
    ...(said.count === undefined && said.at === undefined && said.join?.value),
  });
}
