/** Shelves in a space: fixed, or loose on pins. */
import type { Settings } from "../expand/make.ts";
import { type Bounds, carrier, type Making } from "./making.ts";
import type { Shelves } from "./shelves-in.ts";

/** More shelves than this, or as many as a formula says, are one row. */
const MOST_NAMED = 20;

/** Fixed shelves, and loose ones. */
export function shelve(space: string, said: Shelves, bounds: Bounds, making: Making, prefix = `${space}-`): void {
  const { site, entries, joints } = making;
  const { write } = site;
  const shelf: Settings = {
    "made of": said["made of"]?.value ?? making.stock,
    ...(said.called && { called: said.called.value }),
    as: "lying flat",
    grain: "across",
    left: write`${space}.left`,
    right: write`${space}.right`,
    front: said["set back"] ? write`${space}.front + ${said["set back"].value}` : write`${space}.front`,
    back: write`${space}.back`,
    ...(said.carries && { carries: said.carries.value }),
    ...making.edge,
  };
  const names: string[] = [];
  if (said.loose) rest(space, said, shelf, bounds, making, prefix);
  for (const [i, height] of (said.at?.value ?? []).entries()) {
    const name = `${prefix}shelf-${i + 1}`;
    entries[name] = { ...shelf, top: write`${space}.bottom + ${height}` };
    names.push(name);
  }
  const count = said.count && Number(said.count.value.text);
  if (count !== undefined && Number.isInteger(count) && count > 0 && count <= MOST_NAMED) {
    // Equal spaces, but each shelf on a mark of the tape as it is measured from the floor of the opening.
    const first = `${prefix}shelf-1`;
    const clear = write`(${space}.up - ${count} * ${first}.up) / ${count + 1}`.text;
    for (let i = 1; i <= count; i += 1) {
      const name = `${prefix}shelf-${i}`;
      const up = write`round(${i} * (${clear}) + ${i - 1} * ${first}.up, ${site.step.text})`;
      entries[name] = { ...shelf, bottom: write`${space}.bottom + ${up.text}` };
      names.push(name);
    }
  } else if (said.count !== undefined) {
    const name = `${prefix}shelf`;
    entries[name] = {
      ...shelf,
      count: said.count.value,
      spread: write`up between ${space}.bottom and ${space}.top`,
    };
    names.push(name);
  }
  const to = [bounds.left, bounds.right].filter((end) => end !== undefined);
  if (names.length > 0 && to.length > 0) joints.push({ join: names, to, ...(said.join?.value ?? making.join) });
}

/** Shelves on pins, with equal spaces at first. They are pulled out over the edge of what is in front of them: short at the back. */
function rest(
  space: string,
  said: Shelves,
  shelf: Settings,
  { left, right }: Bounds,
  making: Making,
  prefix: string,
): void {
  const { site, entries, joints } = making;
  const { write, usual, step } = site;
  const name = (i: number): string => `${prefix}loose-shelf-${i}`;
  const back = said["short at the back"]?.value ?? write`${usual("1/8", "3")}`;
  const loose = { ...shelf, called: said.called?.value ?? "loose shelf", back: write`${space}.back - ${back}` };
  const wanted = said.loose?.value;
  const names: string[] = [];
  const put = (where: Settings): void => {
    names.push(name(names.length + 1));
    entries[name(names.length)] = { ...loose, ...where };
  };
  const count = wanted && "text" in wanted ? Number(wanted.text) : Number.NaN;
  const clear = write`(${space}.up - ${count} * ${name(1)}.up) / ${count + 1}`.text;
  if (wanted && !("text" in wanted)) for (const height of wanted) put({ top: write`${space}.bottom + ${height}` });
  else if (Number.isInteger(count) && count > 0 && count <= MOST_NAMED)
    for (let i = 1; i <= count; i += 1)
      put({
        bottom: write`${space}.bottom + ${write`round(${i} * (${clear}) + ${i - 1} * ${name(1)}.up, ${step.text})`.text}`,
      });
  else if (wanted) put({ count: wanted, spread: write`up between ${space}.bottom and ${space}.top` });
  joints.push({
    ...{
      join: names,
      to: [left, right].flatMap((end) => (end ? [carrier(end, "pins", making)] : [])),
      with: "shelf pins",
    },
    ...{ "spare holes": said["spare holes"]?.value ?? "2" },
    ...(said["holes apart"] && { "holes apart": said["holes apart"].value }),
    ...(said.count === undefined && said.at === undefined && said.join?.value),
  });
}
