/** `workshop.yaml`: bytes to what there is in the workshop. */
import type { Finding } from "../../findings/finding.ts";
import { failed, hasErrors, type Outcome } from "../../findings/outcome.ts";
import type { Formula, LengthSold, PriceDraft, SheetSold, Units, WoodOnHand, WorkshopDraft } from "../draft.ts";
import { readFile, type Source } from "../index.ts";
import { byPlace } from "../order.ts";
import { workshop } from "../schema/workshop.ts";
import { measureIn } from "./measures.ts";

type Said = NonNullable<ReturnType<typeof workshop.read>>["said"];

/** There is a value exactly when no finding is an error. Findings name the file. Never throws. */
export function readWorkshop({ name, bytes }: Source): Outcome<WorkshopDraft> {
  const file = readFile(bytes, name);
  if (file.value === undefined) return failed(file.findings);
  const { node, places } = file.value;
  const findings: Finding[] = [...file.findings];
  const where = { key: "the workshop", at: places(0, 1), findings, owners: () => [] };
  const read = workshop.read(node, where);
  const value = read && toDraft(name, read.said, findings);
  const told = byPlace(findings);
  return value === undefined || hasErrors(told) ? failed(told) : { value, findings: told };
}

function toDraft(file: string, said: Said, findings: Finding[]): WorkshopDraft {
  const units = said.units?.value ?? "inch";
  const measure = (key: string, formula: Formula, zero = false) => measureIn(formula, { units, key, findings, zero });
  const kerf = said.kerf && measure("kerf", said.kerf.value, true);
  const squaring = said["squaring cut"] && measure("squaring cut", said["squaring cut"].value, true);
  const clamp = said["longest clamp"] && measure("longest clamp", said["longest clamp"].value);
  const car = said["fits the car"]?.value;
  const [width, length] = car ? [measure("fits the car", car.wide), measure("fits the car", car.long)] : [];
  const tools = said["tools owned"]?.value;
  const inUnits = (formulas: readonly Formula[] | undefined) => formulas?.map((each) => own(each, units));
  const [mortiseBits, routerBits] = [inUnits(tools?.mortiseBits), inUnits(tools?.routerBits)];
  return {
    file,
    ...(kerf && { kerf }),
    ...(squaring && { squaring }),
    ...(width && length && { carries: { width, length } }),
    ...(said.paper && { paper: said.paper.value }),
    ...(clamp && { longestClamp: clamp }),
    wood: (said["wood on hand"]?.value ?? []).flatMap(({ said: piece }): readonly WoodOnHand[] => {
      const wide = piece.wide && measure("wide", piece.wide.value);
      const long = measure("long", piece.long.value);
      if (long === undefined || (piece.wide !== undefined && wide === undefined)) return [];
      const count = piece.count?.value ?? 1;
      return [{ at: piece.of.at, of: piece.of.value, ...(wide && { wide }), long, count }];
    }),
    supplies: (said["supplies on hand"]?.value ?? []).map(({ name, value }) => ({ of: name, count: value })),
    prices: (said.prices?.value ?? []).map(({ name, at, value }) => priceOf(name, at, value, units)),
    ...((mortiseBits || routerBits) && {
      tools: { ...(mortiseBits && { mortiseBits }), ...(routerBits && { routerBits }) },
    }),
  };
}

type Price = Omit<PriceDraft, "of" | "at">;

const priceOf = (of: string, at: PriceDraft["at"], { each, sheets, lengths }: Price, units: Units): PriceDraft => ({
  of,
  at,
  ...(each && { each }),
  ...(sheets && {
    sheets: sheets.map((one): SheetSold => ({ ...one, wide: own(one.wide, units), long: own(one.long, units) })),
  }),
  ...(lengths && { lengths: lengths.map((one): LengthSold => ({ ...one, long: own(one.long, units) })) }),
});

/** The plan may be in other units than the workshop: a bare number is given the workshop's. */
function own(formula: Formula, units: Units): Formula {
  if (formula.kind !== "number") return formula;
  const findings: Finding[] = [];
  const value = measureIn(formula, { units, key: "", findings, zero: true });
  return value ? { kind: "measure", value, at: formula.at } : formula;
}
