import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/longest-first.ts";

/** Loads the program anew between two questions, which would leave two copies of it to other tests. */
const LOADS_ANEW = ["tests/geometry/independence.test.ts"];

export default defineConfig({
  test: {
    reporters: [process.env.CI ? "dot" : "default", "./tests/reporter.ts"],
    testTimeout: 60_000,
    sequence: { sequencer: LongestFirst },
    /** Both cores that a small machine has: left to itself it keeps one free. */
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: "together",
          include: ["tests/**/*.test.ts"],
          exclude: LOADS_ANEW,
          /** Builds the program once, for the tests that run it as its users do. */
          globalSetup: ["tests/setup.ts"],
          /** Solving and rendering are pure: what one file of tests has loaded and warmed up serves the next. */
          isolate: false,
        },
      },
      { extends: true, test: { name: "by itself", include: LOADS_ANEW } },
    ],
  },
});
