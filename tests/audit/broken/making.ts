import { banded, fitted } from "../sample/fitted.ts";
import { stool } from "../sample/stool.ts";
import { action, at, type Row, the, without } from "./row.ts";

export const making: readonly Row[] = [
  [
    "a part heavier than its wood",
    stool,
    (r) => {
      the(r.parts, "left").mass *= 1.1;
      r.mass += the(r.parts, "left").mass / 11;
    },
    "masses are those of the solids",
  ],
  [
    "a piece lighter than its parts",
    stool,
    (r) => {
      r.mass -= 0.1;
    },
    "masses are those of the solids",
  ],
  [
    "a centre of mass beside its place",
    stool,
    (r) => {
      r.centreOfMass = [r.centreOfMass[0] + 0.1, r.centreOfMass[1], r.centreOfMass[2]];
    },
    "masses are those of the solids",
  ],
  [
    "a part sawn to its finished size, its bands forgotten",
    banded,
    (r) => {
      for (const band of the(r.parts, "top").edgeBanding) if (band.edge === "front") band.deducted = false;
      for (const band of the(r.parts, "top").edgeBanding) band.thickness = 0.5;
    },
    "blanks give the part",
  ],
  [
    "a piece that is planed whole, too small for what it gives",
    stool,
    (r) => {
      const blank = at(r.blanks, 0);
      blank.planedWhole = { beside: 2, inLine: 1, width: blank.width, length: blank.length };
    },
    "blanks give the part",
  ],
  [
    "a band of 1 mm that is not deducted",
    stool,
    (r) => {
      for (const band of the(r.parts, "top").edgeBanding) band.thickness = 1;
    },
    "thick banding is deducted",
  ],
  [
    "a long edge banded before the end",
    banded,
    (r) => {
      action(r, "band").edges.reverse();
    },
    "banding is put on in order",
  ],
  [
    "a part banded when it is built in",
    stool,
    (r) => {
      at(r.steps, 2).actions.push(without(r, action(r, "band")));
    },
    "banding is put on in order",
  ],
  [
    "too little banding",
    banded,
    (r) => {
      for (const line of r.purchases) if (line.item === "birch tape") line.quantity = 0.6;
    },
    "purchases add up",
  ],
  [
    "a part that is cut before the piece can be measured",
    fitted,
    (r) => {
      at(r.steps, 0).actions.unshift(without(r, action(r, "make", 1)));
    },
    "what is cut to the piece waits for it",
  ],
  [
    "a part that waits longer than it has to",
    fitted,
    (r) => {
      the(r.parts, "right").cutAfterStep = 3;
    },
    "what is cut to the piece waits for it",
  ],
  [
    "a part that is to fit between parts of which one comes later",
    fitted,
    (r) => {
      Object.assign(the(r.parts, "right"), { fitsBetween: ["left", "right"] });
    },
    "what is cut to the piece waits for it",
  ],
  [
    "a part from the list that waits",
    stool,
    (r) => {
      the(r.parts, "right").cutAfterStep = 2;
    },
    "what is cut to the piece waits for it",
  ],
  [
    "room kept for a size that no slope gives",
    stool,
    (r) => {
      const blank = the(r.blanks, "blank of top");
      Object.assign(blank, { reserved: [{ size: "length", largest: blank.length + 10, at: {} }] });
    },
    "blanks give the part",
  ],
  [
    "a part that waits, sawn to its size",
    fitted,
    (r) => {
      Object.assign(the(r.blanks, "blank of right"), { why: "as finished" });
    },
    "blanks give the part",
  ],
  [
    "a slab of boards that are too narrow",
    stool,
    (r) => {
      Object.assign(the(r.blanks, "blank of top"), { why: "glue-up" });
    },
    "blanks give the part",
  ],
  [
    "a line that is cut otherwise than its part",
    fitted,
    (r) => {
      at(r.cutList, 2).cut = "list";
    },
    "sizes agree",
  ],
];
