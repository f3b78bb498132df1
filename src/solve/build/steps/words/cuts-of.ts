/** Cuts of several parts, named together. */
import { listed, series, type Work } from "../draft.ts";
import { sameWhat } from "../which-way/one.ts";
import type { Sign } from "../which-way/sign.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { calledAmong } from "./by-place.ts";

type Cut = Pick<Sign, "part" | "what">;

/** "the groove of the end rail (F) and the rabbets of the stile (A) and two rails (B)" */
export function subjects(work: Work, some: readonly Cut[], there: readonly string[]) {
  const told = groupedBy(some, sameWhat).map((own) => {
    const [{ what }] = own as [Cut];
    const ids = own.map(({ part }) => part.id);
    const alike = new Set(ids.map((id) => work.line(id).mark)).size === 1;
    const many = what.count > 1 || !alike;
    return {
      many,
      text: `the ${many ? what.many : what.one}${what.more} of ${alike ? each(work, ids, there) : all(work, ids, there)}`,
    };
  });
  return { text: series(told.map(({ text }) => text)), many: told.length > 1 || told.some(({ many }) => many) };
}

/** "the packing (G)", "each of two packings (G)" */
export const each = (work: Work, ids: readonly string[], there: readonly string[]): string =>
  `${ids.length > 1 ? "each of " : ""}${all(work, ids, there)}`;

/** By name, or by place where others of their mark are there. */
const all = (work: Work, ids: readonly string[], there: readonly string[]): string =>
  series(
    groupedBy(ids, (id) => work.line(id).mark).flatMap((own) =>
      isAll(work, own, there) ? [listed(work, own)] : own.map((id) => `the ${calledAmong(work, id, there)}`),
    ),
  );

const isAll = (work: Work, own: readonly string[], there: readonly string[]): boolean =>
  there.filter((id) => own.some((one) => work.line(one).mark === work.line(id).mark)).length === own.length;
