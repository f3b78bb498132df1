import type { BuildRecord } from "../record.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { at, type Row } from "./row.ts";

const sheet = (r: BuildRecord) => at(r.layouts, 0);

export const layouts: readonly Row[] = [
  [
    "a cut that is missing",
    stool,
    (r) => {
      sheet(r).cuts = sheet(r).cuts.filter((cut) => cut.number !== 4);
    },
    "cuts give the placements",
  ],
  [
    "a cut through two pieces",
    stool,
    (r) => {
      at(sheet(r).cuts, 4).from = [3, 303];
    },
    "cut splits one piece",
    "cuts give the placements",
  ],
  [
    "a cut that ends inside a piece",
    stool,
    (r) => {
      at(sheet(r).cuts, 2).to = [150, 403];
    },
    "cut splits one piece",
    "cuts give the placements",
    "fence is set to the cut",
  ],
  [
    "cuts in an order that cannot be sawn",
    stool,
    (r) => {
      at(sheet(r).cuts, 2).number = 0;
    },
    "cut splits one piece",
    "cuts give the placements",
    "fence is set to the cut",
  ],
  [
    "a fence at another size",
    stool,
    (r) => {
      at(sheet(r).cuts, 4).fence = 301;
    },
    "fence is set to the cut",
  ],
  [
    "a kerf forgotten",
    stool,
    (r) => {
      at(sheet(r).placements, 1).y = 403;
      Object.assign(at(sheet(r).cuts, 3), { from: [3, 703], to: [203, 703], fence: 297 });
    },
    "cuts give the placements",
  ],
  [
    "a kerf that the saw does not have",
    stool,
    (r) => {
      sheet(r).kerf = 3.2;
    },
    "cut splits one piece",
    "cuts give the placements",
    "fence is set to the cut",
    "offcuts are left over",
  ],
  [
    "a part over the end of the sheet",
    stool,
    (r) => {
      sheet(r).length = 700;
      at(sheet(r).offcuts, 0).length = 394;
      at(sheet(r).offcuts, 1).length = 697;
      for (const i of [0, 1]) at(sheet(r).cuts, i).to[1] = 700;
    },
    "cut splits one piece",
    "cuts give the placements",
    "placements lie inside",
  ],
  [
    "two parts on one place",
    stool,
    (r) => {
      Object.assign(at(sheet(r).placements, 1), { x: 206, y: 3 });
    },
    "placements do not overlap",
    "cuts give the placements",
  ],
  [
    "an offcut that is a part",
    stool,
    (r) => {
      Object.assign(at(sheet(r).offcuts, 0), { y: 3, length: 100 });
    },
    "offcuts are left over",
  ],
  [
    "a board across the grain",
    slab,
    (r) => {
      at(r.blanks, 0).grain = "width";
    },
    "grain is obeyed",
  ],
  [
    "a part cut from other stock",
    slab,
    (r) => {
      at(r.layouts, 0).thickness = 18;
    },
    "stock is the blank's",
  ],
  [
    "fewer counted than laid out",
    slab,
    (r) => {
      Object.assign(at(r.layoutProof, 0), { count: 3, countBound: 3 });
    },
    "count is not below its bound",
  ],
  [
    "more needed than are bought",
    stool,
    (r) => {
      at(r.layoutProof, 0).countBound = 2;
    },
    "count is not below its bound",
  ],
  [
    "called the fewest without its bound",
    slab,
    (r) => {
      at(r.layoutProof, 0).countBound = 3;
    },
    "count is not below its bound",
  ],
  [
    "a stock without a proof",
    stool,
    (r) => {
      r.layoutProof = [];
    },
    "count is not below its bound",
  ],
  [
    "a cost that is not the sum of its prices",
    stool,
    (r) => {
      for (const layout of r.layouts) layout.price = 10;
      Object.assign(at(r.layoutProof, 0), { cost: 9, costBound: 9 });
    },
    "count is not below its bound",
  ],
  [
    "a cost below its bound",
    slab,
    (r) => {
      for (const layout of r.layouts) layout.price = 10;
      const proof = at(r.layoutProof, 0);
      Object.assign(proof, { cost: 10 * proof.count, costBound: 10 * proof.count + 1, optimal: false });
    },
    "count is not below its bound",
  ],
];
