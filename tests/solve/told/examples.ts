/** What the examples say, evened out for looking in it. */
import type { Build, Step } from "../../../src/solve/build.ts";

export const plain = (text: string): string => text.replaceAll("\u2044", "/").replaceAll(/[\s\u202f]+/gu, " ");

export const textOfStep = ({ text }: Step): string => plain(text.join(" "));

export function stepWith(build: Build, title: RegExp): Step {
  const found = build.steps.find((step) => title.test(plain(step.title)));
  if (!found) throw new Error(`no step ${title}; there are: ${build.steps.map((step) => step.title).join("; ")}`);
  return found;
}
