import { EXIT, type Exit } from "../exit.ts";
import type { World } from "../world.ts";
import type { CheckOptions } from "./check.ts";

export async function layout(_path: string, _options: CheckOptions, _world: World): Promise<Exit> {
  return EXIT.done;
}
