import { from, type Settings } from "../expand/make.ts";
import { tellWrong } from "../kinds/kind.ts";
import { squash } from "../names.ts";
import type { Node } from "../yaml/nodes.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";
import { backPanel, seated } from "./back-in.ts";
import { addPosts, footOf, insideOf } from "./case/posts.ts";
import { addBackRails, addTopRails } from "./case/rails.ts";
import { own, type PanelSaid, type Said } from "./case/settings.ts";
import { crosses } from "./corners.ts";
import { divide } from "./divide.ts";
import { behindFrame } from "./dividers.ts";
import { framed } from "./face-frame.ts";
import { type Bounds, type Making, within } from "./making.ts";
import { without, withShelves } from "./openings.ts";
import { behindFronts } from "./overlay-fronts.ts";
import { shelve } from "./shelve.ts";
import { toBase } from "./to-base.ts";

export const carcase = assembly({
  kind: "case",
  also: ["carcase"],
  meaning:
    "Two sides, as panels or as posts with panels between them, closed above and below, and divided into openings.",
  makes:
    "Its parts are `left-side` and `right-side` (on posts `left-side.front-post`, `left-side.back-post`, `left-side.panel`, with rails `left-side.bottom-rail`, `left-side.top-rail`), `bottom-panel`, `top-panel` or `top-rail-front` and `top-rail-back`, `back-panel`, `back-rail-bottom`, `back-rail-top`; its spaces `room`, `inside` and the openings, `opening-1` or the name that you give; between openings `divider-1` and `divider-1-panel`, in one NAME-divider-1; what an opening holds is NAME-shelf-1, NAME-loose-shelf-1, NAME-door, NAME-drawer or NAME-drawer-1; shelves of an undivided case are `shelf-1` and `loose-shelf-1`.",
  settings: own,
  bearers: (written) => {
    const panel = written("top panel");
    const rails = panel === undefined ? written("top rails") !== undefined : isText(panel, "rails");
    return rails
      ? ["top-rail-front", "top-rail-back"]
      : isText(panel, "no")
        ? ["left-side", "right-side"]
        : ["top-panel"];
  },
  expand: (said: Said, site: Site): Expanded => {
    const { write } = site;
    const stock = said["made of"].value;
    const edge: Settings = said["front edges"]?.value ?? {};
    const sides = said.sides?.value.said ?? {};
    // Panels flush with their posts are dowelled to them: a usual dado would leave too little wood beside the dowels.
    const dowelled = sides.posts && !sides.panels?.value.said.join && insideOf(sides) === "flush inside";
    const shallow = dowelled ? { deep: write`${site.usual("3/16", "5")}` } : {};
    const join: Settings = said.join?.value ?? { with: "dado", ...shallow };
    const making: Making = {
      site,
      entries: {},
      joints: [],
      reaching: [],
      stock,
      join,
      edge,
      ...(sides.posts && { posts: insideOf(sides) }),
    };
    const { entries, joints } = making;
    const holding = said.openings?.value;
    const division = holding && "openings" in holding ? holding : null;
    const deep = behindFronts(site.placed("deep"), division, stock, site);
    entries.room = { kind: "space", ...site.placed("across"), ...deep, ...site.placed("up") };
    const full = sides.run?.value !== "between top and bottom";
    const back = said.back && seated(said.back.value, site);
    const backFace = back?.in === "laid on" ? "back-panel.front" : "room.back";
    const keyOf = (name: "bottom-panel" | "top-panel") =>
      said[name === "top-panel" ? "top panel" : "bottom panel"]?.key;
    const [bottom, top] = [panelOf(said["bottom panel"]?.value), topOf(said)];

    const howOf = (own: Settings | undefined): Settings => own ?? said["top and bottom"]?.value ?? join;
    // At an outer corner both run through, and cross.
    const atCorner = (panel: PanelSaid): boolean =>
      !making.posts && !panel.up && crosses(howOf(panel.join?.value), site);
    const reach = {
      bottom: full || bottom === null || atCorner(bottom) ? write`room.bottom` : write`bottom-panel.top`,
      top: full || top === null || top === "rails" || atCorner(top) ? write`room.top` : write`top-panel.bottom`,
      back: write`${backFace}`,
    };
    for (const face of ["left", "right"] as const)
      if (making.posts) within(said.sides?.key, making, (inner) => addPosts(face, sides, reach, inner));
      else
        entries[`${face}-side`] = from(said.sides?.key, {
          ...{ "made of": sides["made of"]?.value ?? stock, as: "upright", facing: face },
          ...{ [face]: write`room.${face}`, front: write`room.front`, ...reach },
          ...edge,
        });

    const lying = (panel: PanelSaid): Settings => ({
      "made of": panel["made of"]?.value ?? stock,
      as: "lying flat",
      grain: "across",
      ...(full && !atCorner(panel)
        ? { left: write`left-side.right`, right: write`right-side.left` }
        : { left: write`room.left`, right: write`room.right` }),
      front: panel["set back"] ? write`room.front + ${panel["set back"].value}` : write`room.front`,
      back: write`${backFace}`,
      ...edge,
    });
    const both = ["left-side", "right-side"];
    const joinEnd = (name: "bottom-panel" | "top-panel", panel: PanelSaid): void => {
      const how = howOf(panel.join?.value);
      const ends = full && !atCorner(panel);
      joints.push(from(keyOf(name), ends ? { join: name, to: both, ...how } : { join: both, to: name, ...how }));
    };
    if (bottom !== null) {
      const up = bottom.up?.value ?? (making.posts && full ? footOf(sides, making) : undefined);
      entries["bottom-panel"] = from(keyOf("bottom-panel"), {
        ...lying(bottom),
        bottom: up ? write`room.bottom + ${up}` : write`room.bottom`,
      });
      joinEnd("bottom-panel", bottom);
      joints.push(...toBase(said["to its base"]?.value, up === undefined, site));
    }
    if (top === "rails")
      within((said["top rails"] ?? said["top panel"])?.key, making, (inner) => addTopRails(said, inner));
    else if (top !== null) {
      entries["top-panel"] = from(keyOf("top-panel"), { ...lying(top), top: write`room.top` });
      joinEnd("top-panel", top);
    }
    const above = top === null ? null : top === "rails" ? "top-rail-front" : "top-panel";
    const ends = { bottom: bottom && "bottom-panel", top: above };
    const onRails = { ...ends, top: top === "rails" ? "top-rail-back" : above };
    const backEnds = within(said["back rails"]?.key, making, (inner) =>
      addBackRails(said, back?.in === "groove", onRails, inner),
    );
    const rail = [backEnds.top, backEnds.bottom].find((name) => name?.startsWith("back-rail"));
    entries.inside = {
      kind: "space",
      left: write`left-side.right`,
      right: write`right-side.left`,
      bottom: ends.bottom ? write`${ends.bottom}.top` : write`room.bottom`,
      top: above ? write`${above}.bottom` : write`room.top`,
      front: write`room.front`,
      back: rail
        ? back
          ? write`min(back-panel.front, ${rail}.front)`
          : write`${rail}.front`
        : write`${back ? "back-panel.front" : "room.back"}`,
    };
    const bounds = {
      ...{ left: "left-side", right: "right-side" },
      ...(ends.bottom && { bottom: ends.bottom }),
      ...(above && { top: above }),
      ...(top === "rails" && { topBehind: "top-rail-back" }),
    };
    const [own, openings] = [said.shelves, said.openings?.value];
    // Shelves behind the doors of a case that is one opening know of them.
    const one = own && openings && !("behind" in openings) ? withShelves(openings, own) : null;
    if (openings) divideCase(one ?? openings, bounds, making);
    if (own && !one) within(own.key, making, (inner) => shelve("inside", own.value, bounds, inner, ""));
    const low = making.posts ? write`room.bottom + ${footOf(sides, making)}` : null;
    if (back)
      within(said.back?.key, making, (inner) =>
        backPanel(back, inner, { ...backEnds, between: rail ? [] : making.reaching }, low),
      );
    return { entries, joints };
  },
});

/** Its own openings, or those of the face frame before it, which holds the doors and drawers. */
function divideCase(said: NonNullable<Said["openings"]>["value"], bounds: Bounds, making: Making): void {
  const frame = "behind" in said ? framed(said.behind, making.site) : null;
  if (!("behind" in said)) divide("inside", said, bounds, making);
  else if (!frame) tellWrong(making.site.where, said.behind, "the name of a face frame with `openings`");
  else divide("inside", without("holds", frame.division), bounds, { ...making, dividing: behindFrame(frame.member) });
}

const isText = (node: Node | undefined, word: string): boolean => node?.kind === "text" && squash(node.text) === word;

const panelOf = (said: boolean | { readonly said: PanelSaid } | undefined): PanelSaid | null =>
  said === false ? null : said === undefined || said === true ? {} : said.said;

function topOf(said: Said): PanelSaid | "rails" | null {
  const value = said["top panel"]?.value;
  if (value === "rails" || (value === undefined && said["top rails"] !== undefined)) return "rails";
  return panelOf(value);
}
