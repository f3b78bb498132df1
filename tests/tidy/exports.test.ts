import { expect, test } from "vitest";
import { thenables } from "./exports.ts";
import { filesBelow } from "./source.ts";

const files = filesBelow("src", ".ts");

test("no module exports a then", () => {
  expect(files.length).toBeGreaterThan(10);
  expect(files.flatMap(thenables)).toEqual([]);
});

test.each([
  "export const then = 1;",
  "export const a = 1, then = 2;",
  "export function then(): void {}",
  "export class then {}",
  "const a = 1; export { a as then };",
  'export { then } from "./b.ts";',
  'export * as then from "./b.ts";',
  'const a = 1; export { a as "then" };',
  "export const { then } = { then: 1 };",
  "export const [{ a: then = 1 }] = [{}];",
  "export const { ...then } = {};",
])("%s is reported", (text) => {
  expect(thenables({ path: "a.ts", text })).toEqual(['a.ts:1 exports a "then"']);
});

test.each([
  "const then = 1;",
  "export const andThen = 1;",
  "export const a = { then: 1 };",
  "export const { then: a } = { then: 1 };",
  "export type then = number;",
  "export interface then {}",
])("%s is not", (text) => {
  expect(thenables({ path: "a.ts", text })).toEqual([]);
});
