/** Sides of a case that are two posts with a panel between them. */
import type { Settings } from "../expand/make.ts";
import { oneOrList } from "../kinds/combine.ts";
import { joinWords, measure, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { word } from "../kinds/simple.ts";
import type { Site } from "./assembly.ts";

const taper = settings("the taper of the posts", {
  faces: may(
    oneOrList(word(["inside", "outside", "left", "right", "front", "back"])),
    "The faces that run in: inside if nothing is said, those that look at the middle of the piece.",
  ),
  to: need(measure, "How thick a post is at the floor."),
  over: may(measure, "How far up from the floor it begins: 1/2 in or 12 mm below the bottom panel if nothing is said."),
});

export const postSettings = settings("posts of a case", {
  "made of": need(stockName, "Their stock."),
  square: may(measure, "Their section, where the stock does not give it."),
  taper: may(taper, "How they get thinner towards the floor."),
  panel: need(stockName, "The stock of the panels between them."),
  stands: may(
    word(["inside", "outside", "middle"], { "flush inside": "inside", "flush outside": "outside" }),
    "Where the panels stand between the posts: flush with their inner faces if nothing is said, with the outer ones, or in the middle.",
  ),
  join: may(joinWords, "How the panels are joined to the posts: dowels if nothing is said."),
});

export type Posts = Fields<typeof postSettings.keys>;

const SIDES = ["left", "right"] as const;
const opposite = { left: "right", right: "left", front: "back", back: "front" } as const;

/** `back`: where the posts end behind. `lower`: the lower edge of the panels. Adds `left-end` and `right-end`, and a space as thick as each. */
export function addPosts(
  posts: Posts,
  site: Site,
  { back, lower }: { readonly back: string; readonly lower: string },
  entries: Record<string, Settings>,
  joints: Settings[],
): void {
  const { write } = site;
  const stands = posts.stands?.value ?? "inside";
  for (const side of SIDES) {
    const inner = opposite[side];
    const [front, rear] = [`${side}-end.front-post`, `${side}-end.back-post`];
    const post = (deep: "front" | "back"): Settings => ({
      "made of": posts["made of"].value,
      as: "upright",
      [side]: write`room.${side}`,
      [deep]: deep === "front" ? write`room.front` : write`${back}`,
      bottom: write`room.bottom`,
      top: write`room.top`,
      ...(posts.square && { facing: "front", across: posts.square.value, deep: posts.square.value }),
      ...taperOf(posts, site, lower, { left: inner, right: inner, front: opposite[deep], back: opposite[deep] }),
    });
    entries[`${side}-end`] = {
      "front-post": post("front"),
      "back-post": post("back"),
      panel: {
        ...{ "made of": posts.panel.value, as: "upright", facing: side, grain: "up" },
        ...(stands === "middle"
          ? { "centred on": { across: front } }
          : { [stands === "inside" ? inner : side]: write`${front}.${stands === "inside" ? inner : side}` }),
        ...{ front: write`${front}.back`, back: write`${rear}.front`, bottom: write`${lower}`, top: write`room.top` },
      },
    };
    entries[`${side}-side`] = {
      ...{ kind: "space", left: write`${front}.left`, right: write`${front}.right` },
      ...{ front: write`room.front`, back: write`${back}`, bottom: write`room.bottom`, top: write`room.top` },
    };
    joints.push({ join: `${side}-end.panel`, to: [front, rear], ...(posts.join?.value ?? { with: "dowels" }) });
  }
}

function taperOf(
  { taper: field }: Posts,
  { write, usual }: Site,
  lower: string,
  inside: { readonly left: string; readonly front: string } & Record<string, string>,
): Settings {
  const said = field?.value.said;
  if (!said) return {};
  const [across, deep] = [inside.left, inside.front];
  const chosen = (said.faces?.value ?? ["inside" as const]).flatMap((face) =>
    face === "inside"
      ? [across, deep]
      : face === "outside"
        ? [opposite[across as "left"], opposite[deep as "front"]]
        : [face],
  );
  const over = said.over?.value ?? write`${lower} - room.bottom - ${usual("1/2", "12")}`;
  return { taper: { faces: [...new Set(chosen)], at: "bottom", to: said.to.value, over } };
}

/** Names of sides become those of what stands there: in joints the whole end, for what runs or hangs on it its panel. */
export function withPosts(
  entries: Record<string, Settings>,
  joints: readonly Settings[],
): {
  readonly entries: Record<string, Settings>;
  readonly joints: readonly Settings[];
} {
  const ends = (name: unknown): unknown =>
    typeof name === "string" ? name.replace(/^(left|right)-side$/, "$1-end") : name;
  const inJoint = (value: Settings[string]): Settings[string] =>
    (Array.isArray(value) ? value.map(ends) : ends(value)) as Settings[string];
  const walls = (value: unknown): unknown =>
    typeof value === "string" ? value.replace(/(^|\.)(left|right)-side$/, "$1$2-end.panel") : value;
  return {
    entries: Object.fromEntries(
      Object.entries(entries).map(([name, entry]) => {
        const own = entry.walls as Record<string, unknown> | undefined;
        if (!own) return [name, entry];
        const named = Object.fromEntries(Object.entries(own).map(([side, wall]) => [side, walls(wall)]));
        return [name, { ...entry, walls: named } as Settings];
      }),
    ),
    joints: joints.map((joint) => ({
      ...joint,
      ...(joint.join !== undefined && { join: inJoint(joint.join) }),
      ...(joint.to !== undefined && { to: inJoint(joint.to) }),
    })),
  };
}
