import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

export const bandNotOnEdge = rule<{ readonly part: string; readonly face: string }>({
  name: "band-not-on-edge",
  severity: "error",
  message: (a) => `the ${a.face} of ${a.part} is one of its broad faces, not an edge`,
  label: () => "not an edge",
  help: () => "name the edges and ends that get a band, such as front",
  explain: "Edge banding covers the layers that show at the edges and ends of a sheet. Its broad faces need none.",
  wrong: shelfExample(["bottom: 4 }", "bottom: 4, bands: top }"]),
  right: shelfExample(["bottom: 4 }", "bottom: 4, bands: front }"]),
  basis: "the language",
});
