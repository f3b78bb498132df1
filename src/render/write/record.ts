/**
 * The build record: the whole solved model as JSON, for programs that go on from it. `record-schema.ts` describes it.
 * Lengths are millimetres, printed to a millionth, halves to even; the origin is the front left bottom corner of the parts.
 */
import type { Finding } from "../../findings/finding.ts";
import type { Build } from "../../solve/build.ts";
import { balanceOf } from "./record/balance.ts";
import { frameOf } from "./record/frame.ts";
import { hardwareRecord, motionRecord } from "./record/hardware.ts";
import { drillRecord, fastenerRecord, holeRecord, jointRecord } from "./record/joints.ts";
import { type Json, printJson } from "./record/json.ts";
import { layoutRecord, proofRecord, purchaseRecord } from "./record/layouts.ts";
import { millimetres } from "./record/number.ts";
import { blankRecord, cutLineRecord, partRecords } from "./record/parts.ts";
import { stepRecord } from "./record/steps.ts";

export interface RecordMeta {
  /** The source's file name without its folder. */
  readonly sourceName: string;
  /** Hexadecimal digest of the source's bytes. */
  readonly sourceSha256: string;
  /** The file of the workshop, where one was used. */
  readonly workshop?: { readonly file: string; readonly sha256: string };
  /** The compiler's version; null in the record where it is not given. */
  readonly version?: string;
  /** The pages of the plan, where pages were made. */
  readonly pages?: readonly { readonly number: number; readonly kind: string; readonly of: readonly string[] }[];
}

/** The record as JSON text that ends with a newline. Throws a RangeError when the build holds a number that is not finite. */
export function writeRecord(build: Build, meta: RecordMeta): string {
  const { design } = build;
  const frame = frameOf(build.parts.map((part) => part.solid));
  const balance = balanceOf(build.parts);
  return printJson({
    format: "boardwright-record",
    version: 1,
    compiler: meta.version ?? null,
    tolerance: 0.01,
    title: design.title,
    units: design.units,
    precision: millimetres(design.precision),
    source: {
      file: meta.sourceName,
      sha256: meta.sourceSha256,
      sizes: new Map([...design.sizes].map(([name, size]) => [name, millimetres(size)])),
      choices: new Map((design.choices ?? []).map(({ name, option }) => [name, option])),
      measured: new Map(
        design.stock.filter(({ measured }) => measured).map(({ name, thickness }) => [name, millimetres(thickness)]),
      ),
      workshop: meta.workshop ? { ...meta.workshop } : null,
    },
    bounds: { min: frame.point(frame.low), max: frame.point(frame.high) },
    mass: balance.mass,
    centreOfMass: balance.centre === undefined ? [0, 0, 0] : frame.vec(balance.centre),
    parts: partRecords(build, frame),
    blanks: build.blanks.map(blankRecord),
    cutList: build.cutList.map((line) => cutLineRecord(line, build)),
    joints: build.joints.map((joint) => jointRecord(joint, frame)),
    fasteners: build.fasteners.map((fastener) => fastenerRecord(fastener, frame)),
    holes: build.holes.map((hole) => holeRecord(hole, frame)),
    drilling: build.drilling.map(drillRecord),
    hardware: build.hardware.map((each) => hardwareRecord(each, frame)),
    motions: build.motions.map((each) => motionRecord(each, frame)),
    jigs: (build.jigs ?? []).map(({ id, what, width, length, count, holes, from, thickness }) => ({
      ...{ id, for: what, count, width: millimetres(width), length: millimetres(length), from },
      thickness: thickness && millimetres(thickness),
      holes: holes.map(({ x, y, diameter }) => ({
        x: millimetres(x),
        y: millimetres(y),
        diameter: millimetres(diameter),
      })),
    })),
    patterns: (build.patterns ?? []).map(({ id, what, marks, width, height, full }) => ({
      ...{ id, for: what, marks, width: millimetres(width), height: millimetres(height), full },
    })),
    layouts: build.layouts.map(layoutRecord),
    layoutProof: build.layoutProof.map(proofRecord),
    purchases: build.purchases.map(purchaseRecord),
    steps: build.steps.map((step) => stepRecord(step, frame)),
    timeline: {
      ...build.timeline,
      days: build.timeline.days.map(({ first, last, steps, again, bench, dries }) => ({
        ...{ first, last, again, bench, dries },
        steps: steps ?? [],
      })),
    },
    tools: build.tools.map(({ tool, why }) => ({ tool, why, instead: "" })),
    finishing: (build.finishing ?? []).map(({ surface, area, coats, product }) => ({
      ...{ surface, coats, product },
      area: Math.round(area * 1e6),
    })),
    checks: build.checks.map(checkRecord),
    findings: build.findings.map(findingRecord),
    pages: (meta.pages ?? []).map(({ number, kind, of }) => ({ number, kind, of })),
  });
}

const checkRecord = (check: Build["checks"][number]): Json => ({
  rule: check.rule,
  subject: check.subject,
  verdict: check.verdict,
  value: check.value,
  limit: check.limit,
  unit: check.unit,
  basis: check.basis,
  because: check.because ?? null,
  holdsFrom: check.holdsFrom ?? null,
});

const findingRecord = (finding: Finding): Json => ({
  rule: finding.rule,
  severity: finding.severity,
  message: finding.message,
  help: finding.help ?? "",
  line: finding.at.line,
  column: finding.at.column,
  when: new Map([
    ...(finding.when ?? []),
    ...(finding.where ?? []).map(({ stock, measures }) => [stock, measures] as const),
  ]),
});
