import { createHash } from "node:crypto";
import { basename } from "node:path";
import type { Source } from "../compile.ts";
import type { Document } from "../render/document.ts";
import type { Build } from "../solve/build.ts";
import type { World } from "./world.ts";

/** The record of a solved piece and its pages, as JSON in UTF-8. */
export async function recordOf(build: Build, source: Source, { pages }: Document, world: World): Promise<Uint8Array> {
  const { writeRecord } = await import("../render/write/record.ts");
  const sourceSha256 = createHash("sha256").update(source.bytes).digest("hex");
  const meta = { sourceName: basename(source.name), sourceSha256, version: world.version, pages };
  return new TextEncoder().encode(writeRecord(build, meta));
}
