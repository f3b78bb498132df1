/** The whole compiler: text to Draft to Design to Build to Document to bytes. Pure. */
import { andThen, failed, hasErrors, type Outcome, outcome } from "./findings/outcome.ts";
import type { Draft, WorkshopDraft } from "./parse/draft.ts";
import { printTree } from "./parse/expand/print.ts";
import { draftOf, includes, openTree, type ParseOptions, readTree, type Source, type Tree } from "./parse/index.ts";
import { readWorkshop } from "./parse/workshop/index.ts";
import type { Document, Font, Paper } from "./render/document.ts";
import { build } from "./solve/build/index.ts";
import type { Build } from "./solve/build.ts";
import { type DesignOptions, design } from "./solve/design/index.ts";
import { inWorkshop } from "./solve/design/workshop.ts";
import { type Jumps, jumpsOf } from "./solve/jumps/index.ts";
import { underEveryOption } from "./solve/options/index.ts";
import { freeSizes, otherwiseOf, singleChanges } from "./solve/options/otherwise.ts";
import { overThickness } from "./solve/thickness/index.ts";

export { includes, type Source };

export interface SolveOptions extends DesignOptions {
  /** The option asked for in a choice, by the choice's name. */
  readonly choose?: ReadonlyMap<string, string>;
  /** `workshop.yaml`, if there is one. */
  readonly workshop?: Source;
}

export interface PrintOptions {
  /** Absent: what the workshop's printer holds, else letter for a plan in inches and A4. */
  readonly paper?: Paper["name"];
  /** ISO date for the file's properties. */
  readonly date: string;
  readonly version: string;
  /** Whose copy it is. */
  readonly buyer?: string;
  /** The copy of the plan's own maker. */
  readonly author?: boolean;
}

/** Checks a plan under every option and works everything out under those asked for. Loads nothing that only drawing needs. */
export function solve(source: Source, options: SolveOptions): Outcome<Build> {
  const workshop = options.workshop === undefined ? { findings: [] } : readWorkshop(options.workshop);
  const solved = solveTree(source, options, workshop.value);
  const findings = [...workshop.findings, ...solved.findings.filter(({ rule }) => told(rule, options))];
  return hasErrors(findings) ? failed(findings) : { ...solved, findings };
}

/** What a plan accepts it accepts in its own sizes; in others it need not be met. */
const told = (rule: string, { sizes }: SolveOptions): boolean => sizes.size === 0 || rule !== "nothing-to-accept";

function solveTree(source: Source, options: SolveOptions, workshop: WorkshopDraft | undefined): Outcome<Build> {
  return andThen(readTree(source), (tree) => {
    const asked = draftIn(workshop, tree, options);
    const solveDraft = (draft: Draft, effort?: "plain"): Outcome<Build> =>
      andThen(design(draft, options), (each) => build(each, undefined, effort));
    const plain = andThen(asked, solveDraft);
    const draft = asked.value;
    const drawn = andThen(asked, (each) => overThickness(each, options, plain));
    const solved = draft
      ? andThen(drawn, (value) => outcome({ ...value, freeSizes: freeSizes(draft, value.design.sizes) }))
      : drawn;
    if (draft === undefined || draft.choices.length === 0) return solved;
    const changes = singleChanges(draft.choices, draft.chosen);
    const others = new Map<string, Build>();
    const findings = underEveryOption(draft, solved.findings, {
      read: (choose) => draftIn(workshop, tree, { choose }),
      solve: (each) => {
        const single = changes.some(({ under }) => nameOf(under) === nameOf(each.chosen));
        const { value, findings } = solveDraft(each, single ? undefined : "plain");
        if (single && value) others.set(nameOf(each.chosen), value);
        return findings;
      },
    });
    if (hasErrors(findings)) return failed(findings);
    // What means the same as under other options was not solved again.
    const under = (choose: ReadonlyMap<string, string>): Build | undefined =>
      others.get(nameOf(choose)) ?? andThen(draftIn(workshop, tree, { choose }), (each) => solveDraft(each)).value;
    // Compared as they were solved: for the one thickness that is drawn.
    const otherwise = changes.flatMap(({ choice, option, under: choose }) => {
      const [here, there] = [plain.value, under(choose)];
      return (here && there && otherwiseOf(choice, option, here, there)) ?? [];
    });
    return { ...(solved.value && { value: { ...solved.value, otherwise } }), findings };
  });
}

const nameOf = (under: ReadonlyMap<string, string>): string => JSON.stringify([...under]);

/** The plan under some options, as it is made in a workshop. */
const draftIn = (workshop: WorkshopDraft | undefined, tree: Tree, options: ParseOptions): Outcome<Draft> =>
  andThen(draftOf(tree, options), (draft) => outcome(inWorkshop(draft, workshop)));

/** Where copies of a plan with other sizes or other stock take more, longer or other things. Solves the plan dozens of times for each range. */
export function jumps(source: Source, options: SolveOptions): Outcome<readonly Jumps[]> {
  const workshop = options.workshop && readWorkshop(options.workshop).value;
  return andThen(readTree(source), (tree) =>
    andThen(draftIn(workshop, tree, options), (draft) =>
      andThen(andThen(design(draft, options), build), (drawn) => ({
        value: jumpsOf(draft, options, drawn),
        findings: [],
      })),
    ),
  );
}

/** The plan with its choices made and its assemblies opened, as YAML. */
export function expandSource(source: Source, choose: ReadonlyMap<string, string>): Outcome<string> {
  return andThen(readTree(source), (tree) => {
    const findings = [...tree.findings];
    const { tree: opened } = openTree(tree, { choose }, findings);
    return hasErrors(findings) ? failed(findings) : { value: printTree(opened), findings };
  });
}

/** Draws the pages of a plan without errors. */
export async function compile(solved: Outcome<Build>, options: PrintOptions): Promise<Outcome<Document>> {
  if (hasErrors(solved.findings)) return failed(solved.findings);
  const { render } = await import("./render/index.ts");
  return andThen(solved, (b) =>
    render(b, {
      ...options,
      paper: options.paper ?? b.design.workshop?.paper ?? (b.design.units === "inch" ? "letter" : "a4"),
    }),
  );
}

/** The pages as a PDF. */
export async function toPdf(document: Document, fonts: Readonly<Record<Font, Uint8Array>>): Promise<Uint8Array> {
  const { writePdf } = await import("./render/write/pdf.ts");
  return writePdf(document, fonts);
}
