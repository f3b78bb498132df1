import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const tooManyFasteners = rule<{ readonly count: number; readonly room: string; readonly part: string }>({
  name: "too-many-fasteners",
  severity: "error",
  message: (a) => `${a.count} fasteners have no room on the ${a.room} that ${a.part} offers`,
  help: () => "give a smaller count, or leave it out: as many as are usual are then taken",
  explain: `Fasteners closer together than about 1/4 in (6 mm) cut the wood along their row.`,
  wrong: stepExample(["with: screws", "with: screws, count: 100"]),
  right: stepExample(),
  basis: "common practice, no source",
});
