import { frame } from "../sample/frame.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { action, at, type Row } from "./row.ts";

export const travel: readonly Row[] = [
  [
    "a part that appears in its place",
    frame,
    (r) => {
      action(r, "add", 1).legs = [];
    },
    "parts come from afar",
  ],
  [
    "a part that starts close by",
    frame,
    (r) => {
      action(r, "add", 1).legs = [{ along: [1, 0, 0], distance: 100 }];
    },
    "parts come from afar",
  ],
  [
    "a post pushed sideways over its tenon",
    frame,
    (r) => {
      action(r, "add", 1).legs = [{ along: [0, 1, 0], distance: null }];
    },
    "travel is free",
  ],
  [
    "a post that turns too early",
    frame,
    (r) => {
      action(r, "add", 1).legs = [
        { along: [0, 1, 0], distance: null },
        { along: [1, 0, 0], distance: 19.9 },
      ];
    },
    "travel is free",
  ],
  [
    "a post swung in over its tenon",
    frame,
    (r) => {
      action(r, "add", 1).legs = [
        { along: [0, 0, 1], distance: null },
        {
          about: [
            [0, 0, 0],
            [0, 1, 0],
          ],
          degrees: 5,
        },
      ];
    },
    "travel is free",
  ],
  [
    "a part put through another",
    stool,
    (r) => {
      action(r, "add", 2).legs = [{ along: [0, 0, -1], distance: null }];
    },
    "travel is free",
  ],
  [
    "a part taken off through another",
    frame,
    (r) => {
      const legs = [{ along: [1, 0, 0] as const, distance: null }];
      at(r.steps, 2).actions.push({ do: "remove", parts: ["post.1"], from: ["rail"], legs, undrives: [] });
    },
    "travel is free",
    "all ends in one body",
  ],
  [
    "pulling out what is no shelf pin",
    slab,
    (r) => {
      at(r.steps, -1).actions.push({ do: "pull", fasteners: [at(r.fasteners, 0).id] });
    },
    "pins are in at the end",
  ],
  [
    "taking off what stays",
    frame,
    (r) => {
      const legs = [{ along: [-1, 0, 0] as const, distance: null }];
      at(r.steps, 2).actions.push({ do: "remove", parts: ["post.1"], from: ["post.1"], legs, undrives: [] });
    },
    "whole bodies move",
    "all ends in one body",
  ],
  [
    "a board laid down on its dowels from the side",
    slab,
    (r) => {
      action(r, "add", 1).legs = [{ along: [0, -1, 0], distance: null }];
    },
    "dowels slide along their holes",
  ],
  [
    "a board whose dowels stand in the way of their hole",
    slab,
    (r) => {
      action(r, "add", 1).legs = [
        { along: [0, -1, 0], distance: null },
        { along: [-1, 0, 0], distance: 15 },
      ];
    },
    "dowels slide along their holes",
  ],
  [
    "a dowel that runs into a part which is not its own",
    slab,
    (r) => {
      for (const dowel of r.fasteners) if (dowel.id.startsWith("j1")) dowel.length = 130;
    },
    "fastener passes what it says",
    "travel is free",
    "point ends inside",
  ],
];
