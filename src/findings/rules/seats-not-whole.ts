import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const withSeats = (seats: string): string =>
  stepExample(["joints:", `used for: { seats: ${seats}, each weighs: 150 lb }\njoints:`]);

export const seatsNotWhole = rule<{ readonly most: number }>({
  name: "seats-not-whole",
  severity: "error",
  message: (a) => `seats are counted in whole numbers from 1 to ${a.most}`,
  help: () => "write how many people there is room for",
  explain:
    "`used for` says how many people sit on the piece and what each of them weighs; from that the bending of the seat and its rails is worked out.",
  wrong: withSeats("1 1/2"),
  right: withSeats("1"),
  basis: "the language",
});
