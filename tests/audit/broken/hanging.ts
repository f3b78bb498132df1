import { stool } from "../sample/stool.ts";
import { type Row, the } from "./row.ts";

/** Its legs lie under the seat: it stops nothing that goes forward. */
export const hanging: readonly Row[] = [
  [
    "a piece that hangs on nothing",
    stool,
    (r) => {
      const [joint] = r.joints;
      if (joint) Object.assign(the(r.joints, joint.id), { method: "hangs on" });
    },
    "what hangs stays on its wall",
  ],
];
