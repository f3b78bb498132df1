import { inches, type Length } from "../../../units/length.ts";
import { divide, max, multiply, type Rational, rational } from "../../../units/rational.ts";

/**
 * Board feet of a board: thickness × width × length in inches over 144, on the rough thickness, which counts as 1 in where it
 * is less. Trade rule, from memory.
 */
export function boardFeet(roughThickness: Length, width: Length, length: Length): Rational {
  const inch = inches(1);
  const cubic = multiply(multiply(max(roughThickness, inch), width), length);
  return divide(cubic, multiply(multiply(inch, inch), multiply(inch, rational(144))));
}
