import type { Settings, Value } from "../../expand/make.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import type { Site } from "../assembly.ts";
import type { PanelSaid } from "./settings.ts";

/** The frame that a pane goes into: how its parts are called, its stock, and how wide its rabbet is. */
interface Around {
  readonly name: (of: string) => string;
  readonly stock: Value;
  readonly wide: TextNode;
}

/** What is made of it. */
interface Making {
  readonly site: Site;
  readonly entries: Record<string, Settings>;
  readonly joints: Settings[];
}

/** How far beads stand behind the back of the frame. */
export const beadDeep = ({ usual }: Site): string => usual("1/4", "8");

/**
 * A pane in the rabbet of a door, with play all round, and four beads that hold it: they lie on the back of the frame and over the
 * edge of the pane, so that what fastens them is driven square into the frame and beside the glass.
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
  // Ripped from the edge of a board: as wide as that is thick.
  const bead = (face: "left" | "right" | "bottom" | "top", more: Settings): void => {
    entries[name(`${face}-bead`)] = {
      ...{ called: "glass bead", "made of": beads?.value ?? stock, front: write`${left}.back` },
      ...{ deep: beadDeep(site), ...more },
    };
  };
  // Those on the rails run through, so that those on the stiles lie beside the rabbet in all of their length.
  const high = { bottom: write`${bottom}.top`, top: write`${top}.bottom` };
  bead("left", { as: "upright", facing: "left", right: write`${left}.right`, ...high });
  bead("right", { as: "upright", facing: "right", left: write`${right}.left`, ...high });
  const along = { left: write`${name("left-bead")}.left`, right: write`${name("right-bead")}.right` };
  bead("bottom", { as: "lying flat", grain: "across", ...along, top: write`${bottom}.top` });
  bead("top", { as: "lying flat", grain: "across", ...along, bottom: write`${top}.bottom` });
  joints.push({ join: pane, to: [left, right, bottom, top], with: "glazed" });
  const pairs = [
    ["left", left],
    ["right", right],
    ["bottom", bottom],
    ["top", top],
  ] as const;
  for (const [face, to] of pairs) joints.push({ join: name(`${face}-bead`), to, with: "brads" });
  joints.push({ join: pairs.map(([face]) => name(`${face}-bead`)), to: pane, with: "glazed" });
}
