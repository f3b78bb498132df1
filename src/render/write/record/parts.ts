/** Parts, blanks and the cut list, as the record has them. */
import { type Solid, turnedVec, type Vec } from "../../../geometry/index.ts";
import type { Blank, Build, BuiltPart, CutLine } from "../../../solve/build.ts";
import { idsBetween, makingOf } from "../../../solve/design/making/plain.ts";
import type { Axis, Feature } from "../../../solve/design.ts";
import { printLength } from "../../../units/index.ts";
import type { Frame } from "./frame.ts";
import type { Json } from "./json.ts";
import { millimetres } from "./number.ts";

const UNIT: Record<Axis, Vec> = { across: [1, 0, 0], deep: [0, 1, 0], up: [0, 0, 1] };

export function partRecords(build: Build, frame: Frame): Json {
  const species = new Map(build.design.stock.map((stock) => [stock.name, stock.species]));
  const grain = new Map(
    build.blanks.flatMap((blank) => [blank.part, ...(blank.alsoParts ?? [])].map((id) => [id, blank.grain] as const)),
  );
  const panes = new Set(build.design.stock.flatMap(({ name, form }) => (form === "pane" ? [name] : [])));
  const slopes = new Map(build.cutList.map((line) => [line.mark, line.slope]));
  return build.parts.map((part) => ({
    id: part.id,
    mark: part.mark,
    name: part.name,
    assembly: groupOf(part.id, build.design.groups),
    bought: panes.has(part.stock),
    stock: part.stock,
    species: species.get(part.stock) ?? null,
    grain: grainOf(part, panes.has(part.stock) ? "free" : (grain.get(part.id) ?? "length")),
    axes: {
      thickness: directionOf(part, "thickness"),
      width: directionOf(part, "width"),
      length: directionOf(part, "length"),
    },
    thickness: millimetres(part.thickness),
    width: millimetres(part.width),
    length: millimetres(part.length),
    solids: pieceRecords(part.solid, frame),
    features: part.features.map((feature) => featureRecord(feature, frame)),
    edgeBanding: makingOf(part).banding.map(({ edge, item, thickness, deducted }) => ({
      edge,
      item,
      thickness: millimetres(thickness),
      deducted,
    })),
    goodFace: part.goodFace,
    mass: part.mass,
    cut: makingOf(part).cut,
    fitsBetween: [...new Set([...idsBetween(makingOf(part).between), ...(makingOf(part).notchedRound ?? [])])],
    cutAfterStep: part.cutAfterStep ?? null,
    slope: slopeRecord(slopes.get(part.mark)),
  }));
}

const slopeRecord = (slopes: CutLine["slope"]): Json =>
  new Map([...(slopes ?? [])].map(([stock, { thickness, width, length }]) => [stock, { thickness, width, length }]));

/** The innermost group that a part belongs to; an empty text for none. */
function groupOf(part: string, groups: readonly string[]): string {
  const around = groups.filter((group) => part.startsWith(`${group}.`));
  return around.reduce((longest, group) => (group.length > longest.length ? group : longest), "");
}

function grainOf(part: BuiltPart, runs: Blank["grain"]): Json {
  return runs === "free" ? null : directionOf(part, runs);
}

/** Where a direction of the board lies in the room. */
function directionOf({ axes, turned }: BuiltPart, size: keyof BuiltPart["axes"]): Json {
  const unit = UNIT[axes[size]];
  return turned ? turnedVec(turned.placement, unit) : unit;
}

export function pieceRecords(solid: Solid, frame: Frame): Json {
  return solid.pieces.map(({ vertices, faces }) => {
    const place = new Map(vertices.map((vertex, i) => [vertex, i]));
    return {
      points: vertices.map(frame.vertex),
      faces: faces.map((face) => face.vertices.map((vertex) => place.get(vertex) ?? -1)),
    };
  });
}

function featureRecord(feature: Feature, frame: Frame): Json {
  const { kind } = feature;
  const origin = frame.point(feature.origin);
  if ("normal" in feature) {
    const [a, b, c] = feature.normal;
    const norm = Math.sqrt(a * a + b * b + c * c);
    return { kind, for: feature.for, origin, normal: [a / norm, b / norm, c / norm] };
  }
  const { along, across, into, size } = feature;
  const sizes = size.map(millimetres);
  const box = { kind, for: feature.for, origin, along, across, into, size: sizes };
  if ("radius" in feature) return { ...box, lean: 0, inPlace: false, radius: millimetres(feature.radius) };
  const lean = feature.lean ? millimetres(feature.lean) : 0;
  return { ...box, lean, inPlace: feature.inPlace === true };
}

export const blankRecord = (blank: Blank): Json => ({
  id: blank.id,
  part: blank.part,
  alsoParts: blank.alsoParts ?? [],
  planedWhole: blank.planedWhole
    ? {
        ...{ beside: blank.planedWhole.beside, inLine: blank.planedWhole.inLine },
        ...{ width: millimetres(blank.planedWhole.width), length: millimetres(blank.planedWhole.length) },
      }
    : null,
  stock: blank.stock,
  thickness: millimetres(blank.thickness),
  width: millimetres(blank.width),
  length: millimetres(blank.length),
  grain: blank.grain,
  why: blank.why,
  reserved: (blank.reserved ?? []).map(({ size, largest, at }) => ({
    size,
    largest: millimetres(largest),
    at: new Map([...at].map(([stock, thickness]) => [stock, millimetres(thickness)])),
  })),
});

export function cutLineRecord(line: CutLine, { design }: Build): Json {
  const { units } = design;
  const part = design.parts.find(({ id }) => id === line.parts[0]);
  const sizes = [line.thickness, line.width, line.length];
  const [thickness = 0, width = 0, length = 0] = sizes.map(millimetres);
  return {
    mark: line.mark,
    name: line.name,
    quantity: line.parts.length,
    stock: line.stock,
    thickness,
    width,
    length,
    shown: sizes.map((size) => printLength(size, { units }).text).join(" × "),
    parts: line.parts,
    mirrorOf: line.mirrorOf,
    cut: part ? makingOf(part).cut : "list",
    notes: line.notes,
  };
}
