/** What a step is drawn of, and from where. */
import { Stage, type View } from "../../../geometry/picture/index.ts";
import type { Build, Step } from "../../../solve/build.ts";
import { shareSeen } from "../visibility.ts";
import { mouthsOf } from "./mouths.ts";
import { comesOff, type Scene, sceneOf } from "./scene.ts";
import { chooseView } from "./views.ts";

interface Seen {
  readonly scene: Scene;
  readonly view: View;
}

/** What shows no more of itself is not seen. */
const HIDDEN = 0.15;

/** As the piece stands; where doors and drawers hide all that is new, without them. Null where there is nothing to see. */
export function bestSeen(build: Build, step: Step, before: View | null): Seen | null {
  const looked = (scene: Scene): Seen => {
    const { items, fresh, screws } = scene;
    // Where screws are driven they count; the holes that they go into lie inside the joint.
    const driveways = screws.map(({ mouth, direction }) => ({ at: mouth, direction }));
    const mouths = driveways.length > 0 ? driveways : mouthsOf(build, step);
    return { scene, view: chooseView({ items, fresh, mouths }, step.up, before) };
  };
  const shown = ({ scene: { items, fresh }, view }: Seen): number => {
    const stage = new Stage(items, view);
    return Math.max(0, ...items.filter(({ id }) => fresh.has(id)).map((item) => shareSeen(item, stage)));
  };
  const whole = sceneOf(build, step);
  if (whole.items.length === 0) return null;
  const closed = looked(whole);
  if (whole.fresh.size === 0 || shown(closed) > HIDDEN) return closed;
  const opened = looked(sceneOf(build, step, comesOff(build)));
  return shown(opened) > HIDDEN ? opened : closed;
}
