/** The piece itself: views with dimensions, and the parts drawn apart. */
import { SPACE, TYPE } from "../style.ts";
import { baseline, block } from "../typeset/atom.ts";
import type { Section } from "../typeset/flow.ts";
import { fit, label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";
import { type Picture as Figure, sectionsPicture, viewsPicture } from "./pictures.ts";
import { type Plan, sectionHeading } from "./plan.ts";
import { type Figures, takenApart } from "./taken-apart.ts";

const HEADING = TYPE.section.leading;
const CAPTION = 20;

const figure = ({ height, paint }: Figure): Figures => ({ height, paint: (x, y) => [paint(x, y)] });

export function views(plan: Plan): Section | null {
  if (plan.build.parts.length === 0) return null;
  const { width, height } = plan.frame;
  const picture = figure(viewsPicture(plan, { width, height: height - HEADING - CAPTION - 8 }));
  const { printer } = plan;
  const unit = printer.unit === "in" ? "inches" : "millimetres";
  return page("views", "The piece", "views", plan, picture, `Front, side and top. Dimensions in ${unit}.`);
}

/** The piece cut open; only where the views leave a part unseen. */
export function inside(plan: Plan): Section | null {
  const { width, height } = plan.frame;
  const picture = sectionsPicture(plan, { width, height: height - HEADING - CAPTION - 8 });
  if (picture === null) return null;
  const caption = "Cut open; cut wood is tinted and has its marks. Only what the views do not tell is measured.";
  return { ...page("inside", "Inside the piece", "inside", plan, figure(picture), caption), start: "fits" };
}

export function exploded(plan: Plan): Section | null {
  const { build, frame } = plan;
  if (build.parts.length < 2) return null;
  const key = legend(plan);
  const own = frame.height - HEADING - CAPTION - key.height - 20;
  const left = build.parts.length > FEW ? 0 : own - heightOf(views(plan)) - SPACE.section;
  const size = { width: frame.width, height: left >= own * ENOUGH ? left : own };
  const section = page(
    "parts",
    "The parts",
    "exploded",
    plan,
    takenApart(plan, size),
    "The letters are the marks of the cut list.",
  );
  return { ...section, start: "fits", atoms: [...section.atoms, key] };
}

/** So few parts are drawn below the views where so much of a page is left. */
const FEW = 14;
const ENOUGH = 0.33;
const heightOf = (section: Section | null): number =>
  section?.atoms.reduce((sum, atom) => sum + atom.above + atom.height, 0) ?? 0;

function page(name: string, title: string, kind: string, plan: Plan, picture: Figures, caption: string): Section {
  const { width } = plan.frame;
  const drawn = block(
    CAPTION + picture.height,
    (x, y) => [
      { kind: "group", role: "paragraph", items: [label(caption, TYPE.caption, x, y + baseline(TYPE.caption))] },
      ...picture.paint(x, y + CAPTION),
    ],
    { above: 4 },
  );
  return { name, title, kind, start: "page", atoms: [...sectionHeading(name, title, width), drawn] };
}

/** Marks and names of the parts, in as many columns as the page is wide. */
function legend({ build, frame }: Plan) {
  const entries = build.cutList.map(({ mark, name, parts }) => ({
    mark,
    text: parts.length > 1 ? `${name} × ${parts.length}` : name,
  }));
  const style = TYPE.caption;
  const marks = Math.max(0, ...entries.map((e) => measure(e.mark, "bold", style.size))) + 6;
  const widest = Math.max(0, ...entries.map((e) => measure(e.text, style.font, style.size)));
  const columns = Math.max(
    1,
    Math.min(5, entries.length, Math.floor(frame.width / Math.min(marks + widest + 16, frame.width / 2))),
  );
  const rows = Math.ceil(entries.length / columns);
  const pitch = frame.width / columns;
  return block(
    rows * 16,
    (x, y) => [
      {
        kind: "group",
        role: "list",
        items: entries.map((entry, i) => {
          const left = x + Math.floor(i / rows) * pitch;
          const base = y + (i % rows) * 16 + baseline({ ...style, leading: 16 });
          const name = fit(entry.text, style, pitch - marks - 8);
          return {
            kind: "group",
            role: "list item",
            items: [
              label(entry.mark, { ...TYPE.head, ink: TYPE.body.ink }, left, base),
              label(name, style, left + marks, base),
            ],
          };
        }),
      },
    ],
    { above: 12 },
  );
}
