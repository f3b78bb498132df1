import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/longest-first.ts";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    /** Builds the program once, for the tests that run it as its users do. */
    globalSetup: ["tests/setup.ts"],
    reporters: [process.env.CI ? "dot" : "default", "./tests/reporter.ts"],
    testTimeout: 60_000,
    sequence: { sequencer: LongestFirst },
    /** Both cores that a small machine has: left to itself it keeps one free. */
    maxWorkers: 2,
  },
});
