import { EXIT, type Exit } from "../exit.ts";
import type { World } from "../world.ts";

export interface SchemaOptions {
  readonly record?: boolean;
  readonly workshop?: boolean;
}

/** `schema`: the JSON Schema of the plan language, of the record, or of `workshop.yaml`. */
export async function schema(options: SchemaOptions, world: World): Promise<Exit> {
  const wanted = options.record
    ? (await import("../../render/write/record-schema.ts")).recordSchema
    : options.workshop
      ? (await import("../../parse/schema/workshop.ts")).workshopSchema()
      : (await import("../../parse/schema/index.ts")).jsonSchema();
  await world.out.write(`${JSON.stringify(wanted, null, 2)}\n`);
  return EXIT.done;
}
