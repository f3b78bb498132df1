/** Promise 2: every part is on one line of the cut list, comes from blanks that are laid out, and is joined to the rest. */
import { count, type Model, near } from "./model.ts";
import type { CutLine, Part } from "./record.ts";
import { dot, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

const SIZES = ["thickness", "width", "length"] as const;

export function* lists(model: Model): Violations {
  const { record } = model;
  for (const part of record.parts.filter((p) => !p.bought)) {
    const lines = record.cutList.filter((line) => line.parts.includes(part.id));
    const [line] = lines;
    if (line === undefined || lines.length > 1 || count(line.parts, part.id) > 1)
      yield violation("part is on one line", part.id, `is on ${lines.length} lines`);
    else yield* sameSizes(part, line);
    yield* fitsItsSizes(model, part);
    yield* ownSlope(part);
    if (!record.blanks.some((blank) => blank.part === part.id || blank.alsoParts.includes(part.id)))
      yield violation("part is made of blanks", part.id, "has no blank");
  }
  for (const line of record.cutList)
    if (line.quantity !== line.parts.length)
      yield violation("quantity is the number of parts", line.mark, `${line.quantity} for ${line.parts.length} parts`);
  yield* blanks(model);
  yield* joints(model);
}

function* sameSizes(part: Part, line: CutLine): Violations {
  const differ = SIZES.filter((name) => !near(part[name], line[name]));
  if (differ.length > 0 || part.mark !== line.mark || part.stock !== line.stock || part.name !== line.name)
    yield violation(
      "sizes agree",
      part.id,
      `is not as its line ${line.mark} says: ${[...differ, line.stock].join(", ")}`,
    );
}

/** A part is as thick as its own stock, once or in layers, whatever another stock measures; or its thickness is set otherwise. */
function* ownSlope({ id, stock, slope }: Part): Violations {
  const own = slope[stock]?.thickness ?? 1;
  for (const [name, { thickness }] of Object.entries(slope))
    if (name === stock ? !Number.isInteger(own) || own < 0 : own > 0 && thickness !== 0)
      yield violation("slope is that of its own stock", id, `${thickness} in thickness for each mm of ${name}`);
}

/** The solid lies in a box of the printed sizes along the directions of its board, to one step of precision. */
function* fitsItsSizes(model: Model, part: Part): Violations {
  const points = model.solid(part.id).flatMap((body) => body.points);
  const { axes } = part;
  const askew = SIZES.some((a) => SIZES.some((b) => !near(dot(axes[a], axes[b]), a === b ? 1 : 0, 1e-5)));
  if (askew || (part.grain !== null && SIZES.every((name) => Math.abs(dot(axes[name], part.grain as V3)) < 1 - 1e-5)))
    yield violation(
      "solid fits its sizes",
      part.id,
      "the directions of its board are not square, or not along its grain",
    );
  const extents = SIZES.map((name) => {
    const along = points.map((p) => dot(p, axes[name]));
    return Math.max(...along) - Math.min(...along);
  });
  const large = SIZES.filter((name, i) => (extents[i] ?? 0) > part[name] + model.record.precision + 0.01);
  if (large.length > 0)
    yield violation("solid fits its sizes", part.id, `measures ${extents.join(" × ")}: too much for its ${large}`);
}

function* blanks({ record, parts }: Model): Violations {
  const placements = record.layouts.flatMap(({ kerf, placements: own }) => own.map((each) => ({ ...each, kerf })));
  for (const blank of record.blanks) {
    const part = parts.get(blank.part);
    const thick = blank.why !== "as finished" || near(blank.thickness, part?.thickness ?? 0);
    if (!thick || blank.stock !== part?.stock)
      yield violation("sizes agree", blank.id, `is not as its part ${blank.part}`);
    const marks = [blank.part, ...blank.alsoParts].map((id) => parts.get(id)?.mark ?? "");
    const marked = [...new Set(marks)].join(" + ");
    const placed = placements.filter((placement) => placement.blank === blank.id);
    if (placed.length !== 1) yield violation("blank is placed once", blank.id, `is in ${placed.length} placements`);
    for (const { width, length, turned, mark, kerf } of placed) {
      const [across, along] = turned ? [blank.length, blank.width] : [blank.width, blank.length];
      // No cut takes off less than a kerf of what a later step cuts to size.
      const fits = (size: number, least: number): boolean =>
        near(size, least) || (blank.why === "cut later" && size > least && size < least + kerf);
      if (!fits(width, across) || !fits(length, along) || mark !== marked)
        yield violation("placement has the blank's size", blank.id, `is placed as ${mark}, ${width} × ${length}`);
    }
  }
}

function* joints({ record, jointOf }: Model): Violations {
  for (const part of record.parts)
    if (!record.joints.some((joint) => joint.parts.includes(part.id)))
      yield violation("part is joined", part.id, "is in no joint");
  const reached = new Set(record.parts.slice(0, 1).map((part) => part.id));
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const { parts } of record.joints)
      if (parts.some((id) => reached.has(id))) for (const id of parts) reached.add(id);
  }
  const rest = record.parts.filter((part) => !reached.has(part.id)).map((part) => part.id);
  if (rest.length > 0) yield violation("all is connected", rest.join(" "), "is not connected to the rest");
  for (const fastener of record.fasteners) {
    const lists = record.joints.filter((joint) => joint.fasteners.includes(fastener.id)).length;
    const passed = [...fastener.through, fastener.into];
    const joint = jointOf.get(fastener.id);
    // A button or clip lies between the screw and the part that does not hold it; a pin holds only the side.
    const between = fastener.with.length > 0 && fastener.through.length === 0 && joint?.still != null;
    const within = fastener.into !== null && joint?.parts.includes(fastener.into);
    const holds =
      joint?.parts.every((part) => passed.includes(part)) || (within && (between || joint?.kind === "resting"));
    if (lists !== 1 || !holds)
      yield violation(
        "fastener belongs to one joint",
        fastener.id,
        `is in ${lists} joints and passes ${passed.join(" ")}`,
      );
  }
}
