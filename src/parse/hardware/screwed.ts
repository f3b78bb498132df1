/** The screws of what is screwed on: a row of them, or one in each corner of a plate. */
import { type HardwareField, measure, number } from "./kind.ts";

export const screwed = (count: number, inch = "5/8", mm = "16"): Readonly<Record<string, HardwareField>> => ({
  screws: number("How many screws hold it.", count),
  screw: measure("The length of its screws.", inch, mm),
  thread: measure("The diameter of its screws.", "9/64", "3.5"),
  pilot: measure("The diameter of the holes for them.", "3/32", "2.5"),
});
