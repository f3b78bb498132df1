/** From a Build to the pages of its plan. */
import { type Outcome, outcome } from "../findings/outcome.ts";
import type { Build } from "../solve/build.ts";
import type { Document, Item, Page, Paper } from "./document.ts";
import { ifItDoesNotFit, inTheRoom } from "./pages/advice.ts";
import { beforeYouStart } from "./pages/before.ts";
import { tools, whatToBuy } from "./pages/buy.ts";
import { unprintable } from "./pages/characters.ts";
import { allChecks, whatWasChecked } from "./pages/checked.ts";
import { anchorsOf, cited } from "./pages/citing.ts";
import { coverItems } from "./pages/cover.ts";
import { cutList } from "./pages/cut-list.ts";
import { finishing } from "./pages/finishing.ts";
import { gluing } from "./pages/gluing.ts";
import { holesAndScrews } from "./pages/holes.ts";
import { layoutPages } from "./pages/layouts.ts";
import { measureFirst } from "./pages/measure-first.ts";
import { milling } from "./pages/milling.ts";
import { otherwise } from "./pages/otherwise.ts";
import { partDrawings } from "./pages/part-drawings.ts";
import { exploded, inside, views } from "./pages/piece.ts";
import { makePlan, type Plan } from "./pages/plan.ts";
import { rights } from "./pages/rights.ts";
import { runningHead } from "./pages/running-head.ts";
import { shotList } from "./pages/shots.ts";
import { stepPages } from "./pages/steps.ts";
import { templates } from "./pages/templates.ts";
import { timePage } from "./pages/time.ts";
import { A4, content, LETTER } from "./style.ts";
import { flow, type Section } from "./typeset/flow.ts";

export interface RenderOptions {
  readonly paper: Paper["name"];
  /** ISO date for the file's properties. */
  readonly date: string;
  readonly version: string;
  /** Whose copy it is, printed on every page. */
  readonly buyer?: string;
  /** The copy of the plan's own maker, with photographs to take and all checks. */
  readonly author?: boolean;
}

/** In the order of the plan. A section without anything to say is left out. */
export const SECTIONS: readonly ((plan: Plan) => Section | null)[] = [
  views,
  exploded,
  inside,
  beforeYouStart,
  whatToBuy,
  tools,
  measureFirst,
  cutList,
  layoutPages,
  milling,
  partDrawings,
  holesAndScrews,
  templates,
  timePage,
  gluing,
  stepPages,
  finishing,
  inTheRoom,
  ifItDoesNotFit,
  otherwise,
  whatWasChecked,
  rights,
];
const FOR_THE_AUTHOR = [shotList, allChecks];

export function render(build: Build, options: RenderOptions): Outcome<Document> {
  const paper = options.paper === "a4" ? A4 : LETTER;
  const frame = content(paper);
  const plan = makePlan(build, frame, options);
  const sections = [...SECTIONS, ...(plan.author ? FOR_THE_AUTHOR : [])]
    .map((section) => section(plan))
    .filter((section) => section !== null);
  const filled = flow(sections, frame);
  const total = filled.length + 1;
  const entries = sections.map(({ name, title }) => ({
    name,
    title,
    page: filled.findIndex((page) => page.begins.includes(name)) + 2,
  }));
  const cover: Page = { number: 1, kind: "cover", of: [], items: coverItems(plan, paper, entries) };
  const anchors = anchorsOf(filled.map(({ items }) => items));
  const pages = filled.map(({ kind, of, items }, i): Page => {
    const head: Item[] = runningHead(plan, paper, i + 2, total);
    return { number: i + 2, kind, of, items: [...head, ...cited(items, i + 2, anchors)] };
  });
  const { title, by, subtitle, summary } = build.design;
  const document: Document = {
    title,
    author: by,
    subject: subtitle === "" ? summary : subtitle,
    language: "en-US",
    date: options.date,
    producer: `Boardwright ${options.version}`,
    paper,
    pages: [cover, ...pages],
  };
  return outcome(document, unprintable(build, options.buyer));
}
