import { CURE } from "../../expand/make.ts";
import type { BackEnds } from "../back-in.ts";
import type { Making } from "../making.ts";
import type { Said } from "./settings.ts";

/** What a rail at the front or at the back ends on: posts where there are any, else the sides. */
const uprights = (said: Said, at: "front" | "back"): readonly string[] =>
  (["left", "right"] as const).map((face) =>
    said.sides?.value.said.posts ? `${face}-side.${at}-post` : `${face}-side`,
  );

/** Two rails lying flat, at the front and at the back. */
export function addTopRails(said: Said, making: Making): void {
  const { site, entries, joints, stock, join } = making;
  const { write } = site;
  const own = said["top rails"]?.value.said;
  for (const face of ["front", "back"] as const) {
    const name = `top-rail-${face}`;
    entries[name] = {
      "made of": own?.["made of"]?.value ?? stock,
      as: "lying flat",
      grain: "across",
      left: write`left-side.right`,
      right: write`right-side.left`,
      top: write`room.top`,
      deep: own?.wide?.value ?? (making.posts ? write`left-side.${face}-post.deep` : site.usual("3", "75")),
      [CURE]: {
        deep: "make `wide` of the top rails {by} less",
        ...(making.posts && { across: "make `wide` of the top rails no more than the posts are thick" }),
      },
      [face]: face === "front" ? write`room.front` : write`left-side.back`,
    };
    joints.push({
      ...{ join: name, to: uprights(said, face) },
      ...(own?.join?.value ?? said["top and bottom"]?.value ?? join),
    });
  }
}

/** Rails on edge at the back, next to what closes the case above and below. Gives what the back panel ends on. */
export function addBackRails(said: Said, grooved: boolean, ends: BackEnds, making: Making): BackEnds {
  const { site, entries, joints, stock, join } = making;
  const { write } = site;
  const own = said["back rails"]?.value.said;
  if (!own) return ends;
  // A groove for the back lies within the rail, with wood left in front of it.
  const flush = (name: string) =>
    grooved
      ? write`min(left-side.back, back-panel.front + ${name}.deep - ${site.usual("1/8", "3")})`
      : write`left-side.back`;
  const where = own.where?.value ?? "top and bottom";
  const rail = (at: "bottom" | "top"): string | null => {
    if (!where.includes(at)) return ends[at];
    const name = `back-rail-${at}`;
    const [next, over] = [ends[at], at === "bottom" ? "top" : "bottom"];
    entries[name] = {
      ...{ "made of": own["made of"]?.value ?? stock, as: "on edge", grain: "across", facing: "back" },
      ...{ left: write`left-side.right`, right: write`right-side.left`, back: flush(name) },
      up: own.wide?.value ?? site.usual("3", "75"),
      [at]: next ? write`${next}.${over}` : write`left-side.${at}`,
    };
    joints.push({ join: name, to: uprights(said, "back"), ...(own.join?.value ?? join) });
    return name;
  };
  return { bottom: rail("bottom"), top: rail("top") };
}
