/** Promises 2 and 3: blanks give their parts, bands are counted in and put on in time, and what is cut to the piece waits for it. */
import { bounds, type Model, near } from "./model.ts";
import { type Body, bodyOf, type Replay } from "./moments.ts";
import { boundsOfOpening } from "./openings.ts";
import type { Blank, Part } from "./record.ts";
import type { V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* making(model: Model, replay: Replay): Violations {
  for (const part of model.record.parts.filter((p) => !p.bought)) {
    yield* yields(model, part);
    yield* banded(part, replay);
    yield* waits(model, part, replay);
  }
  for (const blank of model.record.blanks) yield* reserves(model, blank);
  for (const blank of model.record.blanks)
    if (blank.planedWhole) yield* wholePiece(model, blank, blank.planedWhole);
    else if (blank.alsoParts.length > 0) yield* inOneRow(model, blank);
  for (const line of model.record.cutList)
    if (line.parts.some((id) => model.parts.get(id)?.cut !== line.cut))
      yield violation("sizes agree", line.mark, `is cut ${line.cut}, and a part of it otherwise`);
}

const FACES = ["left", "right", "front", "back", "bottom", "top"];
const axisOf = (edge: string): 0 | 1 | 2 => Math.floor(FACES.indexOf(edge) / 2) as 0 | 1 | 2;
const grainAxis = (part: Part): 0 | 1 | 2 | -1 =>
  (part.grain?.findIndex((c) => Math.abs(c) > 0.5) ?? -1) as 0 | 1 | 2 | -1;

/** Whether a band lies at an end: along the grain, or where there is none at the ends of the longer extent. */
function isEnd(model: Model | null, part: Part, edge: string): boolean {
  const grain = grainAxis(part);
  if (grain >= 0 || model === null) return axisOf(edge) === grain;
  const [low, high] = bounds(model.solid(part.id));
  return near(high[axisOf(edge)] - low[axisOf(edge)], part.length, model.record.precision);
}

/** What is sawn, without the bands that the size includes. */
function bareSize(model: Model, part: Part) {
  const off = (end: boolean) =>
    part.edgeBanding
      .filter((band) => band.deducted && isEnd(model, part, band.edge) === end)
      .reduce((so, band) => so + band.thickness, 0);
  return { width: part.width - off(false), length: part.length - off(true) };
}

const LEAST = 0.01;

function* yields(model: Model, part: Part): Violations {
  const bare = bareSize(model, part);
  const own = model.record.blanks.filter((blank) => blank.part === part.id && blank.alsoParts.length === 0);
  const fault = (blank: Blank, why: string) => violation("blanks give the part", part.id, `${blank.id} ${why}`);
  for (const blank of own) {
    const [wider, longer] = [blank.width - bare.width, blank.length - bare.length];
    if (blank.why === "as finished" && !(near(wider, 0) && near(longer, 0)))
      yield fault(blank, "is not the part less its bands");
    const small =
      longer < -LEAST || (blank.why !== "glue-up" && (wider < -LEAST || blank.thickness < part.thickness - LEAST));
    if (small) yield fault(blank, "is smaller than the part");
    const planed = blank.why === "rough" && (part.cut === "opening" || part.cut === "piece");
    if ((blank.why === "cut later") !== (part.cut !== "list") && blank.why !== "glue-up" && !planed)
      yield fault(blank, `is ${blank.why}, the part cut by ${part.cut}`);
    if (blank.why === "largest" && !(blank.reserved.length > 0 && (wider > LEAST || longer > LEAST)))
      yield fault(blank, "is no larger than the part");
    for (const { size, largest } of blank.why === "glue-up" ? [] : blank.reserved)
      if (blank[size] < largest - (part[size] - bare[size]) - LEAST)
        yield fault(blank, `has no room for its largest ${size}`);
    if (blank.why === "cut later" && !(wider > LEAST || longer > LEAST))
      yield fault(blank, "leaves nothing to take off");
  }
  const glued = own.filter((blank) => blank.why === "glue-up");
  const section = glued.reduce((so, blank) => so + blank.width * blank.thickness, 0);
  const first = glued[0];
  if (first && (glued.length < 2 || section < bare.width * part.thickness))
    yield fault(first, "and the others are too little for the part");
}

/** What is kept room for is what the slopes give at those thicknesses, but for what rounding to marks adds. */
function* reserves({ record, parts }: Model, blank: Blank): Violations {
  const drawn = new Map(record.parts.map(({ stock, thickness }) => [stock, thickness]));
  const part = parts.get(blank.part);
  if (part === undefined || blank.alsoParts.length > 0) return;
  for (const { size, largest, at } of blank.reserved) {
    const changes = Object.entries(at).map(
      ([stock, thickness]) => (part.slope[stock]?.[size] ?? 0) * (thickness - (drawn.get(stock) ?? thickness)),
    );
    const wanted = changes.reduce((so, change) => so + change, part[size]);
    if (largest < part[size] + LEAST || Math.abs(largest - wanted) > 2 * record.precision)
      yield violation("blanks give the part", part.id, `keeps ${largest} for its ${size}, its slopes give ${wanted}`);
  }
}

/** A strip is as long as its parts in a row with a kerf between each two, or more. */
function* inOneRow(model: Model, blank: Blank): Violations {
  const parts = [blank.part, ...blank.alsoParts].flatMap((id) => model.parts.get(id) ?? []);
  const kerf = model.record.layouts.find((layout) => layout.stock === blank.stock)?.kerf ?? 0;
  const sizes = parts.map((part) => bareSize(model, part));
  const kerfs = (parts.length - 1) * kerf;
  const fits = (["width", "length"] as const).some((size) => {
    const other = size === "width" ? "length" : "width";
    const row = sizes.reduce((so, each) => so + each[size], kerfs);
    return blank[size] >= row - LEAST && sizes.every((each) => blank[other] >= each[other] - LEAST);
  });
  const middle = (part: Part): V3 => {
    const [low, high] = bounds(model.solid(part.id));
    return [low[0] + high[0], low[1] + high[1], low[2] + high[2]];
  };
  const middles = parts.map(middle);
  const inOrder = ([0, 1, 2] as const).some((i) =>
    middles.slice(1).every((point, k) => point[i] > (middles[k]?.[i] ?? 0) + LEAST),
  );
  if (!fits || !inOrder) yield violation("blanks give the part", blank.id, "does not give its parts in their order");
}

/** What is planed whole gives all its parts, each as large as it ends at least, with a kerf between each two, and is no smaller than a machine takes. */
function* wholePiece({ record, parts }: Model, blank: Blank, whole: NonNullable<Blank["planedWhole"]>): Violations {
  const { beside, inLine } = whole;
  const kerf = record.layouts.find((layout) => layout.stock === blank.stock)?.kerf ?? 0;
  const own = [blank.part, ...blank.alsoParts].flatMap((id) => parts.get(id) ?? []);
  const row = (size: number, n: number) => n * size + (n - 1) * kerf - LEAST;
  const [inches, mm] = [
    [38.1, 304.8],
    [40, 300],
  ];
  const [wide = 0, long = 0] = (record.units === "mm" ? mm : inches) ?? [];
  const given =
    own.length <= beside * inLine &&
    own.every(
      (part) => part.stock === blank.stock && part.width < whole.width + LEAST && part.length < whole.length + LEAST,
    ) &&
    blank.width >= row(whole.width, beside) &&
    blank.length >= row(whole.length, inLine) &&
    blank.width >= wide - LEAST &&
    blank.length >= long - LEAST;
  if (!given) yield violation("blanks give the part", blank.id, "is too small a piece to plane, or for its parts");
}

/** A band over 1/32 in is deducted; ends come before long edges, and all before the part is built in. */
function* banded(part: Part, { moments }: Replay): Violations {
  for (const band of part.edgeBanding)
    if (band.thickness > 25.4 / 32 + 1e-6 && !band.deducted)
      yield violation(
        "thick banding is deducted",
        part.id,
        `${band.thickness} mm at the ${band.edge} are not deducted`,
      );
  const edges = moments.flatMap(({ action }) => (action.do === "band" && action.part === part.id ? action.edges : []));
  const ends = edges.map((edge) => grainAxis(part) === axisOf(edge));
  if (grainAxis(part) >= 0 && ends.some((end, i) => end && ends.slice(0, i).includes(false)))
    yield violation("banding is put on in order", part.id, `is banded ${edges.join(", ")}`);
  const added = moments.findIndex(({ action }) => action.do === "add" && action.parts.includes(part.id));
  const last = moments.findLastIndex(({ action }) => action.do === "band" && action.part === part.id);
  if (added >= 0 && last > added)
    yield violation("banding is put on in order", part.id, "is banded when it is built in");
}

/** Two parts with no more than this between them are fitted to each other. */
const FIT = 25.4 / 4;

/** What is cut to the opening or the piece is made after the parts around it stand together, at the first step that does that. */
function* waits(model: Model, part: Part, replay: Replay): Violations {
  const { moments } = replay;
  const waiting = part.cut === "opening" || part.cut === "piece";
  const fault = (why: string) => violation("what is cut to the piece waits for it", part.id, why);
  if (!waiting) {
    if (part.cutAfterStep !== null) yield fault("is cut from the list, and waits");
    return;
  }
  const shut = part.fitsBetween.length > 0 ? part.fitsBetween : null;
  const beside = aroundAtUse(model, part, replay);
  const around = shut ?? boundsOfOpening(model, part, replay) ?? beside;
  if (around === null) return;
  if (shut && !shut.every((id) => bounding(model, part, id)))
    yield fault(`is to fit between ${shut.join(" and ")}, which do not bound it`);
  if (shut && !shut.every((id) => beside?.includes(id)) && !standBefore(shut, part, replay))
    yield fault(`is to fit between ${shut.join(" and ")}, which do not stand beside it`);
  const stand = (bodies: readonly Body[]) => bodies.some((one) => around.every((id) => one.has(id)));
  const expected = around.length === 0 ? null : (moments.find(({ later }) => stand(later))?.step.number ?? null);
  if (expected !== part.cutAfterStep)
    yield fault(`waits for step ${part.cutAfterStep}, and can be measured after ${expected}`);
  for (const blank of model.record.blanks.filter((b) => b.part === part.id && b.why === "cut later")) {
    const made = moments.find(({ action }) => action.do === "make" && action.blanks.includes(blank.id));
    if (made && part.cutAfterStep !== null && made.step.number <= part.cutAfterStep)
      yield fault(`is cut in step ${made.step.number}, before it can be measured`);
  }
  const cut = moments.find(
    ({ action }) => (action.do === "machine" || action.do === "band") && action.part === part.id,
  );
  if (cut && part.cutAfterStep !== null && cut.step.number <= part.cutAfterStep)
    yield fault(`is worked on in step ${cut.step.number}, before it can be measured`);
}

/** What bounds a part in the body that it is added to. */
function aroundAtUse(model: Model, part: Part, { moments }: Replay): readonly string[] | null {
  const use = moments.find(({ action }) => action.do === "add" && action.parts.includes(part.id));
  if (use?.action.do !== "add") return null;
  const { to } = use.action;
  const first = moments.find(({ step }) => step === use.step);
  const body = bodyOf(
    first?.bodies ?? [],
    to.find((id) => bodyOf(first?.bodies ?? [], id)),
  );
  return [...(body ?? [])].filter((id) => id !== part.id && bounding(model, part, id));
}

/** Whether some parts stand together in any body before a part is used: it may be measured there, and built into another first. */
function standBefore(ids: readonly string[], part: Part, { moments }: Replay): boolean {
  const use = moments.find(({ action }) => action.do === "add" && action.parts.includes(part.id));
  const first = moments.find(({ step }) => step === use?.step);
  return first?.bodies.some((body) => ids.every((id) => body.has(id))) === true;
}

/** Joined to the part, beside one of its edges or ends with no more than a fit between, against the face of one that is mitred, or in a notch of it. */
function bounding(model: Model, part: Part, other: string): boolean {
  if (model.record.joints.some(({ parts }) => parts.includes(part.id) && parts.includes(other))) return true;
  const [[low, high], [from, to]] = [bounds(model.solid(part.id)), bounds(model.solid(other))];
  const extents = ([0, 1, 2] as const).map((i) => high[i] - low[i]);
  const mitred = model.record.joints.some(({ parts, method }) => parts.includes(part.id) && method.includes("mitre"));
  const thin = mitred ? -1 : extents.indexOf(Math.min(...extents));
  const within = ([0, 1, 2] as const).every((k) => from[k] < high[k] - LEAST && to[k] > low[k] + LEAST);
  if (within) return true;
  return ([0, 1, 2] as const).some((i) => {
    if (i === thin) return false;
    const beside = ([0, 1, 2] as const).every((k) => k === i || (from[k] < high[k] - LEAST && to[k] > low[k] + LEAST));
    const gap = Math.max(from[i] - high[i], low[i] - to[i]);
    return beside && gap > -LEAST && gap <= FIT + LEAST;
  });
}
