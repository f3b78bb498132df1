import type { Settings } from "../../expand/make.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import { endJoint } from "../corners.ts";
import type { Making } from "../making.ts";
import { tapering } from "../taper.ts";
import type { Sides } from "./settings.ts";

/** Where the sides of a case begin and end. */
export interface Reach {
  readonly bottom: TextNode;
  readonly top: TextNode;
  readonly back: TextNode;
}

type Side = "left" | "right";

/** How far posts reach down below the sides. */
export const footOf = (said: Sides, { site }: Making): TextNode =>
  said.posts?.value.said.foot?.value ?? site.write`${site.usual("4", "100")}`;

/** A side as a group: two posts with a panel between them, and rails below and above it. */
export function addPosts(face: Side, said: Sides, reach: Reach, making: Making): void {
  const { site, entries, joints } = making;
  const { write } = site;
  const name = `${face}-side`;
  const [front, back] = [`${name}.front-post`, `${name}.back-post`];
  const between: Settings = { front: write`${front}.back`, back: write`${back}.front` };
  const low = write`${reach.bottom} + ${footOf(said, making)}`;
  const group: Record<string, Settings> = {
    "front-post": { ...post(said, ["front", face], making), ...ends(reach), front: write`room.front` },
    "back-post": { ...post(said, ["back", face], making), ...ends(reach), back: reach.back },
  };
  const rails = said.rails?.value.said;
  if (rails) {
    const rail: Settings = {
      ...{ "made of": rails["made of"].value, as: "on edge", grain: "deep", facing: face, up: rails.wide.value },
      ...between,
      ...lying(face, said, front, `${name}.bottom-rail`, making),
    };
    group["bottom-rail"] = { ...rail, bottom: low };
    group["top-rail"] = { ...rail, top: reach.top };
  }
  group.panel = {
    ...{ "made of": said["made of"]?.value ?? making.stock, facing: face, ...between },
    ...grainOf(said, making),
    bottom: rails ? write`${name}.bottom-rail.top` : low,
    top: rails ? write`${name}.top-rail.bottom` : reach.top,
    ...(rails
      ? { "centred on": { across: `${name}.bottom-rail` } }
      : lying(face, said, front, `${name}.panel`, making)),
  };
  entries[name] = group;
  const posts = [front, back];
  const ring = rails ? [`${name}.bottom-rail`, `${name}.top-rail`] : [];
  if (rails) joints.push(endJoint(ring, posts, rails.join?.value ?? { with: "mortise and tenon" }, site));
  const flush = !rails && !said.panels?.value.said["set back"] && lieOf(said) !== "in the middle";
  const how = said.panels?.value.said.join?.value ?? { with: flush ? "dowels" : "groove" };
  joints.push(endJoint(`${name}.panel`, [...posts, ...ring], how, site));
}

/** A board that is wider than high lies, so that fewer of them are glued to make it wide; a sheet stands. */
function grainOf(said: Sides, { site, stock }: Making): Settings {
  const own = said.panels?.value.said.grain?.value;
  if (own) return { grain: own };
  const of = said["made of"]?.value ?? stock;
  return typeof of === "object" && "text" in of && site.isSolid(of as TextNode) ? {} : { as: "upright" };
}

const ends = ({ bottom, top }: Reach): Settings => ({ bottom, top });

/** Whether the panels are flush with the posts inside. */
export const insideOf = (said: Sides): "flush inside" | "apart" =>
  said.panels?.value.said["set back"] || said.rails || lieOf(said) !== "flush inside" ? "apart" : "flush inside";

const lieOf = (said: Sides) => said.panels?.value.said.lie?.value ?? "flush inside";

/** Where a panel or a rail lies in the thickness of the posts. */
function lying(face: Side, said: Sides, post: string, own: string, { site: { write } }: Making): Settings {
  const by = said.panels?.value.said["set back"]?.value;
  const [sign, inner] = face === "left" ? (["+", "right"] as const) : (["-", "left"] as const);
  if (by) return { [face]: write`${post}.${face} ${sign} ${by}` };
  if (lieOf(said) === "flush outside") return { [face]: write`${post}.${face}` };
  if (lieOf(said) === "flush inside") return { [inner]: write`${post}.${inner}` };
  return { [face]: write`${post}.${face} ${sign} (${post}.across - ${own}.across) / 2` };
}

function post(said: Sides, corner: readonly ["front" | "back", Side], making: Making): Settings {
  const { write } = making.site;
  const own = said.posts?.value.said;
  const taper = own?.taper?.value.said;
  return {
    ...{ "made of": own?.["made of"].value, as: "upright", [corner[1]]: write`room.${corner[1]}` },
    ...(own?.square && { facing: "front", across: own.square.value, deep: own.square.value }),
    ...(taper && {
      taper: {
        faces: tapering(taper.faces?.value ?? "inside", corner),
        ...{ at: "bottom", to: taper.to.value, over: taper.over?.value ?? footOf(said, making) },
      },
    }),
  };
}
