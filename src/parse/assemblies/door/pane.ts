import type { Settings, Value } from "../../expand/make.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import type { Making } from "./leaf.ts";
import type { PanelSaid } from "./settings.ts";

/** The frame that a pane goes into: how its parts are called, its stock, and how wide its rabbet is. */
interface Around {
  readonly name: (of: string) => string;
  readonly stock: Value;
  readonly wide: TextNode;
}

/**
 * A pane in the rabbet of a door, with play all round, and four beads that hold it: they lie on the back of the frame, half of each over
 * the pane, so that what fastens them is driven square into the frame and beside the glass.
 */
export function addPane(
  { name, stock, wide }: Around,
  { stock: glass, play, beads }: PanelSaid,
  { site, entries, joints }: Making,
): void {
  const { write, usual } = site;
  const [pane, left, right] = [name("panel"), name("left-stile"), name("right-stile")];
  const [bottom, top] = [name("bottom-rail"), name("top-rail")];
  const room = play?.value ?? write`${usual("1/16", "1.5")}`;
  entries[pane] = {
    ...{ called: "pane", "made of": glass, as: "upright", facing: "front", grain: "up" },
    ...{ left: write`${left}.right - ${wide} + ${room}`, right: write`${right}.left + ${wide} - ${room}` },
    ...{ bottom: write`${bottom}.top - ${wide} + ${room}`, top: write`${top}.bottom + ${wide} - ${room}` },
    back: write`${left}.back`,
  };
  const across = write`2 * ${wide}`;
  const bead = (face: "left" | "right" | "bottom" | "top", more: Settings): void => {
    entries[name(`${face}-bead`)] = {
      ...{ called: "glass bead", "made of": beads?.value ?? stock, facing: "front", front: write`${left}.back` },
      ...(beads ? {} : { deep: usual("1/4", "6") }),
      ...more,
    };
  };
  const high = { bottom: write`${bottom}.top - ${across}`, top: write`${top}.bottom + ${across}` };
  bead("left", { as: "upright", right: write`${left}.right`, across, ...high });
  bead("right", { as: "upright", left: write`${right}.left`, across, ...high });
  const between = { left: write`${name("left-bead")}.right`, right: write`${name("right-bead")}.left` };
  bead("bottom", { as: "on edge", ...between, top: write`${bottom}.top`, up: across });
  bead("top", { as: "on edge", ...between, bottom: write`${top}.bottom`, up: across });
  joints.push({ join: pane, to: [left, right, bottom, top], with: "glazed" });
  const pairs = [["left", left], ["right", right], ["bottom", bottom], ["top", top]] as const;
  for (const [face, to] of pairs) joints.push({ join: name(`${face}-bead`), to, with: "brads" });
  joints.push({ join: pairs.map(([face]) => name(`${face}-bead`)), to: pane, with: "glazed" });
}
