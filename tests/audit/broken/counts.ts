import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { action, at, type Row } from "./row.ts";

export const counts: readonly Row[] = [
  [
    "hardware that is not fitted",
    stool,
    (r) => {
      action(r, "fit").hardware.pop();
    },
    "hardware is fitted once",
  ],
  [
    "hardware fitted twice",
    stool,
    (r) => {
      action(r, "fit").hardware.push("foot 1");
    },
    "hardware is fitted once",
  ],
  [
    "an edge left bare",
    stool,
    (r) => {
      action(r, "band").edges = [];
    },
    "banding is done once",
  ],
  [
    "too few screws",
    stool,
    (r) => {
      at(r.purchases, 2).quantity = 3;
    },
    "purchases add up",
  ],
  [
    "screws that are not on the shopping list",
    stool,
    (r) => {
      r.purchases = r.purchases.filter((line) => line.section !== "fasteners");
    },
    "purchases add up",
  ],
  [
    "a sheet too few",
    stool,
    (r) => {
      at(r.purchases, 0).quantity = 0;
    },
    "purchases add up",
  ],
  [
    "a pane that nothing takes",
    stool,
    (r) => {
      r.purchases.push({ ...at(r.purchases, 0), section: "panes" });
    },
    "purchases add up",
  ],
  [
    "a board too many",
    slab,
    (r) => {
      at(r.purchases, 1).quantity = 5;
    },
    "purchases add up",
  ],
  [
    "too little lumber by volume",
    slab,
    (r) => {
      Object.assign(at(r.purchases, 1), { quantity: 0.67, unit: "board feet" });
    },
    "purchases add up",
  ],
];
