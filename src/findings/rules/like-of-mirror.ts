import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const likeOfMirror = rule<{ readonly name: string; readonly original: string }>({
  name: "like-of-mirror",
  severity: "error",
  message: (a) => `${a.name} is itself the mirror of ${a.original} and has no description to copy`,
  help: (a) => `write like: ${a.original}`,
  explain: `\`like:\` copies what is written of a part. A mirrored part has nothing written but whose reflection it is, so there is nothing to copy: name the original instead.`,
  wrong: stepExample([
    "right-leg: { like: left-leg, right: long }",
    "right-leg: { mirror of: left-leg, about: across }\n  middle-leg: { like: right-leg, left: 10 }",
  ]),
  right: stepExample([
    "right-leg: { like: left-leg, right: long }",
    "right-leg: { mirror of: left-leg, about: across }",
  ]),
  basis: "the language",
});
