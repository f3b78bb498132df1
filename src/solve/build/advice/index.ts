import type { Length } from "../../../units/length.ts";
import type { Build } from "../../build.ts";
import type { AdviceOn } from "../model/advice.ts";
import { cautionsFor } from "./cautions.ts";
import { curesFor } from "./cures.ts";
import { roomFor } from "./room.ts";
import { traitsOf } from "./traits.ts";

/** What a solved piece gives reason to say. `print`: lengths in sentences. */
export function adviceOn(build: Build, print: (length: Length) => string): AdviceOn {
  const traits = traitsOf(build);
  return { cautions: cautionsFor(traits), room: roomFor(traits, print), cures: curesFor(traits) };
}
