/** Promise 0: every id names one thing that is there. */
import { actionsOf, count } from "./model.ts";
import type { Action, BuildRecord } from "./record.ts";
import { type Violations, violation } from "./violation.ts";

export function* references(record: BuildRecord): Violations {
  const ids = {
    part: record.parts.map((part) => part.id),
    blank: record.blanks.map((blank) => blank.id),
    joint: record.joints.map((joint) => joint.id),
    fastener: record.fasteners.map((fastener) => fastener.id),
    hardware: record.hardware.map((item) => item.id),
    mark: record.cutList.map((line) => line.mark),
    step: record.steps.map((step) => String(step.number)),
    motion: record.motions.map((motion) => motion.name),
  };
  for (const list of Object.values(ids))
    for (const id of new Set(list.filter((id) => count(list, id) > 1)))
      yield violation("ids are unique", id, "names more than one thing");

  const known = new Map(Object.entries(ids).map(([kind, list]) => [kind, new Set(list)]));
  for (const [where, kind, id] of uses(record))
    if (!kind.split("|").some((k) => known.get(k)?.has(id)))
      yield violation("references resolve", where, `names ${id}, and no ${kind} is called that`);

  yield* options(record);

  for (const { action } of actionsOf(record)) {
    if (action.do !== "machine") continue;
    const features = record.parts.find((part) => part.id === action.part)?.features ?? [];
    for (const i of action.features)
      if (features[i] === undefined) yield violation("references resolve", action.part, `has no feature ${i}`);
    for (const i of action.holes)
      if (record.holes[i]?.part !== action.part) yield violation("references resolve", action.part, `has no hole ${i}`);
  }
}

/** Findings that appear under some options name choices, and other options than the plan was made for; others name stock by its thickness. */
function* options({ findings, source, parts }: BuildRecord): Violations {
  const stock = new Set(parts.map((part) => part.stock));
  for (const { rule, when } of findings) {
    const named = Object.entries(when).filter(([name]) => !stock.has(name));
    for (const [choice] of named)
      if (!Object.hasOwn(source.choices, choice))
        yield violation("references resolve", rule, `names ${choice}, and no choice is called that`);
    if (
      named.length > 0 &&
      named.every(([choice, option]) => option.split(" or ").includes(source.choices[choice] ?? ""))
    )
      yield violation("references resolve", rule, "says when, and means the options that were chosen");
  }
}

/** Where an id is used, what kinds of thing it may name, and the id. */
type Use = readonly [where: string, kind: string, id: string];

const each = (where: string, kind: string, list: readonly (string | null)[]): Use[] =>
  list.flatMap((id) => (id === null ? [] : [[where, kind, id] as const]));

function* uses(record: BuildRecord): Iterable<Use> {
  for (const part of record.parts) {
    yield* each(
      part.id,
      "joint",
      part.features.map((feature) => feature.for),
    );
    if (!part.bought) yield* each(part.id, "mark", [part.mark]);
  }
  for (const blank of record.blanks) yield* each(blank.id, "part", [blank.part, ...blank.alsoParts]);
  for (const line of record.cutList) {
    yield* each(line.mark, "part", line.parts);
    yield* each(line.mark, "mark", [line.mirrorOf]);
  }
  for (const joint of record.joints) {
    yield* each(joint.id, "part", joint.parts);
    yield* each(joint.id, "fastener", joint.fasteners);
    yield* each(joint.id, "part", joint.still ? [joint.still.part] : []);
  }
  for (const f of record.fasteners) yield* each(f.id, "part", [...f.through, f.into, f.travelsWith]);
  for (const hole of record.holes) {
    yield* each(`hole of ${hole.part}`, "part", [hole.part]);
    yield* each(`hole of ${hole.part}`, "fastener|hardware", [hole.for]);
  }
  for (const item of record.hardware) yield* each(item.id, "part", [item.carriedBy]);
  for (const motion of record.motions) {
    yield* each(motion.name, "part|hardware", motion.parts);
    yield* each(
      motion.name,
      "motion",
      motion.needs.map((need) => need.motion),
    );
  }
  for (const layout of record.layouts) {
    yield* each(
      layout.stock,
      "blank",
      layout.placements.map((placement) => placement.blank),
    );
    yield* each(
      layout.stock,
      "mark",
      layout.placements.flatMap((placement) => placement.mark.split(" + ")),
    );
  }
  for (const step of record.steps)
    yield* each(`step ${step.number}`, "step", [...step.after, ...step.afterWait].map(String));
  for (const { step, action } of actionsOf(record)) yield* ofAction(`step ${step.number}`, action);
}

function* ofAction(where: string, action: Action): Iterable<Use> {
  if ("blanks" in action) yield* each(where, "blank", action.blanks);
  if ("part" in action) yield* each(where, "part", [action.part]);
  if ("parts" in action) yield* each(where, action.do === "remove" ? "part|hardware" : "part", action.parts);
  if ("to" in action) yield* each(where, "part", action.to);
  if ("from" in action) yield* each(where, "part", action.from);
  if ("joints" in action) yield* each(where, "joint", action.joints);
  if ("fasteners" in action) yield* each(where, "fastener", action.fasteners);
  if ("undrives" in action) yield* each(where, "fastener", action.undrives);
  if ("hardware" in action) yield* each(where, "hardware", action.hardware);
}
