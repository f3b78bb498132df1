import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const lengthIncludesTenons = rule<{
  readonly part: string;
  readonly size: string;
  readonly direction: string;
  readonly low: string;
  readonly more: string;
  readonly shoulders: string;
}>({
  name: "length-includes-tenons",
  severity: "error",
  message: (a) => `the ${a.size} of ${a.part} would grow by ${a.more} with its tongues and tenons`,
  help: (a) =>
    `write ${a.direction}: with the distance between the shoulders (${a.shoulders} if ${a.more} of the ${a.size} are tenons)`,
  explain: `\`length\` and \`width\` of a part include what its joints add to it. What the joints add is known only when the part is placed, so where it is placed by its shoulders, say the distance between them with \`across\`, \`deep\` or \`up\`.`,
  wrong: stepExample(
    [
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }",
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, length: 10 1/2, under: tread }",
    ],
    [
      "join: tread, to: [left-leg, right-leg], with: screws",
      "join: [left-leg, right-leg], to: tread, with: mortise and tenon",
    ],
  ),
  right: stepExample(
    [
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }",
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, up: 10 1/2, under: tread }",
    ],
    [
      "join: tread, to: [left-leg, right-leg], with: screws",
      "join: [left-leg, right-leg], to: tread, with: mortise and tenon",
    ],
  ),
  basis: "the language",
});
