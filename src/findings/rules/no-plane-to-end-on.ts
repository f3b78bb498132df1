import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const noPlaneToEndOn = rule<{ readonly part: string; readonly plane: string; readonly tapered: boolean }>({
  name: "no-plane-to-end-on",
  severity: "error",
  message: (a) =>
    a.tapered
      ? `${a.plane} has no taper, so ${a.part} cannot end on it`
      : `${a.part} runs along ${a.plane} and never meets it`,
  help: (a) => (a.tapered ? "leave out the word taper" : "name a face that its length runs against, or turn the part"),
  explain: `\`ends on\` cuts a part off on the plane of a face of another part, and makes it long enough to get there. The plane has to lie across the part. \`post.left taper\` means the sloping face that a taper has made; where there is none, the plane is \`post.left\`.`,
  wrong: stepExample(["under: tread }", "under: tread, ends on: tread.left taper }"]),
  right: stepExample(["under: tread }", "under: tread, ends on: tread.bottom }"]),
  basis: "geometry",
});
