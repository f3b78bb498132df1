import { BaseSequencer, type TestSpecification } from "vitest/node";

/** What solves whole plans takes longest; begun last, it would run alone while the other core waits. */
const LONG: readonly RegExp[] = [
  /examples\/promises/,
  /examples\/every-copy/,
  /design\/plans/,
  /tests\/examples\//,
  /findings\/examples/,
  /render\/pages\/examples/,
  /outside\/step-instructions/,
];

const rank = ({ moduleId }: TestSpecification): number => {
  const at = LONG.findIndex((path) => path.test(moduleId));
  return at < 0 ? LONG.length : at;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}
