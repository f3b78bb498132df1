import { EXIT, type Exit } from "../exit.ts";
import type { World } from "../world.ts";

/** `schema`: the JSON Schema of the plan language, or of the record. */
export async function schema(options: { readonly record?: boolean }, world: World): Promise<Exit> {
  const wanted = options.record
    ? (await import("../../render/write/record-schema.ts")).recordSchema
    : (await import("../../parse/schema/index.ts")).jsonSchema();
  await world.out.write(`${JSON.stringify(wanted, null, 2)}\n`);
  return EXIT.done;
}
