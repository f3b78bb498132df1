/** Two posts and a rail between them, with a tenon 8 × 40 × 20 at each end and mortises 2 deeper. */
import type { BoxFeature, BuildRecord, Joint } from "../record.ts";
import type { V3 } from "../vector.ts";
import { complete } from "./complete.ts";
import { box, fixed, part, step } from "./wood.ts";

export function frame(): BuildRecord {
  const post = { mark: "A", stock: "square", axes: [0, 1, 2] as const };
  return complete({
    parts: [
      part({ id: "post.1", ...post, solids: postPieces(0, 18, 40), features: [room("mortise", "j1", 40, -1, 22)] }),
      part({ id: "post.2", ...post, solids: postPieces(340, 362, 340), features: [room("mortise", "j2", 340, 1, 22)] }),
      part({
        id: "rail",
        mark: "B",
        stock: "board",
        axes: [1, 2, 0],
        solids: [
          box([40, 10, 100], [340, 30, 160]),
          box([20, 16, 110], [40, 24, 150]),
          box([340, 16, 110], [360, 24, 150]),
        ],
        features: [room("tenon", "j1", 40, -1, 20), room("tenon", "j2", 340, 1, 20)],
      }),
    ],
    joints: [joint("j1", "post.1", 40, -1), joint("j2", "post.2", 340, 1)],
    fasteners: [],
    holes: [],
    steps: [
      step(1, "make", [
        { do: "make", blanks: ["blank of post.1", "blank of post.2", "blank of rail"] },
        { do: "machine", part: "post.1", features: [0], holes: [] },
        { do: "machine", part: "post.2", features: [0], holes: [] },
        { do: "machine", part: "rail", features: [0, 1], holes: [] },
      ]),
      step(2, "glue-up", [
        { do: "add", parts: ["rail"], to: [], how: "straight", legs: [] },
        { do: "glue", joints: ["j1", "j2"], openMinutes: 8 },
        { do: "add", parts: ["post.1"], to: ["rail"], how: "straight", legs: [{ along: [1, 0, 0], distance: null }] },
        { do: "add", parts: ["post.2"], to: ["rail"], how: "straight", legs: [{ along: [-1, 0, 0], distance: null }] },
        { do: "clamp", joints: ["j1", "j2"] },
        { do: "measure", what: "diagonals", value: 484.1, within: 1 },
      ]),
      step(3, "take-off", [{ do: "release", joints: ["j1", "j2"] }], [2]),
    ],
  });
}

/** A post 40 × 40 × 300 from x on, without the mortise that reaches from its face at `face` to `bottom`. */
function postPieces(x: number, bottom: number, face: number) {
  const [low, high] = [Math.min(bottom, face), Math.max(bottom, face)];
  const solid = face > bottom ? box([x, 0, 110], [bottom, 40, 150]) : box([bottom, 0, 110], [x + 40, 40, 150]);
  return [
    box([x, 0, 0], [x + 40, 40, 110]),
    box([x, 0, 150], [x + 40, 40, 300]),
    solid,
    box([low, 0, 110], [high, 16, 150]),
    box([low, 24, 110], [high, 40, 150]),
  ];
}

const room = (kind: string, joint: string, x: number, way: 1 | -1, deep: number): BoxFeature => ({
  kind,
  lean: 0,
  inPlace: false,
  for: joint,
  origin: [x, 16, 110],
  along: [0, 1, 0],
  across: [0, 0, 1],
  into: [way, 0, 0],
  size: [8, 40, deep],
});

function joint(id: string, post: string, x: number, way: 1 | -1): Joint {
  const middle = x + way * 10;
  const touch = (centre: V3, normal: V3, area: number) => ({ centre, normal, area });
  return fixed(id, ["rail", post], {
    method: "mortise and tenon",
    contact: [
      touch([x, 20, 130], [way, 0, 0], 20 * 60 - 8 * 40),
      touch([middle, 16, 130], [0, -1, 0], 20 * 40),
      touch([middle, 24, 130], [0, 1, 0], 20 * 40),
      touch([middle, 20, 110], [0, 0, -1], 20 * 8),
      touch([middle, 20, 150], [0, 0, 1], 20 * 8),
    ],
  });
}
