/** Which end, edge or face of a part goes where that could come the wrong way round as well. */
import type { Face } from "../../../design.ts";
import { capital, listed, numberWord, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { faceAt, type One, onesOf, sameWhat } from "../which-way/one.ts";
import type { Sign } from "../which-way/sign.ts";
import { toldOf } from "../which-way/told.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { calledAmong } from "./by-place.ts";
import { each, subjects } from "./cuts-of.ts";

/** What of a part shows which way round it comes, where no joint does. */
export interface Ends {
  /** "The groove of the end rail (F) faces right.": to be seen before anything goes together. */
  readonly turned: readonly string[];
  /** What has to be seen to as it goes together. */
  readonly flush: readonly string[];
}

export function endTexts(work: Work, moves: readonly Move[]): Ends {
  const { signs, as, lying } = toldOf(work, moves);
  const flush = signs.filter(({ how }) => how === "flush");
  const others = signs.filter(({ how }) => how !== "flush");
  const ones = onesOf(work, others).toSorted((a, b) => Number(a.looks === null) - Number(b.looks === null));
  const [first] = moves;
  const comes = moves.flatMap(({ arriving }) => arriving);
  const there = [...new Set([...(first?.starts ? first.present : []), ...comes, ...signs.map(({ part }) => part.id)])];
  // A name may tell it.
  const places = lying.filter(({ part, way }) => !calledAmong(work, part.id, there).split(" ").includes(faceAt(way)));
  const turned = [
    ...places.map(({ part, way }) => `The ${calledAmong(work, part.id, there)} lies ${PLACES[faceAt(way)]}.`),
    ...groupedBy(ones, keyOf).map((some) => sentence(work, some, as, there)),
  ];
  return {
    turned,
    flush: groupedBy(flush, ({ what, with: mates = [] }) => `${what.one} ${listed(work, mates)}`).map((some) => {
      const names = subjects(work, some, there);
      const mates = [...new Set(some.flatMap((sign) => sign.with ?? []))];
      return `${capital(names.text)} ${names.many ? "are" : "is"} flush with ${listed(work, mates)}.`;
    }),
  };
}

const PLACES: Readonly<Record<Face, string>> = {
  left: "on the left",
  right: "on the right",
  front: "in front",
  back: "at the back",
  bottom: "at the bottom",
  top: "at the top",
};

/** What only looks one way is told in one sentence. */
const keyOf = (one: One): string => {
  const lies = one.lies.map(({ how, face, word }) => `${how} ${face} ${word}`).join();
  return one.looks && lies === "" ? one.looks : `${one.looks} ${lies} ${sameWhat(one)}`;
};

function sentence(work: Work, some: readonly One[], as: readonly Sign[], there: readonly string[]): string {
  const [{ looks, lies, what }] = some as [One];
  const ids = some.map(({ part }) => part.id);
  const sided = (how: One["lies"][number]["how"]): readonly string[] => {
    const own = lies.flatMap((each) => (each.how === how ? [`${each.face} ${each.word}`] : []));
    return own.length > 0 ? [`${how} the ${series(own)}`] : [];
  };
  if (looks === null) {
    const near = lies.filter(({ how }) => how === "nearer to");
    const [at] = sided("at");
    const turned = near.length > 0 ? [nearText(what, near, each(work, ids, there))] : [];
    if (what.across !== undefined) return lies.map((side) => moreText(what, side, each(work, ids, there))).join(" ");
    const cuts = `The ${what.count > 1 ? what.many : what.one}${what.more} ${what.count > 1 ? "lie" : "lies"}`;
    return [...(at ? [`${cuts} ${at} of ${each(work, ids, there)}.`] : []), ...turned].join(" ");
  }
  const names = subjects(work, some, there);
  const like = as.filter(({ way, part }) => faceAt(way) === looks && !ids.includes(part.id));
  const sides = [...sided("at"), ...sided("nearer to")].map((side) => `, ${side}`).join("");
  return `${capital(names.text)} ${names.many ? "face" : "faces"} ${FACING[looks]}${sides}${asText(work, like, there)}.`;
}

const FACING: Readonly<Record<Face | "inwards", string>> = {
  ...{ left: "left", right: "right", front: "the front", back: "the back", bottom: "the bottom", top: "the top" },
  inwards: "inwards",
};

/** "Of the slab (A) the front edge has one chamfer, the edge across from it none.": what runs round three sides. */
const moreText = (
  { one, many, count, across = 0 }: One["what"],
  { face, word }: One["lies"][number],
  parts: string,
): string => {
  const has = `${numberWord(count)} ${count > 1 ? many : one}`;
  return `Of ${parts} the ${face} ${word} has ${has}, the ${word} across from it ${across === 0 ? "none" : numberWord(across)}.`;
};

/** "Turn the packing (G) so that the end with a hole for the side slide nearer to it comes to the front.": what lies in no side's middle shows it. */
function nearText({ one, many, count, more, some }: One["what"], near: One["lies"], parts: string): string {
  const name = `${count > 1 ? many : one}${more}`;
  const what = some ? (count > 1 ? name : `${/^[aeiou]/u.test(name) ? "an" : "a"} ${name}`) : `the ${name}`;
  const ways = near.map(
    ({ word, face }, i) => `the ${word} with ${i === 0 ? what : "them"} nearer to it comes to the ${face}`,
  );
  return `Turn ${parts} so that ${series(ways)}.`;
}

/** ", as the mortise for the side rail (D) in the post (A) does": by which it is seen. */
function asText(work: Work, like: readonly Sign[], there: readonly string[]): string {
  const [own] = groupedBy(like, sameWhat);
  if (!own) return "";
  const { text, many } = subjects(work, own, there);
  return `, as ${text} ${many ? "do" : "does"}`;
}
