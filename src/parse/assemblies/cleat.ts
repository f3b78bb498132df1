import type { Span } from "../../findings/span.ts";
import type { Settings } from "../expand/make.ts";
import { joinWords, measure, partName, sizeOf, stockName } from "../kinds/kept.ts";
import type { Where } from "../kinds/kind.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { text, word, yesNo } from "../kinds/simple.ts";
import { assembly, type Expanded, type Site } from "./assembly.ts";

const forms = word(["rail", "bevelled pair"], {
  "hanging rail": "rail",
  "bevelled cleats": "bevelled pair",
  "beveled cleats": "bevelled pair",
  "beveled pair": "bevelled pair",
});

const own = settings("a cleat", {
  "made of": need(stockName, "Its stock."),
  case: need(partName, "The case that hangs by it."),
  form: may(
    forms,
    "A rail inside the case, before its back, through which it is screwed to the wall, if nothing is said; or a pair of cleats behind its back, of which one is on the wall.",
  ),
  "hangs from": may(partName, "What lies on it: the top panel of the case if nothing is said."),
  wide: may(sizeOf, "How high it is, of a pair each: 3 in or 75 mm if nothing is said.", "width"),
  play: may(measure, "How far the cleat on the wall ends short of the sides: 3/4 in or 20 mm if nothing is said."),
  spacer: may(
    yesNo,
    "Whether there is a strip of the same thickness at the lower edge of a pair, so that it hangs plumb: yes if nothing is said.",
    "spacer below",
  ),
  join: may(
    joinWords,
    "What holds it between the sides, besides glue under what lies on it: screws if nothing is said.",
  ),
  screws: may(text(100), "The screws into the wall: a name of `hardware`, or the usual ones."),
  count: may(measure, "How many of them: one for each stud that there is room for, if nothing is said."),
});
type Said = Fields<typeof own.keys>;

/** Read twice: what is wrong in it is told when the cleat is opened. */
const quietly = (at: Span): Where => ({ key: "form", at, findings: [], owners: () => [] });

/** What a case hangs on a wall by. */
export const cleat = assembly({
  kind: "cleat",
  also: ["cleats", "hanging-rail", "bevelled-cleats", "beveled-cleats"],
  meaning: "What a case hangs by: a rail that is screwed to the wall, or a bevelled pair of cleats.",
  makes: "Its part is `rail`; of a pair `upper-cleat`, `wall-cleat` and `spacer`.",
  settings: own,
  behindBack: (written) => {
    const [form, stock] = [written("form"), written("made of")];
    const pair = form?.kind === "text" && forms.read(form, quietly(form.at)) === "bevelled pair";
    return pair && stock?.kind === "text" ? stock : null;
  },
  expand: (said: Said, site: Site): Expanded =>
    said.form?.value === "bevelled pair" ? pairOf(said, site) : railOf(said, site),
});

/** On edge between the sides of the case; `more` says where it lies in the other two directions. */
function member(said: Said, { write }: Site, more: Settings): Settings {
  const of = said.case.value;
  return {
    ...{ "made of": said["made of"].value, as: "on edge", facing: "front" },
    ...{ left: write`${of}.left-side.right`, right: write`${of}.right-side.left`, ...more },
  };
}

const height = (said: Said, { usual, write }: Site) => said.wide?.value ?? write`${usual("3", "75")}`;
const bearer = (said: Said, { write }: Site) => said["hangs from"]?.value ?? write`${said.case.value}.top-panel`;

/** What holds a member between the sides; and, along its whole length, under what lies on it. */
const between = (name: string, said: Said, { write }: Site): Settings => ({
  join: name,
  to: [write`${said.case.value}.left-side`, write`${said.case.value}.right-side`],
  ...(said.join?.value ?? { with: "screws" }),
});
const under = (name: string, said: Said, site: Site): Settings => ({
  join: name,
  to: bearer(said, site),
  with: "glue",
});

const screwed = (to: string, said: Said, more: Settings): Settings => ({
  ...{ fit: said.screws?.value ?? "wall screw", to, face: "front", ...more },
  ...(said.count && { count: said.count.value }),
});

function railOf(said: Said, site: Site): Expanded {
  const { write } = site;
  const over = bearer(said, site);
  const back = write`${said.case.value}.back-panel`;
  const rail = member(said, site, { back: write`${back}.front`, top: write`${over}.bottom`, up: height(said, site) });
  return {
    entries: { rail: { called: "hanging rail", ...rail } },
    joints: [between("rail", said, site), under("rail", said, site)],
    fittings: [screwed("rail", said, { through: [back] })],
  };
}

/** Behind the back, level with the back edges of the case: both bevels fall towards the wall by as much as the wood is thick. */
function pairOf(said: Said, site: Site): Expanded {
  const { write, usual } = site;
  const of = said.case.value;
  const [stock, over, wide] = [said["made of"].value, bearer(said, site), height(said, site)];
  const thick = write`${stock}.thickness`;
  const play = said.play?.value ?? write`${usual("3/4", "20")}`;
  const back = write`${of}.room.back`;
  const slope = { wide: thick, deep: thick };
  const entries: Record<string, Settings> = {
    "upper-cleat": {
      ...{ called: "upper cleat", ...member(said, site, { back, top: write`${over}.bottom`, up: wide }) },
      bevel: { along: "bottom front", ...slope },
    },
    "wall-cleat": {
      ...{ called: "wall cleat", ...member(said, site, { back, top: write`upper-cleat.bottom + ${thick}`, up: wide }) },
      ...{ left: write`${of}.left-side.right + ${play}`, right: write`${of}.right-side.left - ${play}` },
      bevel: { along: "top back", ...slope },
    },
  };
  const joints = [
    between("upper-cleat", said, site),
    under("upper-cleat", said, site),
    { join: "upper-cleat", to: "wall-cleat", with: "hangs on" } as Settings,
  ];
  if (said.spacer?.value !== false) {
    entries.spacer = member(said, site, { back, bottom: write`${of}.bottom-panel.top`, up: wide });
    joints.push(between("spacer", said, site));
  }
  return { entries, joints, fittings: [screwed("wall-cleat", said, { sunk: "yes" })] };
}
