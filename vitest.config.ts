import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    /** Builds the program once, for the tests that run it as its users do. */
    globalSetup: ["tests/setup.ts"],
    reporters: [process.env.CI ? "dot" : "default", "./tests/reporter.ts"],
    testTimeout: 30_000,
  },
});
