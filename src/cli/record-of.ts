import { createHash } from "node:crypto";
import { basename } from "node:path";
import type { Source } from "../compile.ts";
import type { Document } from "../render/document.ts";
import type { Build } from "../solve/build.ts";
import type { World } from "./world.ts";

/** The record of a solved piece and its pages, as JSON in UTF-8. */
export async function recordOf(
  build: Build,
  { source, workshop }: { readonly source: Source; readonly workshop?: Source | undefined },
  { pages }: Document,
  world: World,
): Promise<Uint8Array> {
  const { writeRecord } = await import("../render/write/record.ts");
  const digest = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
  const meta = {
    sourceName: basename(source.name),
    sourceSha256: digest(source.bytes),
    ...(workshop && { workshop: { file: basename(workshop.name), sha256: digest(workshop.bytes) } }),
    version: world.version,
    pages,
  };
  return new TextEncoder().encode(writeRecord(build, meta));
}
